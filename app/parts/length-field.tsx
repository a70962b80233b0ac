import type { Ref } from 'preact';
import type { Mm, Unit } from '../body';
import { fieldText } from './field-text';
import { useWords } from './say';
import { UnitToggle } from './unit-toggle';
import './length-field.css';

type LengthFieldProps = {
  readonly text: string;
  /** The text is a number kept before: what is typed takes its place. */
  readonly kept?: boolean;
  readonly onText: (text: string) => void;
  readonly onEnter: () => void;
  readonly onUnit: (unit: Unit) => void;
  /** Ids of what names the field, and of what says more. */
  readonly labelledBy: string;
  readonly describedBy: string;
  readonly wrong: boolean;
  /** A length offered: shown in pencil while nothing is typed. */
  readonly suggestion?: Mm | null;
  readonly field?: Ref<HTMLInputElement>;
};

/**
 * Where the number stands, as large as a number on a tape. The phone's own keyboard stays away (ours is below);
 * a hardware keyboard types here as anywhere.
 */
export function LengthField(props: LengthFieldProps) {
  const { hand } = useWords();
  return (
    <div class={props.wrong ? 'length-field wrong' : 'length-field'}>
      <input
        ref={props.field ?? null}
        type="text"
        inputMode="none"
        enterKeyHint="next"
        autoComplete="off"
        autoCapitalize="off"
        spellcheck={false}
        dir="ltr"
        value={props.text}
        placeholder={props.suggestion ? fieldText(props.suggestion, hand) : ''}
        aria-labelledby={props.labelledBy}
        aria-describedby={props.describedBy}
        aria-invalid={props.wrong}
        onFocus={(event) => props.kept && event.currentTarget.select()}
        onInput={(event) => props.onText(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          event.preventDefault();
          // Held down, it would run through step after step.
          if (!event.repeat) props.onEnter();
        }}
      />
      <UnitToggle onUnit={props.onUnit} />
    </div>
  );
}
