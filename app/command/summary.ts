import { inTurn, type Say, type Unit } from '../body';
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
  const counts = [
    say('screen.pattern.pieces-count', { count: pieces.length }),
    say('command.draft.pages', { count: pages.length }),
  ];
  const wrote = say('list.named', {
    name: say('list.row', { of: counts }),
    what: say('command.draft.wrote', { folder }),
  });
  const said = adjustments.map(({ code, by }) => say(`adjustment.${code}`, { by: Math.abs(by), unit }));
  return said.length === 0 ? [wrote] : [wrote, say('command.draft.adjusted', { adjustments: inTurn(said, say) })];
}
