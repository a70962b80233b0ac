import { useMemo } from 'preact/hooks';
import { type MeasureId, mostTelling } from '../../body';
import { isWish } from '../../measuring';
import { useWords } from '../../parts';
import { type Making, tapedOf } from '../shared/making/making';
import { to } from '../shared/route';

/** Numbers beyond these two help little more. */
const NAMED = 2;
/** A number that makes the garment less than this much surer (share) is not worth naming. */
const LEAST_SHRINK = 0.05;

/** The numbers that were passed over, where they are few, and which one or two not taken yet would help this garment most, by how much. */
export function Telling({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, body, needs, steps, readings, guessed } = making;
  const open = useMemo(() => {
    const asked = [...tapedOf(steps).map(({ measure }) => measure), ...guessed].filter((id) => !isWish(id));
    const told = mostTelling(body, { needs: needs.filter((id) => !isWish(id)), asked, count: NAMED });
    return told.filter(({ shrinks }) => shrinks >= LEAST_SHRINK);
  }, [body, needs, steps, guessed]);
  const passed = tapedOf(steps).flatMap(({ measure }) => (readings[measure] ? [] : [measure]));
  const untold = passed.filter((id) => open.every(({ measure }) => measure !== id));
  const name = (measure: MeasureId) => say(`measure.${measure}.name`);
  const address = (measure: MeasureId) => `${to('toy', toy.id, garment.id, 'measure', measure)}?then=review`;
  return (
    <>
      {passed.length <= NAMED && untold.length > 0 && (
        <div class="telling">
          {untold.map((measure) => (
            <a class="plain" key={measure} href={address(measure)}>
              {name(measure)}
            </a>
          ))}
        </div>
      )}
      {open.length > 0 && (
        <section class="telling" aria-labelledby="telling-name">
          <h2 id="telling-name" class="small">
            {say('screen.review.telling', { count: open.length })}
          </h2>
          {open.map(({ measure, shrinks }) => (
            <a class="plain" key={measure} href={address(measure)}>
              {say('screen.review.tells', { name: name(measure), share: Math.round(shrinks * 100) })}
            </a>
          ))}
        </section>
      )}
    </>
  );
}
