import type { Solid } from './solid';
import type { Spot } from './space';
import type { Section } from './trunk';

/** An arm or leg: its root's middle, where it points (one long), radii at root, middle and end, mm. */
export type Limb = {
  readonly root: Spot;
  readonly way: Spot;
  readonly thick: number;
  readonly girth: number;
  readonly thin: number;
  readonly length: number;
  readonly side: number;
};

/** A body to sew on, and where things lie on it; heights are mm down from the shoulder's neck end. */
export type Figure = {
  readonly solid: Solid;
  readonly section: (down: number) => Section;
  readonly head: { readonly centre: Spot; readonly half: Spot };
  readonly arms: readonly Limb[];
  readonly legs: readonly Limb[];
  readonly lines: Lines;
  /** How low a hem should lie: where tapes of the card's lengths end on this body; left out where nobody says. */
  readonly hem: { readonly front?: number; readonly side?: number; readonly back?: number };
  /** Which way things fall: a toy on four legs lies with its back behind and its nose up. */
  readonly falls: 'y' | 'z';
  /** How far the body's own lengths are off the card's, as shares. */
  readonly residuals: Readonly<Record<string, number>>;
};

export type Lines = {
  readonly neck: number;
  readonly shoulder: { readonly x: number; readonly y: number };
  readonly underarm: number;
  readonly waist: number;
  readonly hem: number;
  readonly seat: number;
  readonly crotch: number;
};
