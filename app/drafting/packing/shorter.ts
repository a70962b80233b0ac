// A lay on a strip made to fit another length: overlaps come of the one, room of the other.

import { ALIKE, type Field, type Job, type Strip } from './job';
import type { Lay } from './lay';
import type { Shape } from './shape';

/** All that lies to the right of a cut somewhere moves left by what is taken out; what then sticks out is moved in. */
export function squeeze(lay: Lay, { pieces }: Job, best: Strip, field: Field, random: () => number): void {
  const { right: length, bottom: across } = field;
  const { places, length: was } = best;
  const shortened = was - length;
  const cut = random() * length;
  const widthOf = (shape: number): number => (lay.stock.shapes[shape] as Shape).width;
  places.forEach(({ shape: before, x, y }, index) => {
    const fits = widthOf(before) <= length + ALIKE;
    const shape = fits ? before : (pieces[index]?.turns.find((turn) => widthOf(turn) <= length + ALIKE) ?? before);
    const moved = x + widthOf(before) / 2 > cut ? x - shortened : x;
    const top = Math.max(0, Math.min(y, across - (lay.stock.shapes[shape] as Shape).height));
    lay.put(index, shape, Math.min(Math.max(0, moved), Math.max(0, length - widthOf(shape))), top);
  });
}

/** A lay that goes on where the strip is let out from one length to another: all gaps widen alike, so that any overlap may come apart. */
export function stretch(lay: Lay, from: number, to: number): void {
  for (let index = 0; index < lay.movable; index += 1) {
    const [left, right] = [lay.x[index] as number, lay.right[index] as number];
    const x = left + ((to - from) * (left + right)) / (2 * from);
    lay.put(index, lay.shape[index] as number, Math.min(x, Math.max(0, to - (right - left))), lay.y[index] as number);
  }
}

/** The strip as it lies now, where it is shorter than the best. */
export function shorter(lay: Lay, best: Strip | undefined): Strip {
  let length = 0;
  for (let index = 0; index < lay.movable; index += 1) length = Math.max(length, lay.right[index] as number);
  return best && best.length <= length ? best : { length, places: lay.places() };
}
