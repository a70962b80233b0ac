import { lerp, moved, type Point, right, toward } from '../body/point';
import { type Part, station } from '../measuring/figure';
import { cloth, corner, drawnSeam, fold, otherHalf, stitches } from './cloth';
import type { Sleeve, Wrist } from './clothes';
import { OFF, type Wearer } from './wearer';

/** Where on the arm's axis the underarm is, and the cuff of a sleeve that is as long as asked. */
const UNDERARM = 0.16;
const CUFF = 0.8;

/** Both sleeves, to lie on the arms and under the trunk. */
export function sleeveParts(sleeve: Sleeve, wearer: Wearer): Part[] {
  const end = Math.min(UNDERARM + (CUFF - UNDERARM) * sleeve.reach, 0.98);
  const wide = (t: number) => {
    const share = (t - UNDERARM) / Math.max(end - UNDERARM, 0.01);
    if (sleeve.puffed) return t >= end ? Math.min(sleeve.cuff, 1.2) : Math.min(sleeve.upper, 1.75);
    if (sleeve.elastic && t > end - 0.05) return 1.04;
    const plain = sleeve.upper + (sleeve.cuff - sleeve.upper) * Math.max(share, 0);
    return Math.min(Math.max(plain, 1.06), 1.5);
  };
  const rib = sleeve.rib > 0 ? Math.max((CUFF - UNDERARM) * sleeve.rib, 0.05) : 0;
  return [...tube(-0.04, end, wide, wearer, rib), ...ribParts(end - rib, end, wide, wearer)];
}

/** A tube round the paw's end of each arm. */
export function wristParts(wrist: Wrist, wearer: Wearer): Part[] {
  const long = wearer.down(wrist.long) / Math.max(wearer.form.armLength, 1);
  const end = 0.86;
  return tube(Math.max(end - long, 0.1), end, () => Math.min(Math.max(wrist.girth, 1.05), 1.4), wearer);
}

/** The lines of a band of rib round the end of each arm. */
function ribParts(from: number, to: number, wide: (t: number) => number, wearer: Wearer): Part[] {
  if (to <= from) return [];
  const [above, below] = [across(wearer, from, wide(from)), across(wearer, to, wide(to))];
  return [0.2, 0.4, 0.6, 0.8].flatMap((share) => {
    const line = [lerp(...above, share), lerp(...below, share)];
    return [fold(line), fold(otherHalf(line))];
  });
}

/** `rib`: so much of the arm's axis at its end is a band, or none: a hem's stitches. */
function tube(from: number, to: number, wide: (t: number) => number, wearer: Wearer, rib = 0): Part[] {
  const steps = [0, 0.25, 0.5, 0.75, 1].map((share) => from + (to - from) * share);
  const edges = steps.map((t) => across(wearer, t, wide(t)));
  const [uppers, lowers] = [edges.map(([upper]) => upper), edges.map(([, lower]) => lower)];
  const ends = (line: Point[]): Point[] => [
    ...corner(line[0] as Point),
    ...line.slice(1, -1),
    ...corner(line.at(-1) as Point),
  ];
  const shape = [...ends(uppers), ...ends(lowers).reverse()];
  const end = to - (rib || 0.06);
  const hem = across(wearer, end, wide(end));
  const line = rib ? drawnSeam : stitches;
  return [cloth(shape), line(hem), cloth(otherHalf(shape)), line(otherHalf(hem))];
}

/** Both edges of a tube at a share of the arm's axis. */
function across({ arm, form }: Wearer, t: number, wide: number): [Point, Point] {
  const { at, toward: next } = station(arm.axis, t);
  const aside = right(toward(at, next));
  const half =
    t < 0.5
      ? mix(form.armRootHalf, form.upperArmHalf, Math.max(t, 0) * 2)
      : mix(form.upperArmHalf, form.pawHalf, t * 2 - 1);
  return [moved(at, aside, -half * wide - OFF), moved(at, aside, half * wide + OFF)];
}

const mix = (a: number, b: number, share: number) => a + (b - a) * share;
