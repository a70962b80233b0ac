import { shownLength, useWords } from '../../parts';
import { roundedUp } from '../shared/photo/rounded-up';
import type { Verdict } from './marks';

type ToldProps = { readonly verdict: Verdict; readonly coarse: boolean };

/** What to mark next, what cannot be, or the distance with its give; `coarse`: it could be smaller. */
export function Told({ verdict, coarse }: ToldProps) {
  const { say, hand } = useWords();
  return (
    <>
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
    </>
  );
}
