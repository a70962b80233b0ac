import { expect, test } from 'vitest';
import { idleOffers, idleTraits, idleValues, upright } from '../measured/changes';
import { buildCard, builds } from '../toys/builds';

const cards = builds.map((build) => buildCard(build));

/**
 * Traits and choice values that change nothing on any build, by garment: to be read by its drafting, or no longer asked
 * for it. The lists may only shrink: one that changes something is struck off.
 */
const STANCE = ['neck', 'legs', 'tail'];
const POSE = ['arms', ...STANCE, 'posture'];
const toMend: Readonly<Record<string, { readonly traits: readonly string[]; readonly values?: readonly string[] }>> = {
  'hooded-top': { traits: STANCE },
  tee: { traits: STANCE },
  tank: { traits: STANCE },
  nightshirt: { traits: STANCE },
  dress: { traits: [...STANCE, 'posture'] },
  skirt: { traits: POSE },
  // As many legs as the toy has is what it is anyway.
  trousers: { traits: ['arms', 'neck'], values: ['legs two'] },
  cape: { traits: [...POSE, 'stuffing'] },
  'tube-dress': { traits: POSE },
  vest: { traits: POSE },
  'sleeping-bag': { traits: POSE },
  hat: { traits: ['arms', 'legs', 'neck', 'posture', 'tail'] },
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

test.each(upright.map((garment) => [garment.id, garment] as const))(
  '%s: beside every other choice, what is asked changes it on some toy',
  (_, garment) => {
    expect(idleOffers(cards, garment)).toEqual([]);
  },
);
