import { type Hand, MM_PER_INCH, type Mm } from '../../body';
import { shownLength, useWords } from '../../parts';
import type { Verdict } from './marks';

type ToldProps = { readonly verdict: Verdict; readonly coarse: boolean };

/** What to mark next, what cannot be, or the distance with its give; `coarse`: it could be smaller. */
export function Told({ verdict, coarse }: ToldProps) {
  const { say, hand } = useWords();
  return (
    <div class="sight-told">
      <p class="wrong-words" role="alert">
        {verdict.is === 'wrong' ? say(verdict.code) : null}
      </p>
      <div role="status">
        {verdict.is === 'waiting' && <p>{say(`photo.next-${verdict.next + 1}`)}</p>}
        {verdict.is === 'seen' && (
          <p class="sight-number">
            <b>{shownLength(verdict.known.value, hand)}</b>{' '}
            <span>
              {say(coarse ? 'photo.give-coarse' : 'photo.give', { give: roundedUp(verdict.known.give, hand) })}
            </span>
          </p>
        )}
      </div>
    </div>
  );
}

/** A give as the hand's unit can show it, never less than it is. */
function roundedUp(give: Mm, { unit }: Hand): Mm {
  const least = unit === 'in' ? MM_PER_INCH / 16 : 1;
  return Math.ceil(give / least) * least;
}
