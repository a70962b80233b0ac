import { type Point, point } from '../body/point';
import type { Part } from '../measuring/figure';
import { bothHalves, cloth, corner, drawnSeam, fold, inside, otherHalf, stitches } from './cloth';
import type { ApronHung, Hung } from './clothes';

/** Where something hangs: the crease of a neck, half its width, and mm in the figure's units. */
export type Neck = {
  readonly crease: number;
  readonly half: number;
  readonly shoulder: number;
  readonly down: (mm: number) => number;
  readonly round: (girth: number) => number;
  readonly ground: number;
  /** As low as anything hangs. */
  readonly lowest: number;
  readonly view: 'front' | 'back';
};

export function hungParts(hung: Hung, neck: Neck): Part[] {
  switch (hung.kind) {
    case 'bag':
      return bagParts(hung, neck);
    case 'cape':
      return capeParts(hung, neck);
    case 'bib':
      return bibParts(hung, neck);
    case 'scarf':
      return scarfParts(hung, neck);
    case 'bow':
      return bowParts(hung, neck);
    case 'apron':
      return apronParts(hung, neck);
  }
}

function capeParts(
  { long, girth }: { long: number; girth: number },
  { crease, half, shoulder, down, round, lowest, view }: Neck,
): Part[] {
  const hem = Math.min(crease + down(long), lowest);
  const wide = Math.min(Math.max(round(girth), 1.25 * shoulder), 0.95 * down(long) + shoulder);
  const on = (share: number, y: number) => point(share * wide, y + 0.12 * wide * (1 - share * share));
  const right = [
    ...corner(point(half, crease)),
    point(shoulder * 0.86, crease + 0.14 * (hem - crease)),
    point(0.9 * wide, crease + 0.68 * (hem - crease)),
    ...corner(on(1, hem)),
    on(0.6, hem),
    on(0, hem),
  ];
  const open = view === 'front' ? [drawnSeam([point(0, crease + 4), on(0, hem)])] : [];
  const swing = [0.45, 0.75].map((share) =>
    fold([point(0.6 * share * wide, crease + 0.45 * (hem - crease)), on(share, hem - 6)]),
  );
  const hemmed = [-0.98, -0.6, 0, 0.6, 0.98].map((share) => on(share, hem - 4.5));
  return [
    cloth(bothHalves([point(0, crease + 5), ...right])),
    ...open,
    ...swing,
    ...swing.map(({ points }) => fold(otherHalf(points))),
    stitches(hemmed),
  ];
}

/** A bag to sleep in: from under the arms to under the feet, a fold of its upper edge turned down. */
function bagParts(
  { long, girth }: { long: number; girth: number },
  { crease, shoulder, down, round, ground }: Neck,
): Part[] {
  const top = Math.max(ground - 0.86 * down(long), crease + 0.3 * (ground - crease));
  const wide = Math.min(Math.max(round(girth), 0.95 * shoulder), 1.4 * shoulder);
  const low = ground + 6;
  const right = [...corner(point(wide, top)), point(1.04 * wide, top + 0.6 * (low - top)), point(0.86 * wide, low - 7)];
  const edge = (y: number) => [-1, -0.5, 0, 0.5, 1].map((share) => point(share * wide, y + 5 * (1 - share * share)));
  return [
    cloth(bothHalves([point(0, top + 5), ...right, point(0, low)])),
    inside([...edge(top), ...edge(top + 13).reverse()].flatMap(corner)),
    stitches(edge(top + 17)),
  ];
}

function bibParts({ long, half }: { long: number; half: number }, { crease, half: neck, down, view }: Neck): Part[] {
  const ring = [
    point(-neck - 3, crease + 1),
    point(0, crease + 0.26 * neck),
    point(neck + 3, crease + 1),
    point(neck + 4, crease + 7),
    point(0, crease + 0.26 * neck + 8),
    point(-neck - 4, crease + 7),
  ];
  if (view === 'back') return [cloth(ring)];
  const low = crease + Math.max(down(long), 20);
  const wide = Math.max(Math.min(down(half), 1.25 * neck + 14), neck + 4);
  const right = (inset: number): Point[] => [
    ...corner(point(neck + 3 - inset, crease - 1)),
    point(wide - inset, crease + 0.45 * (low - crease)),
    point(0.72 * (wide - inset), low - 7 - 0.7 * inset),
  ];
  const edge = [...right(4), point(0, low - 4)];
  return [
    cloth([...bothHalves([...right(0), point(0, low)]), point(0, crease + 0.26 * neck)]),
    stitches([...edge, ...otherHalf(right(4)).reverse()]),
  ];
}

function scarfParts(
  { long, wide }: { long: number; wide: number },
  { crease, half, down, lowest, view }: Neck,
): Part[] {
  const thick = Math.min(Math.max(down(wide) * 0.8, 9), 0.9 * half);
  const [y, reach] = [crease + 1, half + 4];
  const band = [
    point(-reach, y - thick * 0.45),
    point(0, y + 0.2 * half - thick * 0.3),
    point(reach, y - thick * 0.45),
    point(reach + 2, y + thick * 0.45),
    point(0, y + 0.2 * half + thick * 0.75),
    point(-reach - 2, y + thick * 0.45),
  ];
  if (view === 'back') return [cloth(band)];
  const tail = Math.min(Math.max((down(long) - 5.2 * half) / 2, thick), lowest - crease - 0.3 * half);
  const end = (at: Point, lean: number): Part[] => {
    const foot = point(at.x + lean * tail, at.y + tail * (1 - 0.15 * Math.abs(lean)));
    const fringe = [-0.3, 0, 0.3].map((share) =>
      fold([point(foot.x + share * thick, foot.y - 5), point(foot.x + share * thick, foot.y)]),
    );
    return [
      cloth(
        [
          point(at.x - thick / 2, at.y),
          point(at.x + thick / 2, at.y),
          point(foot.x + thick / 2, foot.y),
          point(foot.x - thick / 2, foot.y),
        ].flatMap(corner),
      ),
      ...fringe,
    ];
  };
  const knot = point(0.34 * half, y + 0.2 * half);
  return [
    ...end(point(knot.x - 2, knot.y), -0.14),
    ...end(point(knot.x + thick * 0.3, knot.y + 2), 0.1),
    cloth(band),
    inside([
      point(knot.x - thick * 0.55, knot.y - thick * 0.5),
      point(knot.x + thick * 0.6, knot.y - thick * 0.42),
      point(knot.x + thick * 0.7, knot.y + thick * 0.62),
      point(knot.x - thick * 0.45, knot.y + thick * 0.66),
    ]),
  ];
}

/** A bow on its band: two loops and a knot. */
function bowParts({ wide, deep }: { wide: number; deep: number }, { crease, half, down, view }: Neck): Part[] {
  const band = cloth(bandOf(half, crease - 2));
  if (view === 'back') return [band, drawnSeam([point(3, crease - 2), point(3, crease - 2 + STRAP)])];
  const [out, high] = [Math.max(down(wide) / 2, 8), Math.max(down(deep) / 2, 5)];
  const middle = crease + 1;
  const loop = [
    ...corner(point(0, middle - high * 0.35)),
    ...corner(point(out, middle - high)),
    point(out * 1.06, middle),
    ...corner(point(out, middle + high)),
    ...corner(point(0, middle + high * 0.35)),
  ];
  const pleat = [point(out * 0.25, middle), point(out * 0.75, middle - high * 0.2)];
  const [knot, tall] = [out * 0.2, high * 0.55];
  return [
    band,
    cloth(loop),
    cloth(otherHalf(loop)),
    fold(pleat),
    fold(otherHalf(pleat)),
    cloth(
      [
        point(-knot, middle - tall),
        point(knot, middle - tall),
        point(knot, middle + tall),
        point(-knot, middle + tall),
      ].flatMap(corner),
    ),
  ];
}

/** How deep a strap is drawn, and a strap straight across. */
const STRAP = 5;
const bandOf = (half: number, top: number): Point[] =>
  [point(-half, top), point(half, top), point(half, top + STRAP), point(-half, top + STRAP)].flatMap(corner);

/** In front the apron with its pocket, straps up to the neck; behind, what closes it. */
function apronParts(apron: ApronHung, { crease, half, shoulder, down, lowest, view }: Neck): Part[] {
  const top = crease + down(apron.below) * 0.6;
  const waist = top + down(apron.bibHigh);
  const low = Math.min(top + down(apron.long), lowest);
  const wide = Math.min(down(apron.half) * 0.92, shoulder * 1.15);
  const bib = Math.min(down(apron.bib), wide * 0.7);
  const strap = (from: Point, to: Point) => drawnSeam([from, to]);
  if (view === 'back')
    return [
      cloth(bandOf(half, crease - 1)),
      cloth(bandOf(shoulder, waist)),
      drawnSeam([point(3, waist), point(3, waist + STRAP)]),
    ];
  const right = [...corner(point(bib, top)), ...corner(point(wide, waist)), ...corner(point(wide, low))];
  const pocket = [
    point(-wide * 0.55, waist + (low - waist) * 0.25),
    point(wide * 0.55, waist + (low - waist) * 0.25),
    point(wide * 0.55, waist + (low - waist) * 0.7),
    point(-wide * 0.55, waist + (low - waist) * 0.7),
  ];
  return [
    strap(point(-bib + 3, top), point(-half, crease)),
    strap(point(bib - 3, top), point(half, crease)),
    cloth(bothHalves([point(0, top), ...right, point(0, low)])),
    drawnSeam([...pocket, pocket[0] ?? point(0, waist)]),
    stitches([-0.9, -0.4, 0, 0.4, 0.9].map((share) => point(share * wide, low - 4))),
  ];
}
