import { one } from './choice';
import { type Ears, openingChoice, pocketCutChoice, type Sleeves } from './choices';
import { dressedChoices, dressedSuits, mayOpen } from './dressed';
import { head, needs, quietly } from './head';
import { endChoices, hoodChoices, hoodedAuto, hoodedLooks, hoodedNeeds, hoodedSuits, sleevedChoices } from './hooded';
import { bareNeeds, bareQuiet } from './needed';

type Chosen = Pick<Sleeves, 'sleeve'> & Ears & { readonly pocket: boolean };
const hasSleeve = ({ sleeve }: Pick<Sleeves, 'sleeve'>) => sleeve !== 'none';
const isBare = ({ sleeve }: Pick<Sleeves, 'sleeve'>) => sleeve === 'none';

/** A top with sleeves and a hood, for anything that sits or stands upright. */
export const hoodedTopHead = head({
  id: 'hooded-top',
  bodies: ['upright'],
  level: 'patience',
  looks: hoodedLooks,
  opensAt: 'front',
  choices: {
    opening: openingChoice,
    ...dressedChoices,
    sleeve: one(['long', 'short', 'none'], 'long'),
    ...sleevedChoices,
    ...hoodChoices,
    pocketCut: pocketCutChoice,
    ...endChoices,
  },
  auto: { ...hoodedAuto, opening: 'none' },
  suits: {
    ...dressedSuits(mayOpen),
    ...hoodedSuits,
    wrist: hasSleeve,
    armhole: hasSleeve,
  },
  needs: [...hoodedNeeds<Chosen>(hasSleeve, () => true), ...needs(bareNeeds, isBare), ...quietly(bareQuiet, isBare)],
});
