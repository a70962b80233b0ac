import type { Draft } from '../../drafting/draft-types';
import { useWords } from '../../parts';
import { isSame } from '../shared/again/since';
import { SinceList } from '../shared/again/since-list';
import { useSince } from '../shared/again/use-since';
import { Folded } from '../shared/folded/folded';
import type { Making } from '../shared/making/making';

/** Of a garment that was made before, or is made like another: what is another way now. */
export function Again({ draft, making }: { readonly draft: Draft; readonly making: Making }) {
  const { say } = useWords();
  const compared = useSince(draft, making);
  if (!compared) return null;
  const { since, before, anothers } = compared;
  const title = say(anothers ? 'screen.since.beside' : 'screen.since.title', { before });
  const stands = isSame(since)
    ? say('screen.since.nothing')
    : say('screen.pattern.changes', { count: since.sizes.length });
  return (
    <Folded title={title} stands={stands} open={since.sizes.length > 0}>
      <SinceList since={since} before={before} />
    </Folded>
  );
}
