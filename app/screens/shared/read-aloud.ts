import { useEffect, useState } from 'preact/hooks';

export type Reader = { readonly speaking: boolean; readonly toggle: () => void };

/**
 * Reads `text` aloud with a voice that lives on this device: others send the text to a server. Null where there is no
 * such voice for the language. It falls silent when the text changes or the screen is left.
 */
export function useReadAloud(text: string, locale: string): Reader | null {
  const voice = useLocalVoice(locale);
  const [speaking, setSpeaking] = useState(false);
  useEffect(() => () => globalThis.speechSynthesis?.cancel(), [text]);
  if (!voice) return null;
  const speak = () => {
    const words = new SpeechSynthesisUtterance(text);
    words.voice = voice;
    words.lang = voice.lang;
    words.onend = () => setSpeaking(false);
    words.onerror = () => setSpeaking(false);
    speechSynthesis.speak(words);
    setSpeaking(true);
  };
  const silence = () => {
    speechSynthesis.cancel();
    setSpeaking(false);
  };
  return { speaking, toggle: speaking ? silence : speak };
}

/** A voice that lives on this device. Voices come late in some browsers, and never in others. */
export function useLocalVoice(locale: string): SpeechSynthesisVoice | undefined {
  const [voice, setVoice] = useState<SpeechSynthesisVoice>();
  useEffect(() => {
    const speech: SpeechSynthesis | undefined = globalThis.speechSynthesis;
    if (!speech) return;
    const choose = () => setVoice(speech.getVoices().find((each) => each.localService && speaks(each, locale)));
    choose();
    speech.addEventListener?.('voiceschanged', choose);
    return () => speech.removeEventListener?.('voiceschanged', choose);
  }, [locale]);
  return voice;
}

/** Android writes `en_US`. */
const speaks = (voice: SpeechSynthesisVoice, locale: string) =>
  voice.lang.replace('_', '-').split('-')[0] === locale.split('-')[0];
