import { only, type Part } from '../garment';
import { bindingPart } from './binding';
import { hasSleeve } from './bodice';

/** Armholes without a sleeve are bound: too hollow to turn. */
export const armholePart: Part = only(
  (choices) => !hasSleeve(choices),
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
