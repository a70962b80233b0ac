import { useWords } from '../../parts';

/** What a card says that this app does not know: named, so that nothing is lost unnoticed. */
export function Skipped({ names }: { readonly names: readonly string[] }) {
  const { say } = useWords();
  if (names.length === 0) return null;
  return <p class="slip">{say('screen.card.skipped', { count: names.length, names })}</p>;
}
