import type { Traits } from '../../app/body';
import { type Draw, type Measured, neckTrait, type Readings } from './form';
import { type HeadForm, headForm, measureHead } from './head';
import { ellipsePerimeter } from './solids';

/** A four-legged toy: a barrel lying level on four tubes, an ellipsoid for the head. Half axes and lengths in mm. */
export type FourLeggedForm = {
  readonly head: HeadForm;
  readonly across: number;
  readonly high: number;
  /** Nape to the root of the tail; a coat ends at this share of it. */
  readonly length: number;
  readonly coat: number;
  /** Girths as shares of the chest girth. */
  readonly belly: number;
  readonly neck: number;
  /** Half thickness of a front leg and half the gap between the two (shares of `across`). */
  readonly leg: { readonly thick: number; readonly gap: number; readonly foot: number; readonly length: number };
  /** Neck to the front legs, below and above, as shares of the length. */
  readonly throat: number;
  readonly nape: number;
  /** How far the belly part reaches to the coat's end (share of what lies behind the legs). */
  readonly under: number;
  readonly tail: { readonly root: number; readonly thick: number };
};

export function measureFourLegged(form: FourLeggedForm, ears: Traits['ears'], tail: boolean): Measured {
  const chest = ellipsePerimeter(form.across, form.high);
  const legHalf = form.across * form.leg.thick;
  const legGirth = 2 * Math.PI * legHalf;
  const gap = 2 * form.across * form.leg.gap;
  const back = form.length * form.coat;
  const nape = form.length * form.nape;
  const root = 2 * Math.PI * form.across * form.tail.root;
  const readings: Readings = {
    height: form.leg.length * 1.35 + 2 * form.high + 0.8 * form.head.high,
    ...measureHead(form.head, ears),
    'neck-girth': chest * form.neck,
    'chest-girth': chest,
    'belly-girth': chest * form.belly,
    'neck-to-leg': form.length * form.throat,
    'nape-to-leg': nape,
    'spine-to-leg': chest / 2 - gap / 2 - 1.8 * legHalf,
    'leg-spread': gap,
    'front-leg-girth': legGirth,
    'foot-girth': legGirth * form.leg.foot,
    'back-length': back,
    'under-length': (back - nape - 2 * legHalf) * form.under,
    'front-leg-length': form.leg.length,
    'cape-length': form.length * 0.56,
    'bib-length': form.length * 0.3,
    'scarf-length': chest * form.neck * 2.5,
    ...(tail ? { 'tail-base-girth': root, 'tail-girth': root * form.tail.thick } : {}),
  };
  return { readings, traits: { posture: 'stands', neck: neckTrait(readings) } };
}

/** A random four-legged toy, 15 to 70 cm from nape to tail. */
export function fourLeggedForm(draw: Draw): FourLeggedForm {
  const { between, wide } = draw;
  const length = 150 * (700 / 150) ** between(0, 1);
  const across = length * wide(0.16, 0.28);
  return {
    head: headForm(across * wide(0.65, 1.1), draw),
    across,
    high: across * wide(0.9, 1.25),
    length,
    coat: Math.min(1, wide(0.8, 0.97)),
    belly: wide(0.82, 1.1),
    neck: wide(0.48, 0.78),
    leg: {
      thick: wide(0.3, 0.46),
      gap: wide(0.35, 0.6),
      foot: wide(0.88, 1.25),
      length: length * wide(0.16, 0.36),
    },
    throat: Math.min(0.5, wide(0.2, 0.36)),
    nape: Math.min(0.6, wide(0.3, 0.46)),
    under: Math.min(1, wide(0.6, 0.95)),
    tail: { root: wide(0.14, 0.4), thick: wide(1, 1.5) },
  };
}
