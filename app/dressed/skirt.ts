import { lerp, type Point, point } from '../body/point';
import type { Part } from '../measuring/figure';
import { bothHalves, cloth, corner, drawnSeam, fold, hoop, stitches } from './cloth';
import type { Skirt } from './clothes';
import { gathersUnder } from './top';
import { OFF, type Wearer } from './wearer';

/** How far fullness stands out at the hem, at most, as a share of the length: gathers and pleats fall, flare swings. */
const STANDS_OUT = { gathers: 0.44, pleats: 0.34, flare: 0.95 } as const;
/** A skirt falls shorter to the eye than it is: it lies over the lap, and is seen from above. */
const SEEN = 0.86;

/** A skirt from `waist` down, in figure units. */
export function skirtParts(skirt: Skirt, waist: number, { form, half, down, fall: seen, trunkAt }: Wearer): Part[] {
  const top = Math.max(trunkAt(waist), form.waistHalf * 0.7) + OFF;
  const low = (mm: number) => Math.max(seen(waist + down(mm) * SEEN), waist + 6);
  const fall = skirt.tiers.map(({ down: mm, girth }) => {
    const y = low(mm);
    const limit = STANDS_OUT[skirt.falls] * down(mm) * SEEN;
    const spread = Math.max(half(girth) - half(skirt.top), 0) * (skirt.falls === 'flare' ? 1 : 0.6);
    return {
      y,
      half: Math.max(top + limit * Math.tanh(spread / Math.max(limit, 1)), hips(y, waist, form.hipHalf)),
    };
  });
  const hem = fall.at(-1) ?? { y: low(skirt.long), half: top };
  const right: Point[] = [...corner(point(top, waist))];
  fall.forEach((tier, index) => {
    const from = right.at(-1) ?? point(top, waist);
    right.push(lerp(from, point(tier.half, tier.y), 0.5), ...corner(point(tier.half, tier.y)));
    if (index < fall.length - 1) right.push(...corner(point(tier.half * 0.94, tier.y + 1)));
  });
  const edge = hemEdge(skirt.falls, hem.half, hem.y);
  return [
    cloth(bothHalves([point(0, waist), ...right, ...edge])),
    ...fall
      .slice(0, -1)
      .flatMap((tier) => [drawnSeam(hoop(tier.half, tier.y)), ...gathersUnder(tier.half, tier.y, 9, 9)]),
    ...foldsOf(skirt.falls, { top, waist }, hem),
    ...(skirt.falls === 'flare' ? [stitches(hoop(hem.half - 2, hem.y - 4.5))] : []),
    ...bandParts(down(skirt.band), top, waist),
  ];
}

/** The lower edge from the side to the centre: waves where cloth hangs in folds. */
function hemEdge(falls: Skirt['falls'], half: number, y: number): Point[] {
  const on = (share: number, wave: number) => point(share * half, y + 0.12 * half * (1 - share * share) + wave);
  if (falls !== 'gathers') return [on(0.6, 0), on(0, 0)];
  return [0.86, 0.72, 0.58, 0.44, 0.3, 0.15, 0].map((share, index) => on(share, index % 2 === 0 ? 2.2 : -1));
}

type Across = { readonly top: number; readonly waist: number };

/** Lines down the skirt: short creases for gathers, whole folds for pleats, a few long ones where cloth swings. */
function foldsOf(falls: Skirt['falls'], { top, waist }: Across, hem: { y: number; half: number }): Part[] {
  const line = (share: number, from: number, to: number): Part => {
    const above = point(share * top, waist + 0.12 * top * (1 - share * share));
    const below = point(share * hem.half, hem.y + 0.12 * hem.half * (1 - share * share));
    return fold([lerp(above, below, from), lerp(above, below, to)]);
  };
  if (falls === 'pleats') return [-0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75].map((share) => line(share, 0.02, 0.97));
  if (falls === 'flare') return [-0.6, 0.05, 0.62].map((share) => line(share, 0.45, 0.92));
  return [-0.82, -0.6, -0.38, -0.13, 0.13, 0.38, 0.6, 0.82].map((share, index) =>
    line(share, 0.03, index % 2 ? 0.5 : 0.3),
  );
}

function bandParts(high: number, half: number, waist: number): Part[] {
  if (high <= 0) return [];
  const upper = hoop(half, waist - Math.max(high, 4));
  return [
    cloth([
      ...upper.flatMap((at, index) => (index % 4 === 0 ? corner(at) : [at])),
      ...hoop(half + 0.5, waist)
        .reverse()
        .flatMap((at, index) => (index % 4 === 0 ? corner(at) : [at])),
    ]),
  ];
}

const hips = (y: number, waist: number, hip: number): number => (y - waist > 12 ? hip + OFF : 0);
