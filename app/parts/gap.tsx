import { useWords } from './say';

/** What stands between one sentence, or the name of a thing, and the next: a space, but none in a language that sets none. */
export function Gap() {
  const { say } = useWords();
  return <>{say('list.after', { one: '', two: '' })}</>;
}
