import type { Solid } from './solid';
import { at, dotted, long, plus, spot } from './space';

/**
 * One thing that holds cloth: the length of Σ `by`·x over the points `of` (at most four) is drawn towards `rest`, mm.
 * `pull` and `push` are how much it gives where that length is over and under: the compliance of extended position-based
 * dynamics (Macklin, Müller and Chentanez 2016) over the square of the step; Infinity gives without end. A
 * `gentle` one comes no faster than the air lets it: what is sewn from afar.
 */
export type Bond = {
  readonly of: readonly number[];
  readonly by: readonly number[];
  readonly rest: number;
  readonly pull: number;
  readonly push: number;
  readonly gentle?: true;
};

/** Places and moves of points, mm, three numbers a point; `light` is one over a point's mass (its share of the cloth, mm²). */
export type Cloth = {
  readonly places: Float64Array;
  readonly moves: Float64Array;
  readonly light: Float64Array;
  readonly hold: (gentle: number) => void;
  /** At least so far each point is from the body, mm: what is far off needs no looking. */
  readonly clear: Float64Array;
};

/** How a step is taken: fall and damping a step, how far the body is drawn in, half the cloth, how much it grips, how far a seam closes in a step. */
export type Air = {
  readonly fall: number;
  /** Which of a point's numbers grows as it falls: 1 for y, 2 for z. */
  readonly falls: 1 | 2;
  readonly damped: number;
  readonly shrunk: number;
  readonly half: number;
  readonly grip: number;
  readonly gentle: number;
};

/** A step may bring a point nearer by more than its length: distances are of the first order. */
const WARY = 1.5;
/** No point moves further in a step, mm: what is sewn from afar comes gently. */
const MOST_MOVE_MM = 3;

export function clothOf(places: Float64Array, light: Float64Array, bonds: readonly Bond[]): Cloth {
  return {
    places,
    moves: new Float64Array(places.length),
    light,
    hold: holding(places, light, bonds),
    clear: new Float64Array(light.length),
  };
}

/** Moves, holds together, pushes out of the body; one pass over the bonds a step (small steps: Macklin et al. 2019). */
export function step({ places, moves, light, hold, clear }: Cloth, body: Solid, air: Air): void {
  const before = places.slice();
  for (let n = 0; n < places.length; n++)
    places[n] = (places[n] ?? 0) + (moves[n] ?? 0) + (n % 3 === air.falls ? air.fall : 0);
  hold(air.gentle);
  for (let point = 0; point < light.length; point++) pushOut(point, places, before, clear, body, air);
  for (let n = 0; n < places.length; n++) {
    const move = ((places[n] ?? 0) - (before[n] ?? 0)) * (1 - air.damped);
    moves[n] = Math.max(-MOST_MOVE_MM, Math.min(MOST_MOVE_MM, move));
  }
}

function pushOut(
  point: number,
  places: Float64Array,
  before: Float64Array,
  clear: Float64Array,
  body: Solid,
  air: Air,
): void {
  const first = 3 * point;
  const x = places[first] ?? 0;
  const y = places[first + 1] ?? 0;
  const z = places[first + 2] ?? 0;
  const dx = x - (before[first] ?? 0);
  const dy = y - (before[first + 1] ?? 0);
  const dz = z - (before[first + 2] ?? 0);
  const least = (clear[point] ?? 0) - WARY * Math.sqrt(dx * dx + dy * dy + dz * dz);
  clear[point] = least;
  if (least > air.half - air.shrunk) return;
  const away = body.distance(x, y, z);
  clear[point] = away;
  const deep = air.half - air.shrunk - away;
  if (deep <= 0) return;
  const out = body.outward(x, y, z);
  const slid = spot(dx, dy, dz);
  const beside = plus(slid, out, -dotted(slid, out));
  const held = Math.min(1, (air.grip * deep) / Math.max(long(beside), 1e-9));
  places[first] = x + out.x * deep - held * beside.x;
  places[first + 1] = y + out.y * deep - held * beside.y;
  places[first + 2] = z + out.z * deep - held * beside.z;
}

/** One pass over all bonds, in their order. */
function holding(places: Float64Array, light: Float64Array, bonds: readonly Bond[]): Cloth['hold'] {
  const of = new Int32Array(4 * bonds.length);
  const by = new Float64Array(4 * bonds.length);
  const turns = new Float64Array(4 * bonds.length);
  bonds.forEach((bond, n) => {
    of.set(
      bond.of.map((point) => 3 * point),
      4 * n,
    );
    by.set(bond.by, 4 * n);
    turns.set(
      bond.of.map((point, k) => at(light, point) * at(bond.by, k)),
      4 * n,
    );
  });
  const heavy = Float64Array.from(bonds, (bond) =>
    bond.of.reduce((sum, point, k) => sum + at(light, point) * at(bond.by, k) ** 2, 0),
  );
  const rest = Float64Array.from(bonds, (bond) => bond.rest);
  const pull = Float64Array.from(bonds, (bond) => bond.pull);
  const push = Float64Array.from(bonds, (bond) => bond.push);
  const gently = Uint8Array.from(bonds, (bond) => (bond.gentle ? 1 : 0));
  return (gentle) => {
    for (let n = 0; n < rest.length; n++) {
      let x = 0;
      let y = 0;
      let z = 0;
      for (let k = 4 * n; k < 4 * n + 4; k++) {
        const share = by[k] ?? 0;
        const from = of[k] ?? 0;
        x += share * (places[from] ?? 0);
        y += share * (places[from + 1] ?? 0);
        z += share * (places[from + 2] ?? 0);
      }
      const length = Math.sqrt(x * x + y * y + z * z);
      const over = length - (rest[n] ?? 0);
      const gives = (over > 0 ? pull[n] : push[n]) ?? 0;
      if (length < 1e-9 || gives === Number.POSITIVE_INFINITY) continue;
      const limit = gently[n] ? gentle : Number.POSITIVE_INFINITY;
      const turn = -Math.max(-limit, Math.min(limit, over)) / (((heavy[n] ?? 0) + gives) * length);
      for (let k = 4 * n; k < 4 * n + 4; k++) {
        const from = of[k] ?? 0;
        const moved = turn * (turns[k] ?? 0);
        places[from] = (places[from] ?? 0) + moved * x;
        places[from + 1] = (places[from + 1] ?? 0) + moved * y;
        places[from + 2] = (places[from + 2] ?? 0) + moved * z;
      }
    }
  };
}
