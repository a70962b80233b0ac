import { notionWords } from '../../drafting/catalogue';
import type { Draft } from '../../drafting/draft-types';
import { useWords } from '../../parts';

/** What to have at hand beside the pieces: cloth, strips, what closes it, elastic, thread. */
export function Notions({ draft }: { readonly draft: Draft }) {
  const { say, hand } = useWords();
  return (
    <section class="told">
      <h2>{say('notion.title')}</h2>
      <ul class="told-list">
        {draft.notions.map((notion) => (
          <li key={`${notion.kind} ${notion.place}`}>{notionWords(notion, say, hand.unit)}</li>
        ))}
      </ul>
    </section>
  );
}
