import { type Section, type Station, trunk } from './trunk';

/** How much wider than deep; how far the neck lies back, mm; how tall beside what armhole and side add up to; how full the seat. */
export type Shape = { readonly wide: number; readonly back: number; readonly tall: number; readonly full: number };

type Heights = { readonly waist: number; readonly hem: number; readonly seat: number; readonly crotch: number };
/** Radius of the neck; shoulder over the tummy to the hem; nape to the hem; waist to waist between the legs, 0 where nobody knows. */
type Lengths = { readonly neck: number; readonly front: number; readonly behind: number; readonly fork: number };

const range = (from: number, to: number, by: number) =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, n) => from + n * by);

/** A seat as full as this, unless the crotch's length says more. */
const USUAL_FULL = 2.5;

/**
 * What a trunk's girths leave open, by its lengths: of a grid that which has them best, leaning to the usual. What is left
 * over, as shares, is told.
 */
export function fitted(
  stations: (shape: Shape) => Station[],
  heights: (tall: number) => Heights,
  lengths: Lengths,
): { readonly shape: Shape; readonly residuals: Readonly<Record<string, number>> } {
  const made = (shape: Shape) => {
    const { seat, crotch } = heights(shape.tall);
    return trunk(stations(shape), seat, crotch, shape.full).section;
  };
  const offs = (shape: Shape) => {
    const { hem } = heights(shape.tall);
    const section = made(shape);
    return {
      'body-length': over(lengths.neck, hem, section, 1) / lengths.front - 1,
      'back-body-length': over(lengths.neck, hem, section, -1) / lengths.behind - 1,
    };
  };
  const tries = range(0.96, 1.16, 0.04).flatMap((wide) =>
    range(-0.3, 0.5, 0.1).flatMap((share) =>
      range(0.88, 1.04, 0.04).map((tall) => {
        const shape = { wide, back: share * lengths.neck, tall, full: USUAL_FULL };
        const off = [...Object.values(offs(shape)), tall - 1, tall - 1, 0.3 * (wide - 1.06), 0.05 * (share - 0.1)];
        return { shape, sum: off.reduce((sum, each) => sum + each * each, 0) };
      }),
    ),
  );
  const { shape } = tries.reduce((best, each) => (each.sum < best.sum ? each : best));
  const all = { ...offs(shape), 'side-length': shape.tall - 1, 'armhole-depth': shape.tall - 1 };
  if (lengths.fork === 0) return { shape, residuals: all };
  const fork = (full: number) => round(heights(shape.tall), made({ ...shape, full })) / lengths.fork - 1;
  const full = range(1.6, 6, 0.2).reduce((best, each) => (Math.abs(fork(each)) < Math.abs(fork(best)) ? each : best));
  return { shape: { ...shape, full }, residuals: { ...all, 'crotch-length': fork(full) } };
}

type Place = readonly [down: number, out: number];

/** A tape from the shoulder's neck end (before) or the nape (behind) down to the hem, drawn taut over what stands out. */
export function over(neck: number, hem: number, section: (down: number) => Section, face: 1 | -1): number {
  const places = range(0, 1, 0.02).map((t): Place => {
    const down = t * hem;
    const { across, before, behind, back } = section(down);
    const beside = face > 0 ? Math.sqrt(Math.max(0, 1 - (neck / across) ** 2)) : 1;
    return [down, (face > 0 ? before : behind) * beside - face * back];
  });
  return tape(taut(places));
}

/** From the waist in front between the legs to the waist behind. */
function round({ waist, crotch }: Heights, section: (down: number) => Section): number {
  const downs = range(0, 1, 0.01).map((t) => waist + (crotch - waist) * Math.sin((t * Math.PI) / 2));
  const front = downs.map((down): Place => [down, section(down).before - section(down).back]);
  const behind = downs.map((down): Place => [down, -section(down).behind - section(down).back]);
  return tape([...front, ...behind.reverse()]);
}

const tape = (places: readonly Place[]) =>
  places.slice(1).reduce((sum, [down, out], n) => {
    const [before, from] = places[n] ?? [down, out];
    return sum + Math.hypot(down - before, out - from);
  }, 0);

/** The outer side of a row of places: a tape bridges hollows. */
function taut(places: readonly Place[]): Place[] {
  const kept: Place[] = [];
  for (const place of places) {
    for (let hollow = true; hollow && kept.length > 1; ) {
      const [from, middle] = [kept[kept.length - 2] ?? place, kept[kept.length - 1] ?? place];
      hollow = (middle[0] - from[0]) * (place[1] - from[1]) - (middle[1] - from[1]) * (place[0] - from[0]) > 0;
      if (hollow) kept.pop();
    }
    kept.push(place);
  }
  return kept;
}
