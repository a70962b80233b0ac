import type { Mm } from '../../body';
import type { Point } from '../geometry';
import type { Part } from './guide-types';
import { isStripLike, type LaidPart, widthOf } from './laid-part';

/** Down a piece its name may stand at so many heights. */
const HEIGHTS = 9;

/** Where a piece's name stands, and how wide it may be, mm: where the piece is widest, nearest its middle. */
export function labelOf(part: LaidPart): Pick<Part, 'label' | 'room' | 'beneath'> {
  const { outline, box, move } = part;
  if (isStripLike(part))
    return {
      label: { x: (box.left + box.right) / 2 + move.x, y: box.bottom + move.y },
      room: widthOf(part),
      beneath: true,
    };
  const corners = outline.map(({ from }) => from);
  const height = box.bottom - box.top;
  const places = Array.from({ length: HEIGHTS }, (_, index) => {
    const share = (index + 1) / (HEIGHTS + 1);
    const y = box.top + height * share;
    const { from, to } = widestAt(corners, y);
    return {
      label: { x: (from + to) / 2 + move.x, y: y + move.y },
      room: (to - from) * (1 - Math.abs(share - 0.5) / 2),
    };
  });
  return { ...places.reduce((best, each) => (each.room > best.room ? each : best)), beneath: false };
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
