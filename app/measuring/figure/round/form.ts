import type { Knowns, Traits } from '../../../body';
import { point } from '../../../body/point';
import { headForm } from '../head/form';
import { stretchOf } from '../stretch';

/**
 * The sizes a round toy is drawn from, in toy units: y down from its fullest line, x right from the middle. The typical
 * toy is 162 high and 130 wide. Its face is set in its upper half like a head of its own.
 */
export type RoundForm = ReturnType<typeof roundForm>;

export function roundForm(traits: Traits, knowns: Knowns) {
  const by = stretchOf('round', knowns);
  const tall = by('height');
  const bodyHalf = 66 * by('body-girth');
  const headHalf = 43 * by('head-girth', 'over-head');
  const [top, base] = [104 * tall, 58 * tall];
  const ground = base + 6;
  const chin = -23 * tall;
  const face = headForm(traits, by, { chin: point(0, chin), sideChin: point(4, chin), snout: 0.9, size: 0.86 });
  return {
    traits,
    head: { ...face, half: 0.84 * bodyHalf, halfDepth: 0.76 * bodyHalf, height: 74 * tall },
    /** Ears sit on the narrower crown. */
    crown: { ...face, chin: point(0, chin - 6), half: 0.96 * headHalf, height: 76 * tall },
    top,
    base,
    ground,
    headHalf,
    topHalf: 54 * by('top-girth'),
    topHeight: Math.min(50 * by('top-height'), 0.66 * top),
    neckHalf: (traits.neck === 'clear' ? 57 : 61) * by('neck-girth'),
    neckHeight: 0.25 * top,
    bodyHalf,
    waistHalf: 64.5 * by('waist-girth'),
    waistHeight: 0.3 * base,
    hemHalf: 60 * by('hem-girth'),
    hemHeight: 0.58 * base,
    baseHalf: 53 * by('base-girth'),
    baseHeight: Math.min(43 * by('base-height'), 0.9 * base),
    skirtReach: by('waist-to-hem'),
    capeLength: 68 * tall * by('cape-length'),
    bibLength: Math.min(50 * tall * by('bib-length'), 0.25 * top + 0.9 * base),
    scarfLength: Math.min(64 * tall * by('scarf-length'), 0.25 * top + 0.9 * base),
    wingHalf: 13 * by('wing-base'),
    wingHeight: Math.min(Math.max(ground - 84 * by('wing-height'), -0.6 * top), 0.5 * base),
    tailHalf: 8 * by('tail-base-girth'),
    tailThick: 11 * by('tail-girth'),
  };
}
