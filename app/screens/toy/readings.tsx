import { useEffect, useState } from 'preact/hooks';
import { measures } from '../../body';
import { settle } from '../../measuring';
import { shownLength, useWords } from '../../parts';
import { historyOf, type Reading } from '../../storage';
import { noteHappening } from '../shared/trouble/happened';
import type { Known } from '../shared/with-toy';

/** All numbers of a toy; each opens to every reading ever taken of it. */
export function Readings({ known: { toy, readings } }: { readonly known: Known }) {
  const { say, hand } = useWords();
  const history = useHistory(toy.id, readings);
  const taken = measures.filter(({ id }) => readings[id]);
  if (taken.length === 0) return <p class="soft">{say('screen.toy.no-readings')}</p>;
  const day = new Intl.DateTimeFormat(hand.locale, { dateStyle: 'medium' });
  return (
    <section>
      <h2>{say('screen.toy.readings')}</h2>
      {taken.map(({ id }) => {
        const settled = settle((readings[id] ?? []).map((reading) => reading.mm));
        const past = history.filter((reading) => reading.measureId === id).reverse();
        return (
          <details key={id} class="reading">
            <summary>
              <span>{say(`measure.${id}.name`)}</span>
              <b>{settled ? shownLength(settled.value, hand) : ''}</b>
            </summary>
            <ul>
              {past.map((reading) => (
                <li key={reading.id}>
                  <span class="soft">{day.format(reading.takenAt)}</span> <span>{shownLength(reading.mm, hand)}</span>
                </li>
              ))}
            </ul>
          </details>
        );
      })}
    </section>
  );
}

function useHistory(toyId: string, changed: unknown): readonly Reading[] {
  const [history, setHistory] = useState<readonly Reading[]>([]);
  useEffect(() => {
    historyOf(toyId).then(setHistory, noteHappening);
  }, [toyId, changed]);
  return history;
}
