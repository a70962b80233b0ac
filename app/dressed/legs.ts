import { lerp, moved, point, right, toward } from '../body/point';
import { type Part, station } from '../measuring/figure';
import { bothHalves, cloth, corner, drawnSeam, hoop, otherHalf, stitches } from './cloth';
import type { Legs } from './clothes';
import { OFF, type Wearer } from './wearer';

/** Where on a leg's axis trouser legs of the asked length end. */
const HEM = 0.8;

/** Trousers: a tube on either leg, and the seat between them and the waist. */
export function legParts(
  legs: Legs,
  waist: number,
  { form, legs: { axis }, trunkAt, down }: Wearer,
): { tubes: Part[]; seat: Part[] } {
  const end = Math.min(Math.max(HEM * legs.reach, 0.12), 0.97);
  const wide = Math.min(Math.max(legs.girth, 1.06), 1.6);
  const across = (t: number) => {
    const { at, toward: next } = station(axis, t);
    const aside = right(toward(at, next));
    const half = (form.legHalf + (form.footHalf - form.legHalf) * t * t) * wide + OFF;
    return [moved(at, aside, -half), moved(at, aside, half)] as const;
  };
  const steps = [0, 0.5 * end, end].map(across);
  const shape = [
    ...steps.map(([one]) => one).flatMap(corner),
    ...steps
      .map(([, two]) => two)
      .reverse()
      .flatMap(corner),
  ];
  const hem = [...across(Math.max(end - 0.08, 0))];
  const low = form.trunkHeight + 1;
  const half = (y: number) => trunkAt(y) + OFF;
  const seat = [
    point(0, waist),
    ...corner(point(half(waist), waist)),
    point(half(form.tummyHeight), form.tummyHeight),
    point(half(form.hipHeight), form.hipHeight),
    ...corner(lerp(point(form.hipHalf, low - 6), point(0, low), 0.25)),
    point(0, low),
  ];
  return {
    tubes: [cloth(shape), stitches(hem), cloth(otherHalf(shape)), stitches(otherHalf(hem))],
    seat: [
      cloth(bothHalves(seat)),
      drawnSeam([point(0, waist + 4), point(0, low)]),
      ...(legs.band > 0 ? [drawnSeam(hoop(half(waist + down(legs.band)), waist + down(legs.band)))] : []),
    ],
  };
}
