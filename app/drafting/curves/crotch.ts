import type { Mm } from '../../body';
import { add, cubic, line, norm, type Path, type Point, point, reversePath, scale, subtract } from '../geometry';

/** What a trouser leg is drawn from, mm: `legRaised` is how far the back rises above the front, `legFork` both forks together. */
export type LegFrame = {
  readonly legHalfHip: number;
  readonly legRise: number;
  readonly legRaised: number;
  readonly legFork: number;
  readonly legHem: number;
  readonly legInside: number;
};

/** A third of the fork lies in front, two thirds behind, so that the seam runs between the legs (common practice, no source). */
export const FRONT_FORK = 1 / 3;
/** The centre runs straight down, and turns in the last of it: so much of its fork, and at least so much of the rise. */
const TURN_OF_FORK = 1.2;
const TURN_OF_RISE = 0.35;
/** How far a handle reaches: down from the straight, and out to the inseam. */
const DOWN = 0.6;
const OUT_OF_FORK = 0.6;
const OUT_OF_TURN = 0.12;
/** How far the waist's handles reach, of its width. */
const WAIST_REACH = 0.25;

export type Corners = { readonly waist: Point; readonly fork: Point; readonly hem: Point };

/** Waist, fork and hem of the front, left of the middle of the panel, and of the back, right of it; y down from the front waist. */
export function legCorners(leg: LegFrame): Readonly<Record<'front' | 'back', Corners>> {
  const half = leg.legHalfHip / 2;
  const [front, back] = [leg.legFork * FRONT_FORK, leg.legFork * (1 - FRONT_FORK)];
  // Inseams are mirrored about the middle of the crotch line, and so are equal.
  const middle = (back - front) / 2;
  const low = leg.legRise + leg.legInside;
  return {
    front: {
      waist: point(-half, 0),
      fork: point(-half - front, leg.legRise),
      hem: point(middle - leg.legHem / 2, low),
    },
    back: {
      waist: point(half, -leg.legRaised),
      fork: point(half + back, leg.legRise),
      hem: point(middle + leg.legHem / 2, low),
    },
  };
}

/** Both crotch curves in the ring's order: the back's from the waist down to its fork, the front's from its fork up. */
export function crotchCurves(leg: LegFrame): { readonly front: Path; readonly back: Path } {
  const { front, back } = legCorners(leg);
  return { front: reversePath(centreLine(front, leg.legRise)), back: centreLine(back, leg.legRise) };
}

/** The waist rises to the back, square to both centres; as straight between them as a strip sewn along it asks. */
export function waistLine(front: Point, back: Point): Path {
  const reach = (back.x - front.x) * WAIST_REACH;
  return [cubic(front, point(front.x + reach, front.y), point(back.x - reach, back.y), back)];
}

/** How far the centre behind runs straight down from the waist, mm. */
export function straightBehind(leg: LegFrame): Mm {
  const { back } = legCorners(leg);
  return turnsAt(back, leg.legRise) - back.waist.y;
}

/** How low a centre turns towards its fork. */
function turnsAt({ waist, fork }: Pick<Corners, 'waist' | 'fork'>, rise: Mm): Mm {
  return fork.y - Math.min(Math.max(TURN_OF_FORK * Math.abs(fork.x - waist.x), TURN_OF_RISE * rise), rise);
}

/** From the waist straight down, then out to the fork, square to the inseam that starts there. */
function centreLine({ waist, fork, hem }: Corners, rise: number): Path {
  const wide = Math.abs(fork.x - waist.x);
  const bend = point(waist.x, turnsAt({ waist, fork }, rise));
  const turn = fork.y - bend.y;
  const seam = subtract(hem, fork);
  const outward = Math.sign(waist.x);
  // Without a fork the seam runs on into the inseam: square to it, it would be a hook.
  const on = wide > 0 ? point(outward * seam.y, -outward * seam.x) : seam;
  const into = add(fork, scale(on, -Math.max(OUT_OF_FORK * wide, OUT_OF_TURN * turn) / norm(seam)));
  const curve = cubic(bend, point(waist.x, bend.y + DOWN * turn), into, fork);
  return bend.y - waist.y > 0 ? [line(waist, bend), curve] : [curve];
}
