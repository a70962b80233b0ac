/**
 * Where each point's number stands on a drawing of the whole piece: beside its point, away from the piece's middle if
 * it can, and clear of every other point, line and number. Where there is no such place it is left out: along a curve
 * points may lie closer than their numbers are wide.
 * @param spots every point, by its number less one
 * @param lines points that are joined, in order
 * @param size a point's own width, in the drawing's units
 */
export function numberPlaces(
  spots: readonly Spot[],
  lines: readonly (readonly Spot[])[],
  middle: Spot,
  size: number,
): ReadonlyMap<number, Spot> {
  const drawn = [...spots, ...lines.flatMap((line) => dotted(line, size / 2))];
  const places = new Map<number, Spot>();
  spots.forEach((spot, index) => {
    const number = index + 1;
    const outward = Math.atan2(spot.y - middle.y, spot.x - middle.x);
    const place = TURNS.map((turn) => beyond(spot, outward + turn, FAR * size)).find((at) => {
      const clear = ({ x, y }: Spot, wide: number, high: number) =>
        Math.abs(x - at.x) >= wide * size || Math.abs(y - at.y) >= high * size;
      return (
        drawn.every((other) => clear(other, (DIGIT_WIDE * digits(number)) / 2, LETTER_HIGH / 2)) &&
        [...places].every(([other, there]) =>
          clear(there, (DIGIT_WIDE * (digits(number) + digits(other))) / 2, LINE_HIGH),
        )
      );
    });
    if (place) places.set(number, place);
  });
  return places;
}

export type Spot = { readonly x: number; readonly y: number };

/** What a digit takes of the drawing, in points across: the widest letters we draw with, the digit's own height, and a line's. */
const DIGIT_WIDE = 1;
const LETTER_HIGH = 1.3;
const LINE_HIGH = 1.8;
/** From a point to the middle of its number, in points across. */
const FAR = 1.7;
/** Outward first, then ever farther round to either side, radians. */
const TURNS = [0, 1, -1, 2, -2, 3, -3, 4].map((eighths) => (eighths * Math.PI) / 4);

const digits = (number: number) => String(number).length;

const beyond = ({ x, y }: Spot, angle: number, far: number): Spot => ({
  x: x + far * Math.cos(angle),
  y: y + far * Math.sin(angle),
});

/** Spots along a line no farther apart than `step`. */
function dotted(line: readonly Spot[], step: number): Spot[] {
  return line.slice(1).flatMap((to, index) => {
    const from = line[index] ?? to;
    const count = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step);
    return Array.from({ length: count }, (_, part) => ({
      x: from.x + ((to.x - from.x) * part) / count,
      y: from.y + ((to.y - from.y) * part) / count,
    }));
  });
}
