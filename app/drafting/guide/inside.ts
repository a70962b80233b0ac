import type { Mm } from '../../body';
import type { Point } from '../geometry';
import type { Part } from './guide-types';
import { isStripLike, type LaidPart } from './laid-part';

/** Down a piece its name may stand at so many heights. */
const HEIGHTS = 9;

/** Where in a piece its name may stand, and how wide it may be there, mm: best where the piece is wide, near its middle. None in a strip. */
export function insideOf(part: LaidPart): Part['inside'] {
  const { outline, box, move } = part;
  if (isStripLike(part)) return [];
  const corners = outline.map(({ from }) => from);
  return Array.from({ length: HEIGHTS }, (_, index) => {
    const share = (index + 1) / (HEIGHTS + 1);
    const y = box.top + (box.bottom - box.top) * share;
    const { from, to } = widestAt(corners, y);
    const room = to - from;
    return { at: { x: (from + to) / 2 + move.x, y: y + move.y }, room, worth: room * (1 - Math.abs(share - 0.5) / 2) };
  })
    .sort((a, b) => b.worth - a.worth)
    .map(({ at, room }) => ({ at, room }));
}

/** The widest run inside the outline at a height. */
function widestAt(corners: readonly Point[], y: number): { readonly from: Mm; readonly to: Mm } {
  const crossings = corners
    .flatMap((p, index) => {
      const q = corners[(index + 1) % corners.length] ?? p;
      return p.y > y === q.y > y ? [] : [p.x + ((y - p.y) / (q.y - p.y)) * (q.x - p.x)];
    })
    .sort((a, b) => a - b);
  let widest = { from: 0, to: 0 };
  for (let index = 0; index + 1 < crossings.length; index += 2) {
    const [from = 0, to = 0] = [crossings[index], crossings[index + 1]];
    if (to - from > widest.to - widest.from) widest = { from, to };
  }
  return widest;
}
