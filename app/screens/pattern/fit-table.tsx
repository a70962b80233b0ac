import type { Mm } from '../../body';
import type { Draft } from '../../drafting/draft-types';
import { sayFirst, shownLength, useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';
import '../shared/fit-table.css';

/** How it sits, place by place: the toy, the finished garment, and the room between them. */
export function FitTable({ draft }: { readonly draft: Draft }) {
  const { say, hand } = useWords();
  if (draft.fit.length === 0) return null;
  const length = (mm: Mm) => shownLength(mm, hand, true);
  return (
    <Folded title={say('screen.pattern.fit')} stands={say('screen.pattern.fit-stands', { count: draft.fit.length })}>
      <div class="fit-scroll">
        <table class="fit-table" aria-label={say('screen.pattern.fit')}>
          <thead>
            <tr>
              <th scope="col">{say('screen.pattern.fit-place')}</th>
              <th scope="col">{say('screen.pattern.fit-toy', { unit: hand.unit })}</th>
              <th scope="col">{say('screen.pattern.fit-garment')}</th>
              <th scope="col">{say('screen.pattern.fit-room')}</th>
            </tr>
          </thead>
          <tbody>
            {draft.fit.map((row) => (
              <tr key={row.place}>
                <th scope="row">
                  {sayFirst(say, [`place.${row.place}`, row.place])}
                  {row.from === 'estimate' && <span class="measure-from">{say('screen.from.estimate-short')}</span>}
                  {row.why && <span class="measure-from">{sayFirst(say, [`why.${row.why}`, row.why])}</span>}
                </th>
                <td>{length(row.body)}</td>
                <td>{length(row.garment)}</td>
                <td>{length(row.ease)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Folded>
  );
}
