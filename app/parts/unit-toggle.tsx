import { type Unit, unitFace } from '../body';
import { useWords } from './say';
import './unit-toggle.css';

const units: readonly Unit[] = ['in', 'cm'];

/** Inches or centimetres: how lengths are shown and typed. What is stored never changes by it. */
export function UnitToggle({ onUnit }: { readonly onUnit: (unit: Unit) => void }) {
  const { say, hand } = useWords();
  const faceOf = (unit: Unit) => unitFace({ ...hand, unit });
  return (
    <fieldset class="unit-toggle" aria-label={say('screen.unit.name')}>
      {units.map((unit) => (
        <button
          type="button"
          key={unit}
          aria-pressed={hand.unit === unit}
          aria-label={say('list.aside', { name: faceOf(unit), what: say(`screen.unit.${unit}`) })}
          onClick={() => onUnit(unit)}
        >
          {faceOf(unit)}
        </button>
      ))}
    </fieldset>
  );
}
