import { lerp, moved, point, right, toward } from '../body/point';
import { type Part, station } from '../measuring/figure';
import { strapParts } from './band';
import { bothHalves, cloth, corner, drawnSeam, hoop, otherHalf, stitches } from './cloth';
import type { Bib, Legs } from './clothes';
import { OFF, type Wearer } from './wearer';

/** Where on a leg's axis trouser legs of the asked length end. */
const HEM = 0.8;

/** Trousers: a tube on either leg, and the seat between them and the waist. */
export function legParts(legs: Legs, waist: number, wearer: Wearer): { tubes: Part[]; seat: Part[] } {
  const {
    form,
    legs: { axis },
    trunkAt,
    down,
  } = wearer;
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
      ...(legs.bib ? bibParts(legs.bib, waist, wearer) : []),
      cloth(bothHalves(seat)),
      drawnSeam([point(0, waist + 4), point(0, low)]),
      ...(legs.band > 0 ? [drawnSeam(hoop(half(waist + down(legs.band)), waist + down(legs.band)))] : []),
    ],
  };
}

/** A bib on the waist in front, and its straps over the shoulders. */
function bibParts({ half, high, strapWide, crossed }: Bib, waist: number, { form, down, view }: Wearer): Part[] {
  const ahead = view === 'front';
  const top = ahead ? Math.max(waist - down(high), form.shoulderHeight) : waist - 4;
  const wide = Math.min(down(half), 0.9 * form.shoulderHalf);
  const straps = { top, peak: 0, half: wide / STRAP_AT, wide: Math.max(down(strapWide) / 2, 4), form, view };
  const bib = [point(0, top), ...corner(point(wide, top)), ...corner(point(wide, waist + 2)), point(0, waist + 2)];
  return [
    ...strapParts({ straps: crossed ? 'crossed' : 'straight' }, straps),
    ...(ahead ? [cloth(bothHalves(bib)), stitches([point(-0.85 * wide, top + 3), point(0.85 * wide, top + 3)])] : []),
  ];
}

/** Where straps stand, as a share of the half width they are drawn for: a little inside the bib's corners. */
const STRAP_AT = 0.7;
