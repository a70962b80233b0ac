import type { Body } from '../../app/body';
import type { Figure } from './figure';
import { level, union } from './solid';
import { spot } from './space';

const ROUND = 2 * Math.PI;

/** A round toy: two half ellipsoids on its fullest line, by the girths above and below it; its neck at height 0. */
export function roundFigure({ sizes }: Pick<Body, 'sizes'>): Figure {
  const of = (id: keyof typeof sizes) => sizes[id]?.value ?? 0;
  const full = of('body-girth') / ROUND;
  /** How high a half ellipsoid is that has a girth at a height. */
  const reach = (girth: number, height: number) => height / Math.sqrt(Math.max(0.05, 1 - (girth / ROUND / full) ** 2));
  const [upper, lower] = [reach(of('top-girth'), of('top-height')), reach(of('base-girth'), of('base-height'))];
  const middle = upper * Math.sqrt(Math.max(0, 1 - (of('neck-girth') / ROUND / full) ** 2));
  const inUnits = (y: number) => (y - middle) / (y < middle ? upper : lower);
  const radius = (y: number) => full * Math.sqrt(Math.max(0.01, 1 - inUnits(y) ** 2));
  const egg = level((x, y, z) => Math.sqrt((x * x + z * z) / (full * full) + inUnits(y) ** 2) - 1);
  const foot = middle + lower;
  return {
    solid: union([{ distance: egg, centre: spot(0, middle, 0), reach: Math.max(full, upper, lower) }]),
    section: (down) => ({ across: radius(down), before: radius(down), behind: radius(down), back: 0 }),
    head: { centre: spot(0, middle - upper, 0), half: spot(full / 2, full / 2, full / 2) },
    arms: [],
    legs: [],
    lines: { neck: 0, shoulder: { x: 0, y: 0 }, underarm: middle, waist: middle, hem: foot, seat: foot, crotch: foot },
    hem: {},
    falls: 'y',
    residuals: { height: (upper + lower) / Math.max(1, of('height')) - 1 },
  };
}
