import { MM_PER_INCH, type Mm, type Unit } from './units';

/** What people write, as steps of a unit: sixteenths of an inch or whole millimetres; then hundredths of either number. */
const written: readonly (readonly [step: Mm, unit: Unit])[][] = [
  [
    [MM_PER_INCH / 16, 'in'],
    [1, 'cm'],
  ],
  [
    [MM_PER_INCH / 100, 'in'],
    [0.1, 'cm'],
  ],
];

/** The unit a stored reading (mm) was typed in, as its steps tell; where they tell of both or of neither, `usual`. */
export function typedUnit(value: Mm, usual: Unit): Unit {
  for (const steps of written) {
    const [one, ...more] = steps.filter(([step]) => isWhole(value / step));
    if (one) return more.length === 0 ? one[1] : usual;
  }
  return usual;
}

/** Stored to the nanometre: what is farther off was not meant. */
const isWhole = (steps: number) => Math.abs(steps - Math.round(steps)) < 1e-4;
