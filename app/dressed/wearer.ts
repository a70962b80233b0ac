import { point } from '../body/point';
import { across, type Bare, smoothPoints } from '../measuring/figure';

/** Figure units to the mm along the trunk, and half a width to the mm of girth, on the typical toy: read off its figure. */
const ALONG = 0.68;
const HALF_ROUND = 0.127;

/** What lies forward over a lap is seen so much shorter. */
const OVER_LAP = 0.42;

/** Cloth stands off the fur by this much, in figure units, or its line would lie on the toy's. */
export const OFF = 1.8;

/** A toy to be dressed: its figure, and finished sizes turned into the figure's own units. */
export type Wearer = Bare & {
  readonly down: (mm: number) => number;
  readonly half: (girth: number) => number;
  /** A height as it is seen: cloth that reaches the lap of a sitting toy lies forward, and none goes through the table. */
  readonly fall: (y: number) => number;
  /** Half the trunk's width at a height; the hip's below it. */
  readonly trunkAt: (y: number) => number;
};

/** Where a top's hem is seen: never above the chest. */
export const hemOf = ({ fall, down, form }: Pick<Wearer, 'fall' | 'down' | 'form'>, mm: number): number =>
  fall(Math.max(down(mm), form.chestHeight + 6));

export function wearerOf(bare: Bare): Wearer {
  const dense = smoothPoints(bare.trunk, true);
  const { form, legs, size } = bare;
  return {
    ...bare,
    down: (mm) => (mm * ALONG) / size,
    fall: (y) => {
      const lap = form.traits.posture === 'sits' ? form.hipHeight : Number.POSITIVE_INFINITY;
      return Math.min(y > lap ? lap + (y - lap) * OVER_LAP : y, legs.ground - 2);
    },
    half: (girth) => (girth * HALF_ROUND) / size,
    trunkAt: (y) => {
      if (y > form.hipHeight) return form.hipHalf;
      return across(dense, point(0, Math.max(y, 1)), point(1, 0))[1].x;
    },
  };
}
