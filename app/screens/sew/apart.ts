import type { Mm } from '../../body';
import type { Scene } from '../../drafting/guide';

type Meets = Scene['meets'];

/**
 * The numbers of a picture that can be read with so much room: where two would lie on each other one of them goes, the first
 * and the last never, and the rest are counted anew. What loses its number still has its notch.
 */
export function apartIn(meets: Meets, least: Mm): Meets {
  const numbers = [...new Set(meets.map(({ number }) => number))];
  const [first, ...between] = numbers;
  const last = between.pop();
  const kept: Meets[number][] = [];
  for (const number of [first, last, ...between]) {
    const own = meets.filter((each) => each.number === number);
    const clear = own.every(({ at }) =>
      kept.every(({ at: other }) => Math.hypot(at.x - other.x, at.y - other.y) >= least),
    );
    if (clear || number === first || number === last) kept.push(...own);
  }
  const left = numbers.filter((number) => kept.some((each) => each.number === number));
  return meets
    .filter((each) => kept.includes(each))
    .map(({ number, at }) => ({ number: left.indexOf(number) + 1, at }));
}
