import { Icon, spoken, useWords } from '../../parts';
import { useReadAloud } from './read-aloud';
import './speak-act.css';

/** Reads a text aloud on wish; nothing where no voice of the device speaks the language. */
export function SpeakAct({ text }: { readonly text: string }) {
  const { say, hand } = useWords();
  const reader = useReadAloud(spoken(text, hand, say), hand.locale);
  if (!reader) return null;
  return (
    <button
      type="button"
      class="quiet round speak"
      aria-pressed={reader.speaking}
      aria-label={say('screen.step.read')}
      onClick={reader.toggle}
    >
      <Icon name="speak" />
    </button>
  );
}
