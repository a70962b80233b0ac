import { one } from './choice';
import {
  armholeChoice,
  chinChoice,
  type Ears,
  earsChoice,
  hoodEdgeChoice,
  mayEndSooner,
  openingChoice,
  pocketChoice,
  pocketCutChoice,
  ribbedHemChoice,
  type Sleeves,
  shorterChoice,
  wristChoice,
} from './choices';
import { dressedAuto, dressedChoices, dressedSuits, mayOpen } from './dressed';
import { head, needs, quietly } from './head';
import { bareNeeds, bareQuiet, earNeeds, hoodNeeds, sleeveNeeds, sleeveQuiet, topNeeds } from './needed';

const hasSleeve = ({ sleeve }: Pick<Sleeves, 'sleeve'>) => sleeve !== 'none';
const isBare = ({ sleeve }: Pick<Sleeves, 'sleeve'>) => sleeve === 'none';

/** A top with sleeves and a hood, for anything that sits or stands upright. */
export const hoodedTopHead = head({
  id: 'hooded-top',
  bodies: ['upright'],
  level: 'patience',
  looks: ['shoulders', 'arms', 'posture', 'stuffing', 'head', 'ears'],
  opensAt: 'front',
  choices: {
    opening: openingChoice,
    ...dressedChoices,
    sleeve: one(['long', 'short', 'none'], 'long'),
    armhole: armholeChoice,
    wrist: wristChoice,
    hood: one(['auto', 'two', 'three'], 'auto'),
    chin: chinChoice,
    hoodEdge: hoodEdgeChoice,
    ears: earsChoice,
    pocket: pocketChoice,
    pocketCut: pocketCutChoice,
    hem: ribbedHemChoice,
    shorterSleeve: shorterChoice,
  },
  auto: { ...dressedAuto, opening: 'none', armhole: 'set-in', wrist: 'turned', hood: 'two' },
  suits: {
    pocketCut: ({ pocket }) => pocket,
    wrist: ({ sleeve }) => sleeve !== 'none',
    ...dressedSuits(mayOpen),
    armhole: ({ sleeve }) => sleeve !== 'none',
    shorterSleeve: mayEndSooner.sleeve,
  },
  needs: [
    ...topNeeds,
    ...needs(sleeveNeeds, hasSleeve),
    ...quietly(sleeveQuiet, hasSleeve),
    ...needs(bareNeeds, isBare),
    ...quietly(bareQuiet, isBare),
    ...needs(hoodNeeds),
    { measure: 'paw-girth', when: ({ pocket }) => pocket },
    ...needs(earNeeds, ({ ears }: Ears) => ears === 'open'),
  ],
});
