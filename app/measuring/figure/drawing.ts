import type { MeasureId, Nature, View } from '../../body';
import type { Point } from '../../body/point';

/** The size of the picture, in its own units: about one to a CSS pixel on a phone. */
export type Frame = { readonly width: number; readonly height: number };

/** Above the number, in portrait. */
export const WIDE: Frame = { width: 360, height: 200 };
/** Beside the number, in landscape: as many units as a small phone has pixels there, so that words stay readable. */
export const SNUG: Frame = { width: 240, height: 182 };

/** What a shape is made of; the part that draws it turns each into a class. */
export type Look =
  | 'ground'
  | 'fur'
  | 'fur-deep'
  | 'fur-pale'
  | 'shade'
  | 'edge'
  | 'ink'
  | 'glint'
  | 'line'
  | 'fine'
  | 'seam'
  | 'blush'
  | 'thread'
  | 'patch'
  | 'side-line'
  | 'glow'
  | 'cloth'
  | 'cloth-deep'
  | 'cloth-line'
  | 'cloth-fold'
  | 'cloth-stitch';

/** The toy, what the maker put on it, and what of the toy stands between the viewer and the tape. */
export type Layer = 'toy' | 'marks' | 'over';

/** One drawn shape: `path` is SVG path data in the frame's units. */
export type Drawn = { readonly layer: Layer; readonly look: Look; readonly path: string };

export type Figure = { readonly frame: Frame; readonly view: View; readonly shapes: readonly Drawn[] };

/** A word beside the tape: `at` is where it stands, `box` the room kept for it, `leader` the line to its mark. */
export type Label = {
  readonly word: 'start' | 'end' | 'meet' | 'side-line';
  readonly at: Point;
  readonly anchor: 'start' | 'end';
  readonly box: Box;
  readonly leader: string;
};

export type Box = { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/** A stretch of tape, ruler or pencil line: its outline, its ticks, and the line along its middle. */
export type Strip = {
  readonly outline: string;
  readonly ticks: string;
  readonly middle: string;
  /** The middle of a tape, or the corners of a ruler, as points: for whoever wants to reason about where it lies. */
  readonly points: readonly Point[];
};

/** How one measure is taken: everything drawn over the figure, in the figure's frame. */
export type Tape = {
  readonly measure: MeasureId;
  readonly nature: Nature;
  readonly view: View;
  /** Whether the tape closes on itself: start and end then meet. */
  readonly ring: boolean;
  readonly visible: readonly Strip[];
  /** Behind the toy: dashed. */
  readonly hidden: readonly Strip[];
  /** Thin pencil lines that say what a mark stands level with. */
  readonly guides: readonly string[];
  readonly start: Point;
  readonly end: Point;
  /** The direction the tape arrives in, radians, x right, y down. */
  readonly arrival: number;
  /** The start mark's radius. */
  readonly dot: number;
  /** The end mark, an arrow head, as a path. */
  readonly arrow: string;
  /** The whole way from start to end, for the one short movement along it. */
  readonly way: string;
  readonly labels: readonly Label[];
  /** The code of its text equivalent. */
  readonly text: string;
};

/** A figure close enough to see the tape, and the tape. */
export type Diagram = { readonly figure: Figure; readonly tape: Tape };
