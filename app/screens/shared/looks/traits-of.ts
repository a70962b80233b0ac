import type { BodyKind, TraitId } from '../../../body';

/** The traits that matter to each kind, in the order they are seen. */
export const traitsOf: Readonly<Record<BodyKind, readonly TraitId[]>> = {
  upright: ['build', 'head', 'limbs', 'ears', 'neck', 'shoulders', 'arms', 'posture', 'legs', 'tail', 'stuffing'],
  'four-legged': ['ears', 'neck', 'posture', 'tail', 'stuffing'],
  round: ['ears', 'arms', 'tail', 'stuffing'],
};
