import { expect, test } from 'vitest';
import { idleTraits, idleValues, upright } from '../measured/changes';
import { buildCard, builds } from '../toys/builds';

const cards = builds.map((build) => buildCard(build));

/**
 * Traits and choice values that change nothing on any build, by garment: to be read by its drafting, or no longer asked
 * for it. The lists may only shrink: one that changes something is struck off.
 */
const STANCE = ['neck', 'legs', 'tail'];
const POSE = ['arms', ...STANCE, 'posture'];
const toMend: Readonly<Record<string, { readonly traits: readonly string[]; readonly values?: readonly string[] }>> = {
  'hooded-top': { traits: STANCE, values: ['armhole set-in'] },
  tee: { traits: STANCE, values: ['armhole set-in'] },
  tank: { traits: STANCE },
  nightshirt: { traits: STANCE, values: ['armhole set-in'] },
  dress: { traits: [...STANCE, 'posture'], values: ['armhole set-in'] },
  skirt: { traits: POSE },
  // As many legs as the toy has is what it is anyway.
  trousers: { traits: ['arms', 'neck'], values: ['legs two'] },
  cape: { traits: [...POSE, 'stuffing'] },
  'tube-dress': { traits: POSE },
  vest: { traits: POSE },
  'sleeping-bag': { traits: POSE },
  bib: { traits: [...POSE, 'stuffing'] },
  scarf: { traits: [...POSE, 'stuffing'] },
  'wrist-warmers': { traits: POSE },
};

test.each(upright.map((garment) => [garment.id, garment] as const))(
  '%s: every trait it asks for changes it on some toy, but for those to mend',
  (id, garment) => {
    expect(idleTraits(cards, garment).sort()).toEqual([...(toMend[id]?.traits ?? [])].sort());
  },
);

test.each(upright.map((garment) => [garment.id, garment] as const))(
  '%s: every value of every choice changes it on some toy, but for those to mend',
  (id, garment) => {
    expect(idleValues(cards, garment)).toEqual(toMend[id]?.values ?? []);
  },
);
