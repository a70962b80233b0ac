import type { Say, Unit } from '../body';
import type { Draft } from '../drafting/draft-types';
import type { Layout } from '../drafting/sheets';

/** What was written, in a line, and what was adjusted, in another where anything was. */
export function summary(
  { pieces, adjustments }: Pick<Draft, 'pieces' | 'adjustments'>,
  { pages }: Pick<Layout, 'pages'>,
  folder: string,
  say: Say,
  unit: Unit,
): readonly string[] {
  const wrote = say('command.draft.wrote', {
    pieces: say('screen.pattern.pieces-count', { count: pieces.length }),
    pages: say('command.draft.pages', { count: pages.length }),
    folder,
  });
  const said = adjustments.map(({ code, by }) => say(`adjustment.${code}`, { by: Math.abs(by), unit }));
  return said.length === 0 ? [wrote] : [wrote, say('command.draft.adjusted', { adjustments: said.join(' ') })];
}
