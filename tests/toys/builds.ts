import type { BodyKind, Card, Traits } from '../../app/body';
import type { Measured } from './form';
import type { HeadForm } from './head';
import { measureUpright, type UprightForm } from './upright';

/**
 * Five invented toys that between them are all a garment has to fit: round, lanky, thin, tiny, huge. Each is read off
 * its own solids to the millimetre, every measure taken. What is lovely on one and odd on another is not finished.
 */
export type Build = {
  readonly name: string;
  readonly form: UprightForm;
  readonly ears: Traits['ears'];
  readonly tail: boolean;
  readonly traits: Partial<Traits>;
};

export const head = (across: number, more: Partial<HeadForm> & Pick<HeadForm, 'ear'>): HeadForm => ({
  across,
  deep: across * 0.95,
  high: across * 0.98,
  forward: 0.3,
  chin: 0.16,
  brim: 0.3,
  ...more,
});

const bear: UprightForm = {
  tall: 400,
  head: head(64, { ear: { base: 46, thick: 1.1, inset: 0.75, behind: 0.4 } }),
  trunk: { across: 80, deep: 78, chest: 0.72, hem: 0.92, waist: 0.97, hip: 0.98, front: 0.55 },
  neck: 0.86,
  slope: 0.3,
  length: 150,
  back: 0.88,
  arm: { depth: 0.46, thick: 0.85, inset: 0.9, upper: 1, paw: 1, length: 120, cap: 0.4 },
  leg: { rise: 0.62, thigh: 0.5, foot: 1.1, sole: 0.4, stride: 70, waist: 0.6 },
  tail: { root: 0.2, thick: 1.3, high: 0.7 },
};

const rabbit: UprightForm = {
  tall: 480,
  head: head(47, { high: 52, ear: { base: 36, thick: 1.2, inset: 0.5, behind: 0.45 } }),
  trunk: { across: 50, deep: 40, chest: 0.86, hem: 1.0, waist: 0.9, hip: 1.04, front: 0.51 },
  neck: 0.57,
  slope: 0.2,
  length: 165,
  back: 0.96,
  arm: { depth: 0.32, thick: 0.7, inset: 0.9, upper: 0.95, paw: 1.05, length: 185, cap: 0.45 },
  leg: { rise: 0.5, thigh: 0.48, foot: 1.15, sole: 0.45, stride: 150, waist: 0.65 },
  tail: { root: 0.25, thick: 1.6, high: 0.75 },
};

const doll: UprightForm = {
  tall: 460,
  head: head(56, { ear: { base: 20, thick: 1, inset: 0.9, behind: 0.5 } }),
  trunk: { across: 48, deep: 36, chest: 0.95, hem: 1.0, waist: 0.88, hip: 1.04, front: 0.52 },
  neck: 0.52,
  slope: 0.05,
  length: 135,
  back: 0.97,
  arm: { depth: 0.27, thick: 0.8, inset: 1, upper: 0.9, paw: 0.95, length: 125, cap: 0.3 },
  leg: { rise: 0.5, thigh: 0.36, foot: 1.05, sole: 0.42, stride: 120, waist: 0.6 },
  tail: { root: 0.1, thick: 1, high: 0.8 },
};

const tiny: UprightForm = {
  tall: 170,
  head: head(33, { ear: { base: 22, thick: 1.1, inset: 0.7, behind: 0.4 } }),
  trunk: { across: 30, deep: 27, chest: 0.9, hem: 1.0, waist: 0.96, hip: 1.02, front: 0.52 },
  neck: 0.63,
  slope: 0.2,
  length: 62,
  back: 0.92,
  arm: { depth: 0.45, thick: 0.75, inset: 1, upper: 0.95, paw: 1, length: 52, cap: 0.4 },
  leg: { rise: 0.6, thigh: 0.5, foot: 1.1, sole: 0.4, stride: 32, waist: 0.6 },
  tail: { root: 0.15, thick: 1.2, high: 0.7 },
};

const huge: UprightForm = {
  tall: 930,
  head: head(135, { ear: { base: 95, thick: 1.1, inset: 0.8, behind: 0.4 } }),
  trunk: { across: 165, deep: 145, chest: 0.9, hem: 0.98, waist: 0.95, hip: 1.02, front: 0.52 },
  neck: 0.66,
  slope: 0.22,
  length: 360,
  back: 0.93,
  arm: { depth: 0.4, thick: 0.8, inset: 1, upper: 0.97, paw: 1.05, length: 330, cap: 0.4 },
  leg: { rise: 0.6, thigh: 0.48, foot: 1.1, sole: 0.4, stride: 190, waist: 0.6 },
  tail: { root: 0.15, thick: 1.2, high: 0.7 },
};

export const builds: readonly Build[] = [
  { name: 'bear', form: bear, ears: 'top', tail: true, traits: { arms: 'forward', neck: 'none', posture: 'sits' } },
  { name: 'rabbit', form: rabbit, ears: 'top', tail: true, traits: { arms: 'down', posture: 'stands' } },
  { name: 'doll', form: doll, ears: 'none', tail: false, traits: { arms: 'out', posture: 'stands', stuffing: 'firm' } },
  { name: 'tiny', form: tiny, ears: 'side', tail: false, traits: { arms: 'out', posture: 'sits' } },
  { name: 'huge', form: huge, ears: 'side', tail: true, traits: { arms: 'down', posture: 'sits' } },
];

/** The card of a build, its readings to the millimetre; `traits` are laid over its own. */
export function buildCard({ name, form, ears, tail, traits }: Build, other: Partial<Traits> = {}): Card {
  const measured = measureUpright(form, ears, tail);
  return cardOf({ name, body: 'upright', measured, traits: { ears, tail, ...measured.traits, ...traits, ...other } });
}

/** A toy read off its solids to the millimetre. */
export function cardOf(toy: {
  readonly name: string;
  readonly body: BodyKind;
  readonly measured: Measured;
  readonly traits: Partial<Traits>;
}): Card {
  const { name, body, measured, traits } = toy;
  const readings = Object.entries(measured.readings).map(([id, value]) => [id, [Math.round(value ?? 0)]] as const);
  return {
    format: 'hemling-card',
    version: 1,
    toy: { name, body, traits },
    unit: 'cm',
    taken: '2026-11-20',
    note: '',
    readings: Object.fromEntries(readings),
  };
}
