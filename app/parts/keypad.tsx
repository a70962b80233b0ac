import { useRef, useState } from 'preact/hooks';
import { Icon } from './icon';
import { pressAnew, pressKey } from './keys';
import { neighbourCell, padCells } from './pad-cells';
import { useWords } from './say';
import './keypad.css';

type KeypadProps = {
  readonly text: string;
  /** The text is a number kept before, which the next key need not go on with. */
  readonly kept?: boolean;
  readonly onText: (text: string) => void;
};

/**
 * The pad below a length field: digits, and a piece of tape whose marks are the fractions (or a millimetre more or
 * less). It is one stop of the tab key; the arrow keys walk it. Numbers run from left to right whatever the
 * words do, and so do the keys.
 */
export function Keypad({ text, kept = false, onText }: KeypadProps) {
  const { say, hand } = useWords();
  const pad = useRef<HTMLFieldSetElement>(null);
  const [stop, setStop] = useState('1');
  const rows = padCells(text, hand, say);
  const reachable = rows.flat().some((cell) => cell.id === stop) ? stop : '1';

  const walk = (event: KeyboardEvent) => {
    const next = neighbourCell(rows, reachable, event.key);
    if (!next) return;
    event.preventDefault();
    pad.current?.querySelector<HTMLElement>(`[data-key="${next}"]`)?.focus();
  };

  return (
    <fieldset class="keypad" dir="ltr" aria-label={say('screen.keypad.name')} ref={pad}>
      {rows.map((row, index) => (
        <div class={index === 2 ? `keypad-tape ${hand.unit}` : 'keypad-row'} key={row[0]?.id}>
          {row.map((cell) => (
            <button
              type="button"
              key={cell.id}
              class={`key key-${cell.key.press}`}
              data-key={cell.id}
              tabIndex={cell.id === reachable ? 0 : -1}
              aria-label={cell.called && `${cell.face} ${cell.called}`.trim()}
              aria-pressed={cell.down}
              onFocus={() => setStop(cell.id)}
              onKeyDown={walk}
              onClick={() => onText((kept ? pressAnew : pressKey)(text, cell.key))}
            >
              {cell.id === 'erase' ? <Icon name="erase" /> : <span>{cell.face}</span>}
            </button>
          ))}
        </div>
      ))}
    </fieldset>
  );
}
