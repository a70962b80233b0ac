import { one, yes } from './choice';
import {
  armholeChoice,
  type Bodices,
  bareNeckChoice,
  type Dressed,
  isBand,
  isRound,
  isRoundNeck,
  isStraight,
  mayEndSooner,
  type Opens,
  panelsChoice,
  plainWristChoice,
  type Skirts,
  type Sleeves,
  type Straps,
  shorterChoice,
  straightHemChoice,
} from './choices';
import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs, quietly } from './head';
import { bareNeeds, bareQuiet, belowNeeds, belowQuiet, sleeveNeeds, sleeveQuiet, yokeNeeds, yokeQuiet } from './needed';

const hasShoulders = (choices: Bodices) => !isBand(choices);
const hasSleeve = (choices: Bodices & Sleeves) => hasShoulders(choices) && choices.sleeve !== 'none';
const isBare = (choices: Bodices & Sleeves) => hasShoulders(choices) && choices.sleeve === 'none';

type Hung = Bodices & Straps;
/** It opens behind, or straps close behind the neck. */
const closes = (choices: Hung & Dressed & Pick<Opens, 'opening'>) =>
  (isBand(choices) && choices.straps !== 'none' && isRoundNeck(choices)) ||
  (!isRound(choices) && choices.opening !== 'none');
/** The hips pass the opening, or an A-line goes round them. */
const hipMatters = ({ skirt, opening, bodice }: Pick<Skirts, 'skirt'> & Bodices & { readonly opening: string }) =>
  skirt === 'a-line' || (opening !== 'none' && bodice !== 'half-circle');

/** Any bodice with any skirt, with sleeves or straps. */
export const dressHead = head({
  id: 'dress',
  bodies: ['upright'],
  level: 'patience',
  looks: ['shoulders', 'arms', 'stuffing', 'head'],
  opensAt: 'back',
  choices: {
    bodice: one(['shoulder', 'tank', 'band', 'dipped', 'half-circle', 'halter'], 'shoulder'),
    skirt: one(['gathered', 'knife', 'box', 'a-line', 'half-circle', 'circle', 'tiers'], 'gathered'),
    panels: panelsChoice,
    sleeve: one(['short', 'long', 'puffed', 'none'], 'short'),
    armhole: armholeChoice,
    wrist: plainWristChoice,
    straps: one(['straight', 'crossed', 'neck', 'none'], 'straight'),
    neck: bareNeckChoice,
    lining: yes(false),
    opening: one(['auto', 'back', 'none'], 'auto'),
    ...dressedChoices,
    hem: straightHemChoice,
    shorterSleeve: shorterChoice,
  },
  auto: {
    ...dressedAuto,
    neck: 'bound',
    panels: 'two',
    armhole: 'set-in',
    opening: 'none',
  },
  suits: {
    wrist: (choices) => !isBand(choices) && choices.sleeve !== 'none' && choices.sleeve !== 'puffed',
    ...dressedSuits(closes),
    sleeve: (choices) => !isBand(choices),
    hem: ({ skirt }, value) => value !== 'ready' || isStraight(skirt),
    armhole: (choices, value) =>
      !isBand(choices) && choices.sleeve !== 'none' && (choices.sleeve !== 'puffed' || value !== 'in-one'),
    neck: (choices, value) => !isBand(choices) && (value !== 'in-one' || choices.sleeve === 'none'),
    lining: isBand,
    // Half a circle and a halter have their own way round the neck.
    straps: (choices, value) =>
      isBand(choices) &&
      ((!isRound(choices) && choices.bodice !== 'halter') || value === 'straight' || value === 'none'),
    // A band opens behind as it comes; half a circle needs no opening.
    opening: (choices, value) => (isBand(choices) ? value === 'auto' || (value === 'none' && !isRound(choices)) : true),
    shorterSleeve: (choices) => !isBand(choices) && mayEndSooner.sleeve(choices),
  },
  needs: [
    ...needs(yokeNeeds, hasShoulders),
    ...quietly([...yokeQuiet, ...belowNeeds, ...belowQuiet], hasShoulders),
    ...needs(sleeveNeeds, hasSleeve),
    ...quietly(sleeveQuiet, hasSleeve),
    ...needs(bareNeeds, isBare),
    ...quietly(bareQuiet, isBare),
    ...needs(['underarm-to-waist'], hasShoulders),
    ...needs(['chest-girth', 'bodice-height'], isBand),
    ...needs(['neck-girth', 'armhole-depth'], (choices: Hung) => isBand(choices) && isRoundNeck(choices)),
    ...quietly(
      ['neck-girth', 'armhole-depth', 'strap-length', 'underarm-to-waist', 'front-width', 'back-width'],
      isBand,
    ),
    ...needs(['strap-length'], (choices: Hung) => isBand(choices) && !isRoundNeck(choices)),
    ...needs(['waist-girth', 'waist-to-hem', 'head-girth']),
    ...needs(['hip-girth'], hipMatters),
    ...quietly(['hip-girth']),
  ],
});
