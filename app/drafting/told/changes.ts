import type { Say, Unit } from '../../body';
import type { Draft } from '../draft-types';

/** What was changed for this toy, each change once with its reason, as whole sentences. */
export function changesTold({ adjustments }: Draft, say: Say, unit: Unit): readonly string[] {
  const told = adjustments.map(({ code, by, because }) =>
    say('list.after', { one: say(`adjustment.${code}`, { by: Math.abs(by), unit }), two: say(`because.${because}`) }),
  );
  return [...new Set(told)];
}

/** What to mind that nobody needs to change; doubts are for the screen, where they can be answered. */
export function notesTold(draft: Draft, say: Say, unit: Unit): readonly string[] {
  const notes = draft.flags.filter(({ severity }) => severity === 'note');
  const told = notes.map(({ code, measures, about = measures, values }) => {
    const [first = '', second = '', third = ''] = about.map((id) => say(`measure.${id}.name`));
    return say(`flag.${code}`, { ...values, unit, first, second, third });
  });
  return [...new Set(told)];
}
