import type { Traits } from '../../app/body';
import type { Draw, Measured, Readings } from './form';
import { ellipseArc, ellipsePerimeter } from './solids';

/**
 * A round toy: two half ellipsoids on one fullest line, flattened where it stands. Lengths in mm; `full` is how high the
 * fullest line lies (share of the height), the others shares of the part they lie in.
 */
export type RoundForm = {
  readonly height: number;
  readonly half: number;
  readonly deep: number;
  readonly full: number;
  readonly top: number;
  readonly base: number;
  readonly brim: number;
  readonly neck: number;
  readonly waist: number;
  readonly hem: number;
  readonly wing: { readonly base: number; readonly high: number };
  readonly ear: { readonly base: number; readonly thick: number; readonly inset: number };
  readonly tail: { readonly root: number; readonly thick: number };
};

export function measureRound(form: RoundForm, ears: Traits['ears'], tail: boolean): Measured {
  const girth = ellipsePerimeter(form.half, form.deep);
  const upper = form.height * (1 - form.full);
  const lower = form.height * form.full * 1.15;
  const shrink = (share: number) => Math.sqrt(1 - share * share);
  const brim = Math.asin(form.brim);
  const root = 2 * Math.PI * form.half * form.tail.root;
  const readings: Readings = {
    'head-girth': girth * shrink(form.brim),
    'over-head': ellipseArc(form.half, upper, brim, Math.PI - brim),
    'neck-girth': girth * form.neck,
    'body-girth': girth,
    'waist-girth': girth * form.waist,
    'hem-girth': girth * form.hem,
    height: form.height,
    'top-height': upper * form.top,
    'top-girth': girth * shrink(form.top),
    'base-height': lower * form.base,
    'base-girth': girth * shrink(form.base),
    'wing-base': form.height * form.wing.base,
    'wing-height': form.height * form.wing.high,
    'waist-to-hem': form.height * form.full * 0.7,
    'cape-length': form.height * 0.5,
    'bib-length': form.height * 0.38,
    'scarf-length': girth * form.neck * 2.2,
    ...(ears === 'none' ? {} : earReadings(form)),
    ...(tail ? { 'tail-base-girth': root, 'tail-girth': root * form.tail.thick } : {}),
  };
  return { readings, traits: { shoulders: 'none', neck: form.neck < 0.8 ? 'clear' : 'none' } };
}

function earReadings({ half, ear }: RoundForm): Readings {
  return {
    'ear-base': half * ear.base,
    'ear-girth': 2.15 * half * ear.base * ear.thick,
    'ear-inset': half * ear.inset,
  };
}

/** A random round toy, 12 to 60 cm high. */
export function roundForm({ between, wide }: Draw): RoundForm {
  const height = 120 * (600 / 120) ** between(0, 1);
  const half = height * wide(0.32, 0.52);
  return {
    height,
    half,
    deep: half * wide(0.85, 1.05),
    full: Math.min(0.7, wide(0.36, 0.52)),
    top: Math.min(0.9, wide(0.4, 0.7)),
    base: Math.min(0.9, wide(0.35, 0.7)),
    brim: Math.min(0.95, wide(0.45, 0.8)),
    neck: Math.min(1, wide(0.58, 0.92)),
    waist: Math.min(1, wide(0.88, 0.99)),
    hem: Math.min(1, wide(0.78, 0.98)),
    wing: { base: wide(0.18, 0.34), high: wide(0.42, 0.66) },
    ear: { base: wide(0.28, 0.6), thick: wide(0.9, 1.3), inset: wide(0.3, 0.75) },
    tail: { root: wide(0.1, 0.3), thick: wide(1, 1.5) },
  };
}
