import { useWords } from '../../parts';
import { CARD_MARKS } from '../shared/photo/marks';
import { sidesOf, type Verdict } from './scrap-marks';

/** What to mark next, what cannot be, or the scrap's size. */
export function ScrapTold({ verdict }: { readonly verdict: Verdict }) {
  const { say } = useWords();
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
            <p class="soft small">{say('photo.scrap-more')}</p>
          </>
        )}
      </div>
    </>
  );
}

/** Of the card each corner is asked for, then two points of a thread, the first corner of the scrap, and any other. */
const nextKey = (next: number): string =>
  next < CARD_MARKS ? `photo.next-${next + 1}` : `photo.scrap-next-${Math.min(next - CARD_MARKS, 3) + 1}`;
