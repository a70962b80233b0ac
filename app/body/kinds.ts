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
  /** Apart from the body: play dolls have firm heads on soft bodies. */
  head: ['soft', 'firm'],
  /** Where arms and legs are set: at the corners of the trunk, or flat on its sides. */
  limbs: ['below', 'sides'],
  /** What the maker says the toy is like; see `builds`. Unsaid, its measures tell. */
  build: ['unsaid', 'plush-bear', 'long-limbed', 'play-doll', 'baby-doll', 'big-headed'],
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
  head: 'soft',
  limbs: 'below',
  build: 'unsaid',
};
