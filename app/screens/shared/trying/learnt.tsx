import type { SizeId } from '../../../body';
import { useWords } from '../../../parts';
import { changeToy, type Toy } from '../../../storage';
import { useAttempt } from '../trouble/attempt';
import { useNotice } from '../trouble/notice';
import { useUndo } from '../trouble/undo';
import { triedPoints } from './points';
import { withoutLead } from './propose';
import './learnt.css';

const turns = triedPoints.flatMap(({ width, length }) => [...width, ...length]);

/** What trying on has taught of this toy, each to be taken back. */
export function Learnt({ toy }: { readonly toy: Toy }) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const notice = useNotice();
  const backTo = useUndo();
  const known = [...new Set(turns.map(({ lead }) => lead))].filter((lead) => toy.corrections[lead]);
  if (known.length === 0) return null;
  const takeBack = (lead: SizeId) =>
    attempt(async () => {
      const before = toy.corrections;
      await changeToy(toy.id, { corrections: withoutLead(before, lead, turns) });
      notice({
        words: say('screen.tried.taken-back', { size: say(`size.${lead}`) }),
        act: backTo(() => changeToy(toy.id, { corrections: before })),
      });
    });
  return (
    <section class="learnt">
      <h2>{say('screen.tried.learnt')}</h2>
      <ul>
        {known.map((lead) => {
          const by = toy.corrections[lead] ?? 0;
          return (
            <li key={lead}>
              <span>
                {say(by > 0 ? 'screen.tried.plus' : 'screen.tried.minus', {
                  size: say(`size.${lead}`),
                  by: Math.abs(by),
                  unit: hand.unit,
                })}
              </span>
              <button type="button" class="quiet" onClick={() => takeBack(lead)}>
                {say('screen.tried.take-back')}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
