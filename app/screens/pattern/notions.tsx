import { notionWords } from '../../drafting/catalogue';
import type { Draft } from '../../drafting/draft-types';
import { useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';

/** What to have at hand beside the pieces: cloth, strips, what closes it, elastic, thread. */
export function Notions({ draft }: { readonly draft: Draft }) {
  const { say, hand } = useWords();
  return (
    <Folded title={say('notion.title')} stands={say('screen.pattern.things', { count: draft.notions.length })}>
      <ul class="told-list">
        {draft.notions.map((notion) => (
          <li key={`${notion.kind} ${notion.place}`}>{notionWords(notion, say, hand.unit)}</li>
        ))}
      </ul>
    </Folded>
  );
}
