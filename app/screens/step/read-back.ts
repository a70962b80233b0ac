import { useEffect } from 'preact/hooks';
import { parseLength } from '../../body';
import { type Speech, shownLength, spoken, useWords } from '../../parts';
import type { Entry } from '../shared/entry/entry';
import { useLiking } from '../shared/liking';
import { useLocalVoice } from '../shared/read-aloud';

/** A number just typed and saved, as it is heard: `17 and 1 half inches, saved`; nothing before the store has it. */
export function heardOf({ state, text }: Pick<Entry, 'state' | 'text'>, { say, hand }: Speech): string {
  const read = state.is === 'saved' ? parseLength(text, hand) : null;
  return read?.ok ? say('screen.step.heard', { length: spoken(shownLength(read.mm, hand), hand, say) }) : '';
}

/** The same spoken back by the device's own voice, for whoever wants that and looks at the tape. */
export function useReadBack(heard: string): void {
  const { hand } = useWords();
  const { aloud } = useLiking();
  const voice = useLocalVoice(hand.locale);
  useEffect(() => {
    if (!aloud || !voice || heard === '') return;
    const words = new SpeechSynthesisUtterance(heard);
    words.voice = voice;
    words.lang = voice.lang;
    speechSynthesis.cancel();
    speechSynthesis.speak(words);
  }, [heard]);
}
