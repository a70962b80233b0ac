/** The three body kinds; see `traits` for what varies within a kind. */
export const bodyKinds = ['upright', 'four-legged', 'round'] as const;
export type BodyKind = (typeof bodyKinds)[number];

/**
 * Traits change steps and drafts, not the kind. The first value of each list is what is assumed when nothing is said.
 * Adding a trait is adding a row.
 */
export const traitValues = {
  shoulders: ['sloped', 'square', 'none'],
  neck: ['clear', 'none'],
  arms: ['down', 'out', 'forward', 'up'],
  posture: ['sits', 'stands'],
  legs: ['apart', 'sewn'],
  ears: ['none', 'side', 'top'],
  tail: [false, true],
  stuffing: ['soft', 'firm'],
} as const;

export type TraitId = keyof typeof traitValues;
export type Traits = {
  readonly [T in TraitId]: (typeof traitValues)[T][number];
};

export const usualTraits: Traits = {
  shoulders: 'sloped',
  neck: 'clear',
  arms: 'down',
  posture: 'sits',
  legs: 'apart',
  ears: 'none',
  tail: false,
  stuffing: 'soft',
};
