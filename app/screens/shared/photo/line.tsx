import type { Marks, Spot } from './marks';

type LineProps = {
  readonly kind: 'edge' | 'length' | 'thread' | 'outline';
  readonly marks: Marks;
  readonly closed?: boolean;
  /** An arrow's head at its end. */
  readonly arrow?: boolean;
};

/** Of a line's length, the arrow's head. */
const HEAD_SHARE = 0.12;

/** A line from mark to mark as far as they are set, on a seam that shows on any picture. */
export function Line({ kind, marks, closed = false, arrow = false }: LineProps) {
  const set = marks.filter(({ miss }) => miss !== null).map(({ spot }) => spot);
  const [first, last] = [set[0], set.at(-1)];
  const path = pathOf(set) + (closed && first ? 'Z' : '') + (arrow && first && last ? headOf(first, last) : '');
  return (
    <>
      <path class={`stage-${kind}-under`} d={path} />
      <path class={`stage-${kind}`} d={path} />
    </>
  );
}

const pathOf = (spots: readonly Spot[]) => spots.map(({ x, y }, at) => `${at ? 'L' : 'M'}${x} ${y}`).join('');

/** Two short strokes back from the end of a line. */
function headOf(from: Spot, to: Spot): string {
  const [x, y] = [(from.x - to.x) * HEAD_SHARE, (from.y - to.y) * HEAD_SHARE];
  return pathOf([{ x: to.x + x - y, y: to.y + y + x }, to, { x: to.x + x + y, y: to.y + y - x }]);
}
