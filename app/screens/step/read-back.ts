import { useEffect } from 'preact/hooks';
import { useWords } from '../../parts';
import type { Entry } from '../shared/entry/entry';
import { useLiking } from '../shared/liking';
import { useLocalVoice } from '../shared/read-aloud';

/** A number just typed and saved, spoken back by the device's own voice, for whoever wants that and looks at the tape. */
export function useReadBack({ state, text }: Pick<Entry, 'state' | 'text'>): void {
  const { say, hand } = useWords();
  const { aloud } = useLiking();
  const voice = useLocalVoice(hand.locale);
  const saved = state.is === 'saved';
  useEffect(() => {
    if (!aloud || !voice || !saved || text.trim() === '') return;
    const words = new SpeechSynthesisUtterance(
      say('screen.step.spoken', { number: text, unit: say(`screen.unit.${hand.unit}`) }),
    );
    words.voice = voice;
    words.lang = voice.lang;
    speechSynthesis.cancel();
    speechSynthesis.speak(words);
  }, [saved, text]);
}
