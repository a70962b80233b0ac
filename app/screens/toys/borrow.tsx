import { bodyFrom, demoCards } from '../../measuring';
import { Portrait, useWords } from '../../parts';
import { addCard } from '../../storage';
import { go, to } from '../shared/route';
import { useAttempt } from '../shared/trouble/attempt';

const SHOWN = 4;

/** A few invented toys to try the app with; what is noted of each is in the language of who borrows it. */
export function Borrow() {
  const attempt = useAttempt();
  const { say } = useWords();
  const take = (card: (typeof demoCards)[number]) =>
    attempt(async () => {
      const toy = await addCard({ ...card, note: say(`toy-note.${card.toy.name.toLowerCase()}`) });
      go(to('toy', toy.id));
    });
  return (
    <>
      {demoCards.slice(0, SHOWN).map((card) => (
        <li key={card.toy.name}>
          <button type="button" class="toy-face" onClick={() => take(card)}>
            <Portrait body={bodyFrom(card)} />
            <span>{card.toy.name}</span>
          </button>
        </li>
      ))}
    </>
  );
}
