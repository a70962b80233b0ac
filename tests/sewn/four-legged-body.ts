import type { Body } from '../../app/body';
import type { Figure, Limb } from './figure';
import { ellipsoid, limb, union } from './solid';
import { plus, spot } from './space';
import { trunk } from './trunk';

const ROUND = 2 * Math.PI;
/** A neck leans up from the barrel (imagined): how far its end lies towards the back, of its radius. */
const RAISED = 0.5;

/**
 * A toy on four legs, stood on its tail: nose up, belly in front, legs towards who looks, so that y runs from the neck
 * along the back; it falls towards its legs. A barrel of girths, a neck, a head; lengths along the back from the nape.
 */
export function fourLeggedFigure({ sizes }: Pick<Body, 'sizes'>): Figure {
  const of = (id: keyof typeof sizes) => sizes[id]?.value ?? 0;
  const [neck, chest, belly] = [of('neck-girth'), of('chest-girth'), of('belly-girth')].map(
    (girth) => girth / ROUND,
  ) as [number, number, number];
  const thick = of('front-leg-girth') / ROUND;
  const fore = (of('neck-to-leg') + of('nape-to-leg')) / 2 + thick;
  const hind = fore + thick + of('under-length') + thick;
  const end = Math.max(of('back-length') + 10, hind + thick);
  const row = (down: number, radius: number, back: number) => ({
    down,
    girth: ROUND * radius,
    across: radius * 0.97,
    front: 0.5,
    back,
  });
  const raised = RAISED * neck;
  const barrel = trunk(
    [row(0, neck, raised), row(fore, chest, 0), row(hind - thick, belly, 0), row(end - 1, belly, 0)],
    end - 0.6 * belly,
    end + 0.3 * belly,
    3,
  );
  const head = { centre: spot(0, -0.8 * (of('head-girth') / ROUND), -raised), half: spot(1, 1, 1) };
  const round = of('head-girth') / ROUND;
  const legs = [fore, hind].flatMap((down) =>
    [1, -1].map(
      (side): Limb => ({
        root: spot(side * (of('leg-spread') / 2 + thick), down, 0),
        way: spot(0, 0, 1),
        thick,
        girth: thick,
        thin: of('foot-girth') / ROUND,
        length: chest + of('front-leg-length') + thick,
        side,
      }),
    ),
  );
  const solid = union([
    barrel.part,
    limb(spot(0, 0, -raised), head.centre, neck, Math.min(neck, 0.8 * round)),
    ellipsoid(head.centre, spot(round, round, round)),
    ...legs.map(({ root, way, thick: wide, thin, length }) => limb(root, plus(root, way, length), wide, thin)),
  ]);
  return {
    solid,
    section: barrel.section,
    head: { ...head, half: spot(round, round, round) },
    arms: [],
    legs,
    lines: {
      neck: 0,
      shoulder: { x: neck, y: 0 },
      underarm: fore,
      waist: hind,
      hem: of('back-length'),
      seat: end,
      crotch: end,
    },
    hem: { front: hind - thick, back: of('back-length') },
    falls: 'z',
    residuals: {},
  };
}
