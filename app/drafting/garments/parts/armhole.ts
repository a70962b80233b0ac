import { only, type Part } from '../../rows/garment';
import { bindingPart } from './binding';
import { hasSleeve, isLined } from './bodice';

/** Armholes without a sleeve are bound, too hollow to turn; or lined. */
export const armholePart: Part = only(
  (choices) => !hasSleeve(choices) && !isLined(choices),
  bindingPart('armhole-binding', {
    edge: () => [
      { piece: 'front', edge: 'armhole', back: true },
      { piece: 'back', edge: 'armhole' },
    ],
    closed: () => true,
    ends: () => 'front',
    rings: 2,
  }),
);
