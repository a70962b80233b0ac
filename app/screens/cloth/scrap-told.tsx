import { useWords } from '../../parts';
import { CARD_MARKS } from '../shared/photo/marks';
import { roundedUp } from '../shared/photo/rounded-up';
import { sidesOf, type Verdict } from './scrap-marks';

type ScrapToldProps = { readonly verdict: Verdict; readonly coarse: boolean };

/** What to mark next, what cannot be, or the scrap's size and what is taken off it; `coarse`: that could be less. */
export function ScrapTold({ verdict, coarse }: ScrapToldProps) {
  const { say, hand } = useWords();
  return (
    <>
      <p class="wrong-words" role="alert">
        {verdict.is === 'wrong' ? say(verdict.code) : null}
      </p>
      <div role="status">
        {verdict.is === 'waiting' && <p>{say(nextKey(verdict.next))}</p>}
        {verdict.is === 'seen' && (
          <>
            <p>{say('photo.scrap-size', sidesOf(verdict.outline))}</p>
            <p class="soft small">
              {say(coarse ? 'photo.scrap-give-coarse' : 'photo.scrap-give', {
                give: roundedUp(verdict.outline.give, hand),
              })}
            </p>
          </>
        )}
      </div>
    </>
  );
}

/** Of the card each corner is asked for, then two points of a thread, the first corner of the scrap, and any other. */
const nextKey = (next: number): string =>
  next < CARD_MARKS ? `photo.next-${next + 1}` : `photo.scrap-next-${Math.min(next - CARD_MARKS, 3) + 1}`;
