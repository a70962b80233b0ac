import type { Say, Unit } from '../../body';
import type { Notion, NotionKind } from '../draft-types';

/** Thread is told in whole metres or yards, and never as less than one (International yard and pound agreement, 1959: exact). */
const METRE_MM = 1000;
const YARD_MM = 914.4;

/** One line of what to have at hand: how much of what, and where it goes. */
export function notionWords({ kind, place, length, width = 0, count = 1, of }: Notion, say: Say, unit: Unit): string {
  if (kind === 'thread')
    return unit === 'in'
      ? say('notion.thread-yards', { yards: Math.ceil(length / YARD_MM) })
      : say('notion.thread', { metres: Math.ceil(length / METRE_MM) });
  const where = placeWords(kind, place, say);
  return say(of ? `notion.${of}` : `notion.${kind}`, { where, length, width, count, unit });
}

/** Told by their pieces: strips, and what a pillow is filled with. */
const named: readonly NotionKind[] = ['bias', 'strip', 'filling'];

function placeWords(kind: NotionKind, place: string, say: Say): string {
  if (kind === 'cloth') return say(`layer.${place}`);
  return named.includes(kind) ? say(`piece.${place}`) : say(`seam.${place}`);
}
