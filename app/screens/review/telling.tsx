import { useMemo } from 'preact/hooks';
import { mostTelling } from '../../body';
import { isWish } from '../../measuring';
import { useWords } from '../../parts';
import { type Making, tapedOf } from '../shared/making/making';
import { to } from '../shared/route';

/** Numbers beyond these two help little more. */
const NAMED = 2;
/** A number that makes the garment less than this much surer (share) is not worth naming. */
const LEAST_SHRINK = 0.05;

/** Which one or two numbers, not taken yet, would help this garment most, and by how much. */
export function Telling({ making }: { readonly making: Making }) {
  const { say } = useWords();
  const { toy, garment, body, needs, steps, guessed } = making;
  const open = useMemo(() => {
    const asked = [...tapedOf(steps).map(({ measure }) => measure), ...guessed].filter((id) => !isWish(id));
    const told = mostTelling(body, { needs: needs.filter((id) => !isWish(id)), asked, count: NAMED });
    return told.filter(({ shrinks }) => shrinks >= LEAST_SHRINK);
  }, [body, needs, steps, guessed]);
  if (open.length === 0) return null;
  return (
    <section class="telling" aria-labelledby="telling-name">
      <h2 id="telling-name" class="small">
        {say('screen.review.telling', { count: open.length })}
      </h2>
      {open.map(({ measure, shrinks }) => (
        <a class="plain" key={measure} href={`${to('toy', toy.id, garment.id, 'measure', measure)}?then=review`}>
          {say('screen.review.tells', { name: say(`measure.${measure}.name`), share: Math.round(shrinks * 100) })}
        </a>
      ))}
    </section>
  );
}
