import { type Unit, unitFace } from '../body';
import { useWords } from './say';
import './unit-toggle.css';

const units: readonly Unit[] = ['in', 'cm'];

/** Inches or centimetres: how lengths are shown and typed. What is stored never changes by it. */
export function UnitToggle({ onUnit }: { readonly onUnit: (unit: Unit) => void }) {
  const { say, hand } = useWords();
  const faceOf = (unit: Unit) => unitFace({ ...hand, unit });
  /** Where the sign is the word itself, it is said once. */
  const calledOf = (unit: Unit) => {
    const [name, what] = [faceOf(unit), say(`screen.unit.${unit}`)];
    return name === what ? name : say('list.aside', { name, what });
  };
  return (
    <fieldset class="unit-toggle" aria-label={say('screen.unit.name')}>
      {units.map((unit) => (
        <button
          type="button"
          key={unit}
          aria-pressed={hand.unit === unit}
          aria-label={calledOf(unit)}
          onClick={() => onUnit(unit)}
        >
          {faceOf(unit)}
        </button>
      ))}
    </fieldset>
  );
}
