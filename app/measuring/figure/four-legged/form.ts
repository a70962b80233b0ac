import type { Knowns, Traits } from '../../../body';
import { point } from '../../../body/point';
import { headForm } from '../head/form';
import { stretchOf } from '../stretch';

/**
 * The sizes a four-legged toy is drawn from, in toy units: y down from the spine, x from the middle of the trunk toward
 * the head. The typical toy's trunk is 88 deep and about 180 long.
 */
export type FourLeggedForm = ReturnType<typeof fourLeggedForm>;

export function fourLeggedForm(traits: Traits, knowns: Knowns) {
  const by = stretchOf('four-legged', knowns);
  const half = 75 * by('back-length', 'nape-to-leg');
  const chestHalf = 44 * by('chest-girth');
  const bellyHalf = 42 * by('belly-girth');
  const legHalf = 14 * by('front-leg-girth');
  const stands = traits.posture === 'stands';
  const legLength = 74 * by('front-leg-length', 'height');
  const lowest = 2 * Math.max(chestHalf, bellyHalf);
  const ground = stands
    ? Math.max(2 * chestHalf - 32 + legLength, lowest + 10)
    : lowest + 5 + Math.max(0, 30 * (by('height') - 1));
  const sideChin = point(half + 35, -30);
  return {
    traits,
    head: headForm(traits, by, { chin: point(0, -14), sideChin, snout: 1.22, size: 0.84 }),
    half,
    chestHalf,
    bellyHalf,
    neckHalf: 25 * by('neck-girth'),
    legTop: Math.min(50 * by('spine-to-leg'), 1.7 * chestHalf),
    legHalf,
    footHalf: 14.5 * by('foot-girth'),
    ground,
    legApart: Math.min(31 * by('leg-spread'), 0.92 * chestHalf),
    chestDrop: Math.min(62 * by('neck-to-leg'), 1.72 * chestHalf, ground - 26),
    sleeveReach: by('front-leg-length'),
    underReach: by('under-length'),
    capeReach: by('cape-length'),
    bibLength: Math.min(46 * by('bib-length'), 1.72 * chestHalf),
    scarfLength: Math.min(62 * by('scarf-length'), 1.72 * chestHalf),
    tailHalf: 7.5 * by('tail-base-girth'),
    tailThick: 10 * by('tail-girth'),
  };
}
