import { useRef } from 'preact/hooks';
import type { Draft } from '../../../drafting/draft-types';
import { useWords } from '../../../parts';

/** How many pieces a pattern has, for who hears the screen: once it is drawn, and with every draft after. */
export function DrawnHeard({ draft }: { readonly draft: Draft | null }) {
  const { say } = useWords();
  const heard = useRef({ draft, times: 0 });
  if (heard.current.draft !== draft) heard.current = { draft, times: heard.current.times + 1 };
  const { times } = heard.current;
  return (
    <p class="unseen" role="status">
      {draft && (
        <span key={times}>
          {say(times > 1 ? 'screen.drawn-heard.now' : 'screen.drawn-heard.first', { count: draft.pieces.length })}
        </span>
      )}
    </p>
  );
}
