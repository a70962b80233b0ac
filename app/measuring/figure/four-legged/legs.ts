import { moved, type Point, point, toward } from '../../../body/point';
import { limb, oval, station } from '../shapes';
import { closed, type Part } from '../stage';
import type { FourLeggedForm } from './form';

/** How far the far legs are seen beyond the near ones. */
const FAR = point(17, -3);

/** The legs from the side: the far pair, the near pair, and where tapes lie on the near front leg. */
export function sideLegs(form: FourLeggedForm) {
  const stands = form.traits.posture === 'stands';
  const front = stands ? standingFront(form) : lyingFront(form);
  const hind = stands ? standingHind(form) : lyingHind(form);
  const near = [...hind.map((part) => part), ...front.parts];
  const far = near.map(
    (part): Part => ({
      ...part,
      name: `far-${part.name}`,
      look: 'fur-deep',
      points: part.points.map((here) => ({ x: here.x + FAR.x, y: here.y + FAR.y })),
    }),
  );
  const root = front.axis[0] ?? point(0, 0);
  const ahead = toward(root, station(front.axis, 0.1).at);
  const top = { at: moved(root, ahead, -1.1 * form.legHalf), ahead };
  const [high, low] = [station(front.axis, 0.3), station(front.axis, 0.92)];
  const edge = (t: number) => {
    const { at, toward: next } = station(front.axis, t);
    const along = toward(at, next);
    return moved(at, { x: along.y, y: -along.x }, 0.5 * form.legHalf);
  };
  const hem = Math.min(Math.max(0.72 * form.sleeveReach, 0.25), 0.98);
  return {
    far: stands ? far : [],
    near,
    outline: front.outline,
    places: {
      legTop: top.at,
      legTopToward: moved(top.at, top.ahead, 10),
      frontLeg: high.at,
      frontLegToward: high.toward,
      foot: low.at,
      footToward: low.toward,
      sleeveTop: edge(0.04),
      sleeveMiddle: edge(hem / 2),
      sleeveHem: edge(hem),
    },
  };
}

type Leg = { readonly parts: Part[]; readonly axis: readonly Point[]; readonly outline: readonly Point[] };

function standingFront({ half, legTop, legHalf, footHalf, ground }: FourLeggedForm): Leg {
  const x = 0.5 * half;
  const axis = [point(x, legTop + 6), point(x + 1, (legTop + ground) / 2), point(x + 3, ground - 10)];
  const outline = limb(axis, [1.2 * legHalf, legHalf, 0.9 * footHalf]);
  const foot = oval(point(x + 6, ground - 8), 1.2 * footHalf, Math.min(8, 0.7 * footHalf));
  return { parts: [closed('front-leg', 'fur', outline), closed('front-foot', 'fur', foot)], axis, outline };
}

function standingHind({ half, bellyHalf, legHalf, footHalf, ground }: FourLeggedForm): Part[] {
  const x = -0.82 * half;
  const thigh = Math.min(1.7 * legHalf, 0.6 * bellyHalf);
  const axis = [point(x, 1.1 * bellyHalf), point(x - 6, (1.1 * bellyHalf + ground) / 2 + 4), point(x - 1, ground - 10)];
  return [
    closed('hind-leg', 'fur', limb(axis, [thigh, 1.05 * legHalf, 0.9 * footHalf])),
    closed('hind-foot', 'fur', oval(point(x + 3, ground - 8), 1.2 * footHalf, Math.min(8, 0.7 * footHalf))),
  ];
}

function lyingFront({ half, chestHalf, legTop, legHalf, footHalf, ground }: FourLeggedForm): Leg {
  const floor = ground - legHalf - 1;
  const top = Math.min(legTop + 6, floor - 6, 1.5 * chestHalf);
  const axis = [point(0.48 * half, top), point(0.74 * half, floor - 6), point(1.24 * half, floor)];
  const outline = limb(axis, [1.15 * legHalf, legHalf, footHalf]);
  return { parts: [closed('front-leg', 'fur', outline)], axis, outline };
}

function lyingHind({ half, bellyHalf, legHalf, footHalf, ground }: FourLeggedForm): Part[] {
  const floor = ground - footHalf - 1;
  const foot = limb(
    [point(-0.75 * half, floor), point(-0.5 * half, floor + 1), point(-0.22 * half, floor)],
    [legHalf, legHalf, footHalf],
  );
  const haunch = oval(point(-0.8 * half, 1.25 * bellyHalf), 0.4 * half, 0.72 * bellyHalf, 0.25);
  return [closed('hind-foot', 'fur', foot), closed('hind-leg', 'fur', haunch)];
}
