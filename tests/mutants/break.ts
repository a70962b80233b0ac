import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * One place broken on purpose: in the one file of a room that holds `from`, it is replaced by `to`. Which file that is
 * does not matter, nor how the lines are broken, so files may move and be laid out anew. `tests` are the fewest files of
 * tests that must notice, named by the beginning of their path below `tests/`.
 */
export type Break = { readonly what: string; readonly from: string; readonly to: string; readonly tests: string };
export type RoomBreak = Break & { readonly room: string };

export const breaksIn = (room: string, breaks: readonly Break[]): readonly RoomBreak[] =>
  breaks.map((each) => ({ ...each, room }));

/** The file, below `root`, and its text as it is broken. Throws where the place is not found just once. */
export function locate(root: string, { what, room, from, to }: RoomBreak): { file: string; broken: string } {
  const found = sourcesOf(join(root, room)).flatMap((file) => {
    const text = readFileSync(file, 'utf8');
    return [...text.matchAll(looselyLike(from))].map(({ index, 0: { length } }) => ({ file, text, index, length }));
  });
  const [place] = found;
  if (!place || found.length > 1) throw new Error(`${what}: ${found.length} places in ${room} read “${from}”`);
  const { file, text, index, length } = place;
  return { file, broken: text.slice(0, index) + to + text.slice(index + length) };
}

/** Any layout of the same words: space may be a line break, and where there was none there may be one. */
function looselyLike(code: string): RegExp {
  const tokens = code.trim().match(/[\p{L}\p{N}_$]+|[^\s]/gu) ?? [];
  return new RegExp(tokens.map((token) => token.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')).join('\\s*'), 'gu');
}

const sourcesOf = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name));
