import { one } from './choice';
import {
  armholeChoice,
  chinChoice,
  type Ears,
  earsChoice,
  hoodEdgeChoice,
  mayEndSooner,
  pocketChoice,
  ribbedHemChoice,
  shorterChoice,
  wristChoice,
} from './choices';
import { dressedAuto } from './dressed';
import { needs, quietly } from './head';
import { earNeeds, hoodNeeds, sleeveNeeds, sleeveQuiet, topNeeds } from './needed';

/** What tops under a hood are cut by and asked for, whether they open all the way or not. */
export const hoodedLooks = ['shoulders', 'arms', 'posture', 'stuffing', 'head', 'ears'] as const;

/** Beside the sleeve, which each offers in its own lengths. */
export const sleevedChoices = { armhole: armholeChoice, wrist: wristChoice } as const;
export const hoodChoices = {
  hood: one(['auto', 'two', 'three'], 'auto'),
  chin: chinChoice,
  hoodEdge: hoodEdgeChoice,
  ears: earsChoice,
  pocket: pocketChoice,
} as const;
export const endChoices = { hem: ribbedHemChoice, shorterSleeve: shorterChoice } as const;

export const hoodedAuto = { ...dressedAuto, armhole: 'set-in', wrist: 'turned', hood: 'two' } as const;
export const hoodedSuits = {
  pocketCut: ({ pocket }: { readonly pocket: boolean }) => pocket,
  shorterSleeve: mayEndSooner.sleeve,
} as const;

/** Measured for any of them, with these choices for their sleeves and for their hood. */
export const hoodedNeeds = <C extends Ears & { readonly pocket: boolean }>(
  hasSleeve: (choices: C) => boolean,
  isHooded: (choices: C) => boolean,
) =>
  [
    ...topNeeds,
    ...needs(sleeveNeeds, hasSleeve),
    ...quietly(sleeveQuiet, hasSleeve),
    ...needs(hoodNeeds, isHooded),
    { measure: 'paw-girth', when: ({ pocket }: C) => pocket },
    ...needs(earNeeds, (choices: C) => isHooded(choices) && choices.ears === 'open'),
  ] as const;
