import type { Mm } from '../../body';

type Spot = { readonly x: Mm; readonly y: Mm };
type Size = { readonly width: Mm; readonly height: Mm };

/** What two neighbouring parts both show: a cross, and air round it, mm. */
export const SHARED_MM = 14;
/** Air round the piece, mm. */
const EDGE_MM = 3;

/**
 * The parts a piece is seen in through a window of that size, each by its left top corner, row by row, and the crosses that lie
 * in the middle of what neighbours share: the same spots of the piece on both. One part and no cross where it fits.
 */
export function partsOf(
  { left, top, width, height }: Size & { readonly left: Mm; readonly top: Mm },
  room: Size,
): { readonly parts: readonly Spot[]; readonly crosses: readonly Spot[] } {
  const xs = startsOf(left - EDGE_MM, width + 2 * EDGE_MM, room.width);
  const ys = startsOf(top - EDGE_MM, height + 2 * EDGE_MM, room.height);
  const parts = ys.flatMap((y) => xs.map((x) => ({ x, y })));
  if (parts.length === 1) return { parts, crosses: [] };
  const marks = (starts: readonly Mm[], size: Mm): readonly Mm[] => {
    const shared = starts.slice(1).map((at) => at + SHARED_MM / 2);
    return shared.length > 0 ? shared : [SHARED_MM / 2, size - SHARED_MM / 2].map((at) => (starts[0] ?? 0) + at);
  };
  const [across, down] = [marks(xs, room.width), marks(ys, room.height)];
  const ends = (starts: readonly Mm[], size: Mm): readonly Mm[] => [
    (starts[0] ?? 0) + SHARED_MM / 2,
    (starts.at(-1) ?? 0) + size - SHARED_MM / 2,
  ];
  const wide = [...new Set([...across, ...(xs.length > 1 ? ends(xs, room.width) : [])])];
  const high = [...new Set([...down, ...(ys.length > 1 ? ends(ys, room.height) : [])])];
  return { parts, crosses: high.flatMap((y) => wide.map((x) => ({ x, y }))) };
}

/** Where windows begin that together cover a length, each sharing a strip with the one before. */
function startsOf(from: Mm, length: Mm, window: Mm): readonly Mm[] {
  if (length <= window) return [from - (window - length) / 2];
  const step = Math.max(window - SHARED_MM, SHARED_MM);
  const count = Math.ceil((length - SHARED_MM) / step);
  return Array.from({ length: count }, (_, n) => from + n * step);
}
