import type { Knowns, MeasureId, Traits } from '../../../body';
import { point } from '../../../body/point';
import { headForm } from '../head/form';
import { stretchOf } from '../stretch';

/**
 * The sizes an upright toy is drawn from, in toy units: half widths, heights and lengths. The typical toy is 92 high
 * in the head and 124 in the trunk; each reading stretches what it measures.
 */
export type UprightForm = ReturnType<typeof uprightForm>;

const SHOULDER_HEIGHT = { square: 7, sloped: 15, none: 21 } as const;
const SHOULDER_REACH = { square: 19, sloped: 15, none: 7 } as const;

export function uprightForm(traits: Traits, knowns: Knowns) {
  const by = stretchOf('upright', knowns);
  const chin = traits.neck === 'clear' ? -8 : 4;
  const head = headForm(traits, by, { chin: point(0, chin), sideChin: point(5, chin), snout: 1, size: 1 });
  return { traits, head, ...trunkSizes(traits, by), ...limbSizes(by, known(knowns)) };
}

type By = ReturnType<typeof stretchOf>;

function trunkSizes(traits: Traits, by: By) {
  const height = 124 * by('body-length', 'back-body-length', 'body-rise', 'crotch-length', 'body-loop');
  const neckHalf = (traits.neck === 'clear' ? 24 : 29) * by('neck-girth');
  const chestHalf = 46 * by('chest-girth');
  const reach = SHOULDER_REACH[traits.shoulders] * by('shoulder-length', 'across-shoulders');
  return {
    neckHalf,
    shoulderHalf: Math.min(neckHalf + reach, 1.15 * chestHalf),
    shoulderHeight: SHOULDER_HEIGHT[traits.shoulders],
    chestHalf,
    chestHalfDepth: 42 * by('chest-girth'),
    waistHalf: 51 * by('waist-girth', 'body-girth'),
    tummyHalf: 57 * by('body-girth', 'front-width', 'back-width'),
    tummyHalfDepth: 48 * by('body-girth', 'front-width', 'back-width'),
    hipHalf: 52 * by('hip-girth', 'hem-girth'),
    hipHalfDepth: 48 * by('hip-girth', 'hem-girth'),
    trunkHeight: height,
    chestHeight: 0.4 * height,
    waistHeight: (0.4 + 0.13 * by('underarm-to-waist')) * height,
    tummyHeight: 0.67 * height,
    hipHeight: 0.86 * height,
    hemHeight: within(0.82 * by('body-length') * (124 / height), 0.45, 0.88) * height,
    bandTop: (0.53 - 0.2 * by('bodice-height')) * height,
    sideHem: within(0.4 + 0.42 * by('side-length'), 0.46, 0.97) * height,
    crotchFront: within(0.97 * by('front-crotch'), 0.82, 1.04) * height,
    tailHeight: within(0.53 + 0.32 * by('waist-to-tail'), 0.62, 1) * height,
    strapBack: 26 * (by('strap-length') - 1),
    sideInset: by('side-inset'),
    frontNeckDrop: 24 * by('front-neck-drop'),
    backNeckDrop: 11 * by('back-neck-drop'),
    bibLength: 0.5 * height * by('bib-length'),
    capeLength: 0.88 * height * by('cape-length'),
    scarfLength: 0.52 * height * by('scarf-length'),
  };
}

/** Whose foot's length nobody took has one that goes with its girth. */
const known = (knowns: Knowns) =>
  knowns['foot-length'] && knowns['foot-length'].from !== 'estimate' ? 'foot-length' : 'foot-girth';

function limbSizes(by: By, foot: MeasureId) {
  return {
    overArms: by('over-arms-girth'),
    armRootHalf: 15.5 * by('arm-root-girth', 'armhole-depth'),
    upperArmHalf: 14.8 * by('upper-arm-girth'),
    pawHalf: 14 * by('paw-girth'),
    armLength: 84 * by('arm-length', 'underarm-length'),
    legHalf: 17.5 * by('thigh-girth'),
    footHalf: 17 * by('foot-girth'),
    footLong: 17 * by(foot),
    legLength: 60 * by('inside-leg-length', 'waist-to-hem', 'height'),
    skirtLength: by('waist-to-hem'),
    tailHalf: 8 * by('tail-base-girth'),
    tailThick: 11 * by('tail-girth'),
  };
}

const within = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);
