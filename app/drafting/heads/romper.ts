import { one } from './choice';
import {
  armholeChoice,
  gussetChoice,
  type LegCount,
  legHemChoice,
  legsChoice,
  mayEndSooner,
  plainWristChoice,
  type Sleeves,
  shorterChoice,
  tailChoice,
} from './choices';
import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs, quietly } from './head';
import { bareNeeds, bareQuiet, belowNeeds, belowQuiet, sleeveNeeds, sleeveQuiet, yokeNeeds, yokeQuiet } from './needed';
import { isTube, trouserNeeds } from './trousers';

const hasSleeve = ({ sleeve }: Pick<Sleeves, 'sleeve'>) => sleeve !== 'none';
const isBare = ({ sleeve }: Pick<Sleeves, 'sleeve'>) => sleeve === 'none';

/** Bodice and legs in one, opened behind from the neck to the seat. */
export const romperHead = head({
  id: 'romper',
  bodies: ['upright'],
  level: 'patience',
  looks: ['shoulders', 'arms', 'posture', 'legs', 'tail', 'stuffing'],
  opensAt: 'back',
  choices: {
    trousers: one(['short', 'long', 'elastic'], 'short'),
    sleeve: one(['short', 'long', 'puffed', 'none'], 'short'),
    armhole: armholeChoice,
    wrist: plainWristChoice,
    neck: one(['bound', 'faced'], 'bound'),
    legs: legsChoice,
    gusset: gussetChoice,
    tail: tailChoice,
    hem: legHemChoice,
    // Stepped into: there is no other way.
    opening: one(['back'], 'back'),
    waist: one(['bodice'], 'bodice'),
    ...dressedChoices,
    shorterSleeve: shorterChoice,
    shorterLeg: shorterChoice,
  },
  auto: { ...dressedAuto, armhole: 'set-in', legs: 'two', gusset: 'none', tail: 'open' },
  suits: {
    ...dressedSuits(() => true),
    wrist: ({ sleeve }) => sleeve !== 'none' && sleeve !== 'puffed',
    armhole: ({ sleeve }, value) => sleeve !== 'none' && (sleeve !== 'puffed' || value !== 'in-one'),
    hem: ({ trousers }) => trousers !== 'elastic',
    shorterSleeve: mayEndSooner.sleeve,
    shorterLeg: (choices) => choices.trousers !== 'elastic' && mayEndSooner.leg(choices),
  },
  needs: [
    ...needs(yokeNeeds),
    ...quietly([...yokeQuiet, ...belowNeeds, ...belowQuiet]),
    ...needs(['underarm-to-waist']),
    ...needs(sleeveNeeds, hasSleeve),
    ...quietly(sleeveQuiet, hasSleeve),
    ...needs(bareNeeds, isBare),
    ...quietly(bareQuiet, isBare),
    ...trouserNeeds,
    ...needs(['body-loop'], (choices: LegCount, looks) => !isTube(choices, looks)),
  ],
});
