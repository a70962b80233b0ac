import { useId, useState } from 'preact/hooks';
import type { OwnCloth } from '../../body';
import { CLOTH_LIMITS, clothOf } from '../../drafting/catalogue';
import { useWords } from '../../parts';
import { AmountField } from '../shared/making/amount-field';
import { NameInput } from '../shared/name-input';
import './own-cloth.css';

/** One layer is too thin for a tape: so many are folded and measured. */
const LAYERS = 10;
const ROUNDED = 1000;
const STRETCH = {
  kind: 'share',
  ...CLOTH_LIMITS.stretch,
  fallback: 0,
} as const;
const THICKNESS = {
  kind: 'length',
  min: CLOTH_LIMITS.thickness.min * LAYERS,
  max: CLOTH_LIMITS.thickness.max * LAYERS,
  fallback: LAYERS,
} as const;

type OwnClothFieldsProps = {
  readonly like: string;
  readonly own: OwnCloth | undefined;
  readonly onKeep: (cloth: OwnCloth) => void;
  readonly onForget: (() => void) | undefined;
};

/** The numbers of the cloth that is chosen, to be made her own: kept under a name, and chosen from then on like any other. */
export function OwnClothFields({ like, own, onKeep, onForget }: OwnClothFieldsProps) {
  const { say } = useWords();
  const id = useId();
  const numbers = clothOf({ cloth: like, ...(own ? { ownCloth: own } : {}) });
  const [name, setName] = useState(own?.name ?? '');
  const [stretch, setStretch] = useState(numbers?.stretch ?? 0);
  const [thickness, setThickness] = useState(numbers?.thickness ?? 1);
  const [wrong, setWrong] = useState(false);
  const keep = () => {
    if (name.trim() === '') setWrong(true);
    else
      onKeep({
        name: name.trim(),
        stretch,
        thickness: Math.round(thickness * ROUNDED) / ROUNDED,
      });
  };
  return (
    <details class="folded-fields own-cloth">
      <summary>{say(own ? 'screen.own-cloth.change' : 'screen.own-cloth.title')}</summary>
      <p class="soft small">{say('screen.own-cloth.how', { like: say(`cloth.${like}`) })}</p>
      <div class="amount">
        <label for={id}>{say('screen.own-cloth.name')}</label>
        <span class="amount-field own-name">
          <NameInput
            id={id}
            value={name}
            longest={40}
            wrong={wrong}
            onName={(typed) => {
              setName(typed);
              setWrong(false);
            }}
          />
        </span>
        <p id={`${id}-wrong`} class="wrong-words small" role="alert">
          {wrong && say('screen.own-cloth.unnamed')}
        </p>
      </div>
      <AmountField
        legend={say('screen.own-cloth.stretch')}
        note={say('screen.own-cloth.stretch-how')}
        kind={STRETCH}
        value={stretch}
        onChange={setStretch}
      />
      <AmountField
        legend={say('screen.own-cloth.thickness', { layers: LAYERS })}
        kind={THICKNESS}
        value={thickness * LAYERS}
        onChange={(layers) => setThickness(layers / LAYERS)}
      />
      <div class="slip-acts">
        <button type="button" class="plain" onClick={keep}>
          {say('screen.own-cloth.keep')}
        </button>
        {onForget && (
          <button type="button" class="quiet" onClick={onForget}>
            {say('screen.own-cloth.forget')}
          </button>
        )}
      </div>
    </details>
  );
}
