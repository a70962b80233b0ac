import type { Traits } from '../../app/body';
import { type Draw, type Measured, neckTrait, type Readings } from './form';
import { type HeadForm, headForm, measureHead } from './head';
import { ellipsePerimeter } from './solids';
import type { BuiltAs } from './upright-builds';

/**
 * An upright toy as solids: an ellipsoid for the head, an egg of ellipses for the trunk, tubes for arms and legs. Half
 * axes and lengths in mm; shares are plain ratios. Readings are taken from the solids, not from the app's own model.
 */
export type UprightForm = {
  /** Crown to sole, ears not counted. */
  readonly tall: number;
  readonly head: HeadForm;
  /** Fullest half axes; girths at other heights as a share of the fullest; the share of it before the side lines. */
  readonly trunk: {
    readonly across: number;
    readonly deep: number;
    readonly chest: number;
    readonly hem: number;
    readonly waist: number;
    readonly hip: number;
    readonly front: number;
  };
  /** Neck girth as a share of the chest girth. */
  readonly neck: number;
  /** Angle at which the shoulders fall, radians. */
  readonly slope: number;
  /** From the shoulder's neck end over the tummy to a hip-length hem, mm; and the back's share of it. */
  readonly length: number;
  readonly back: number;
  readonly arm: ArmForm;
  readonly leg: LegForm;
  /** Root of the tail (share of the fullest half width), and how much thicker it gets. */
  readonly tail: { readonly root: number; readonly thick: number; readonly high: number };
};

export type ArmForm = {
  /** Shoulder end to underarm as a share of the length; front-to-back thickness of the root as a share of that. */
  readonly depth: number;
  readonly thick: number;
  /** How far the pattern's arm end lies in, as a share of half the root girth less the depth. */
  readonly inset: number;
  readonly upper: number;
  readonly paw: number;
  /** Sleeve length, mm; and how much shorter the underarm is, as a share of the depth. */
  readonly length: number;
  readonly cap: number;
};

export type LegForm = {
  /** Waist to table as a share of the length; half thickness of the thigh as a share of the fullest half width. */
  readonly rise: number;
  readonly thigh: number;
  readonly foot: number;
  /** How long a foot is, of the way round heel and instep. */
  readonly sole: number;
  /** Wished inside leg, mm. */
  readonly stride: number;
  /** How low the waist lies between underarm and hem (share). */
  readonly waist: number;
};

/** No shoulder of under 5 mm is read: there is none to hold a tape to. */
const LEAST_SHOULDER_MM = 5;

export function measureUpright(form: UprightForm, ears: Traits['ears'], tail: boolean): Measured {
  const { trunk, arm } = form;
  const girth = ellipsePerimeter(trunk.across, trunk.deep);
  const chest = girth * trunk.chest;
  const neckHalf = (chest * form.neck) / 5.3;
  const depth = form.length * arm.depth;
  const root = ellipsePerimeter(depth / 2, (depth / 2) * arm.thick);
  const inset = Math.max(3, (root / 2 - depth) * arm.inset);
  const shoulder = (chest / 4 - inset - neckHalf) / Math.cos(form.slope);
  const drop = Math.max(0, shoulder) * Math.sin(form.slope);
  const readings: Readings = {
    height: form.tall,
    ...measureHead(form.head, ears),
    'neck-girth': chest * form.neck,
    'chest-girth': chest,
    'body-girth': girth,
    'front-width': girth * trunk.front,
    'back-width': girth * (1 - trunk.front),
    'hem-girth': girth * trunk.hem,
    'waist-girth': girth * trunk.waist,
    'hip-girth': girth * trunk.hip,
    'over-arms-girth': ellipsePerimeter(trunk.across + (root * arm.upper * 0.85) / Math.PI, trunk.deep),
    'across-shoulders': 2 * (neckHalf + Math.max(0, shoulder) * Math.cos(form.slope)) * 1.04,
    'side-inset': inset,
    'armhole-depth': depth,
    'arm-root-girth': root,
    'upper-arm-girth': root * arm.upper,
    'paw-girth': root * arm.upper * arm.paw,
    'body-length': form.length,
    'back-body-length': form.length * form.back,
    'side-length': (form.length - depth - drop) * (0.6 + 0.4 * form.back),
    'front-neck-drop': neckHalf * 0.95,
    'back-neck-drop': neckHalf * 0.32,
    'arm-length': arm.length,
    'underarm-length': Math.max(arm.length - depth * arm.cap, arm.length * 0.3),
    'cape-length': form.length * 1.05,
    'bib-length': form.length * 0.56,
    'scarf-length': chest * form.neck * 2.6,
    ...below(form, girth, depth, form.length - depth - drop),
    ...(tail ? tailReadings(form) : {}),
  };
  const neck = neckTrait(readings);
  if (shoulder < LEAST_SHOULDER_MM) return { readings, traits: { shoulders: 'none', neck } };
  return {
    readings: { ...readings, 'shoulder-length': shoulder },
    traits: { shoulders: form.slope < 0.12 ? 'square' : 'sloped', neck },
  };
}

/** From the underarm down; `side` is the way from there to a hip-length hem. */
function below({ leg, trunk, length }: UprightForm, girth: number, depth: number, side: number): Readings {
  const toWaist = side * leg.waist;
  const rise = length * leg.rise;
  const crotch = 2 * rise + 1.75 * trunk.deep * trunk.waist;
  const thigh = 2 * Math.PI * trunk.across * leg.thigh;
  return {
    'underarm-to-waist': toWaist,
    'bodice-height': toWaist * 1.15,
    'strap-length': depth * 1.6,
    'waist-to-hem': rise + leg.stride * 0.85,
    'body-rise': rise,
    'crotch-length': crotch,
    'front-crotch': crotch * trunk.front * 0.98,
    'thigh-girth': Math.min(thigh, girth * 0.75),
    'foot-girth': Math.min(thigh, girth * 0.75) * leg.foot,
    'foot-length': Math.min(thigh, girth * 0.75) * leg.foot * leg.sole,
    'inside-leg-length': leg.stride,
    'body-loop': 2 * (depth + toWaist + rise) + 1.1 * trunk.deep,
  };
}

function tailReadings({ tail, trunk, leg, length }: UprightForm): Readings {
  const root = 2 * Math.PI * trunk.across * tail.root;
  return {
    'waist-to-tail': length * leg.rise * tail.high,
    'tail-base-girth': root,
    'tail-girth': root * tail.thick,
  };
}

/** A random upright toy of a build, 18 cm to 1 m tall. */
export function uprightForm(draw: Draw, build: BuiltAs): UprightForm {
  const { between, wide } = draw;
  const height = 180 * (1000 / 180) ** between(0, 1);
  const across = height * wide(...build.across);
  return {
    tall: height,
    head: headForm(height * wide(...build.head), draw),
    trunk: {
      across,
      deep: across * wide(0.72, 1.02),
      chest: wide(0.84, 0.99),
      hem: wide(0.86, 1.03),
      waist: wide(...build.waist),
      hip: wide(...build.hip),
      front: Math.min(0.7, wide(0.47, 0.55)),
    },
    neck: Math.min(1.1, wide(...build.neck)),
    length: height * wide(...build.length),
    back: Math.min(1.1, wide(0.86, 0.98)),
    slope: between(0, 0.35),
    arm: {
      depth: Math.min(0.7, wide(...build.armhole)),
      thick: wide(0.5, 1),
      inset: wide(0.85, 1.2),
      upper: wide(0.88, 1.08),
      paw: wide(0.78, 1.15),
      length: height * wide(...build.arm),
      cap: between(0, 1) < 0.75 ? wide(0.32, 0.62) : wide(0.04, 0.3),
    },
    leg: {
      rise: wide(...build.rise),
      thigh: wide(...build.thigh),
      foot: wide(0.88, 1.3),
      stride: height * wide(...build.stride),
      waist: wide(...build.waistAt),
      sole: wide(0.28, 0.55),
    },
    tail: { root: wide(0.12, 0.4), thick: wide(1, 1.6), high: Math.min(0.95, wide(0.5, 0.85)) },
  };
}
