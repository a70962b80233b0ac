import { useEffect, useMemo, useState } from 'preact/hooks';
import { type MeasureId, measures } from '../../body';
import { settle } from '../../measuring';
import { shownLength, useWords } from '../../parts';
import { historyOf, type Reading } from '../../storage';
import { writtenMoment } from '../../words';
import { useGarments } from '../shared/making/garments-known';
import { askedFor } from '../shared/making/making';
import { to } from '../shared/route';
import { noteHappening } from '../shared/trouble/happened';
import type { Known } from '../shared/with-toy';
import { MeasureAgain } from './measure-again';

/** All numbers of a toy; each opens to every reading ever taken of it. */
export function Readings({ known }: { readonly known: Known }) {
  const { toy, readings } = known;
  const { say, hand } = useWords();
  const history = useHistory(toy.id, readings);
  const stepOf = useSteps(known);
  const taken = measures.filter(({ id }) => readings[id]);
  if (taken.length === 0) return <p class="soft">{say('screen.toy.no-readings')}</p>;
  return (
    <section>
      <h2>{say('screen.toy.readings')}</h2>
      {taken.map(({ id }) => {
        const inUse = readings[id] ?? [];
        const settled = settle(inUse.map((reading) => reading.mm));
        return (
          <details key={id} class="reading">
            <summary>
              <span>{say(`measure.${id}.name`)}</span>
              <b>{settled ? shownLength(settled.value, hand) : ''}</b>
            </summary>
            <History history={history.filter((reading) => reading.measureId === id)} inUse={inUse} />
            <MeasureAgain toy={toy} measure={id} step={stepOf(id)} />
          </details>
        );
      })}
    </section>
  );
}

type HistoryProps = { readonly history: readonly Reading[]; readonly inUse: readonly Reading[] };

/** Every reading of one measure, the last first: when it was taken, and whether it is the one that counts. */
function History({ history, inUse }: HistoryProps) {
  const { say, hand } = useWords();
  const using = new Set(inUse.map(({ id }) => id));
  return (
    <ul>
      {[...history].reverse().map(({ id, mm, takenAt }) => (
        <li key={id} class={using.has(id) ? 'in-use' : 'soft'}>
          <span>
            {writtenMoment(takenAt, hand.locale)}
            {using.has(id) && <span class="small"> · {say('screen.toy.in-use')}</span>}
          </span>
          <span>{shownLength(mm, hand)}</span>
        </li>
      ))}
    </ul>
  );
}

/** The step at which a measure is asked for something that is being made; null where nothing asks for it. */
function useSteps({ toy, garments, readings }: Known): (measure: MeasureId) => string | null {
  const rows = useGarments();
  return useMemo(() => {
    const steps = new Map<MeasureId, string>();
    for (const garment of [...garments].reverse()) {
      const row = rows?.find(({ id }) => id === garment.order.garment);
      for (const measure of row ? askedFor({ toy, garment, row, readings }) : [])
        steps.set(measure, `${to('toy', toy.id, garment.id, 'measure', measure)}?then=toy`);
    }
    return (measure) => steps.get(measure) ?? null;
  }, [rows, toy, garments, readings]);
}

function useHistory(toyId: string, changed: unknown): readonly Reading[] {
  const [history, setHistory] = useState<readonly Reading[]>([]);
  useEffect(() => {
    historyOf(toyId).then(setHistory, noteHappening);
  }, [toyId, changed]);
  return history;
}
