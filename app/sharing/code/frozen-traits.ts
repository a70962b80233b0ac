/**
 * Body kinds, units and traits as codes of version 1 number them. Append only, both the rows and the values within a row
 * (at most seven values a trait, fifteen traits, eight kinds, four units), whatever becomes of their order elsewhere.
 */
export const frozenBodies: readonly string[] = ['upright', 'four-legged', 'round'];

export const frozenUnits: readonly string[] = ['cm', 'in'];

export const frozenTraits: readonly (readonly [trait: string, values: readonly (string | boolean)[]])[] = [
  ['shoulders', ['sloped', 'square', 'none']],
  ['neck', ['clear', 'none']],
  ['arms', ['down', 'out', 'forward', 'up']],
  ['posture', ['sits', 'stands']],
  ['legs', ['apart', 'sewn']],
  ['ears', ['none', 'side', 'top']],
  ['tail', [false, true]],
  ['stuffing', ['soft', 'firm']],
  ['head', ['soft', 'firm']],
  ['limbs', ['below', 'sides']],
  ['build', ['unsaid', 'plush-bear', 'long-limbed', 'play-doll', 'baby-doll', 'big-headed']],
];
