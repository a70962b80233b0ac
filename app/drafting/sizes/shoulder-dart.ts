import type { Mm, Traits } from '../../body';
import type { Sizes } from './maker';
import type { Wearer } from './wearer';

/** A dart from the neck to the point of the shoulder: how long, mm, and by how much each of its edges leans off its middle, radians. */
export type ShoulderDart = { readonly long: Mm; readonly turn: number };

/** How far below level arms hang, radians; any others go on as the shoulder does, or lift it (common practice, no source). */
const HANGING = (45 * Math.PI) / 180;
/** A dart takes up this share of the angle between shoulder and arm: the rest lies in the seams, which are curved (common practice, no source). */
const DARTED_SHARE = 0.65;
/** Less at the neck is not worth a dart (common practice, no source). */
const LEAST_INTAKE_MM = 6;

/**
 * A raglan sleeve laid flat goes on as the shoulder does; where the arm hangs it turns down at the point of the shoulder, and what
 * would stand up there is taken in from the neck. Null where arms do not hang, or the shoulder is too short or too sloped for it.
 */
export function shoulderDart(
  { traits }: Pick<Wearer, 'traits'>,
  { slope, shoulder }: Sizes<'slope' | 'shoulder'>,
): ShoulderDart | null {
  const turn = hangs(traits) ? DARTED_SHARE * (HANGING - slope) : 0;
  return 2 * shoulder * Math.sin(turn) < LEAST_INTAKE_MM ? null : { long: shoulder, turn };
}

const hangs = ({ arms }: Traits): boolean => arms === 'down';
