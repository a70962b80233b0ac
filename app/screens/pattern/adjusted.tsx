import type { Draft } from '../../drafting/draft-types';
import { sayFirst, useWords } from '../../parts';
import { flagWords } from '../shared/making/flag-words';
import { isKept, type Making } from '../shared/making/making';
import { to } from '../shared/route';

/** What was changed so that the seams meet, and why; with the measures worth a second look. */
export function Adjusted({
  draft,
  making: { toy, garment, body },
}: {
  readonly draft: Draft;
  readonly making: Making;
}) {
  const words = useWords();
  const { say } = words;
  const flags = draft.flags.filter((flag) => !isKept(toy, flag, body));
  return (
    <section class="told">
      <h2>{say('screen.pattern.adjusted')}</h2>
      {draft.adjustments.length === 0 && flags.length === 0 && <p class="soft">{say('screen.pattern.as-measured')}</p>}
      <ul class="told-list">
        {draft.adjustments.map((adjustment, index) => (
          <li key={index}>
            {sayFirst(say, [`adjustment.${adjustment.code}`, 'adjustment.other'], { by: Math.abs(adjustment.by) })}{' '}
            <span class="soft">{sayFirst(say, [`because.${adjustment.because}`, ''])}</span>
            {adjustment.check.length > 0 && (
              <span class="told-checks">
                <span class="soft">{say('screen.pattern.check')}</span>
                {adjustment.check.map((id) => (
                  <a key={id} href={`${to('toy', toy.id, garment.id, 'measure', id)}?then=pattern`}>
                    {say(`measure.${id}.name`)}
                  </a>
                ))}
              </span>
            )}
          </li>
        ))}
        {flags.map((flag) => (
          <li key={flag.code + flag.measures.join()}>{flagWords(words, flag, body)}</li>
        ))}
      </ul>
    </section>
  );
}
