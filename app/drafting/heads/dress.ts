import { one, yes } from './choice';
import {
  armholeChoice,
  type Bodices,
  hemChoice,
  isBand,
  isRound,
  neckChoice,
  panelsChoice,
  type Sleeves,
} from './choices';
import { head, needs } from './head';
import { bareNeeds, bodiceNeeds, skirtNeeds, sleeveNeeds } from './needed';

/** Any bodice with any skirt, with sleeves or straps. */
export const dressHead = head({
  id: 'dress',
  bodies: ['upright'],
  level: 'patience',
  opensAt: 'back',
  choices: {
    bodice: one(['shoulder', 'tank', 'band', 'dipped', 'half-circle', 'halter'], 'shoulder'),
    skirt: one(['gathered', 'knife', 'box', 'a-line', 'half-circle', 'circle', 'tiers'], 'gathered'),
    panels: panelsChoice,
    sleeve: one(['short', 'long', 'puffed', 'none'], 'short'),
    armhole: armholeChoice,
    straps: one(['straight', 'crossed', 'neck', 'none'], 'straight'),
    neck: neckChoice,
    lining: yes(false),
    opening: one(['auto', 'back', 'none'], 'auto'),
    hem: hemChoice,
  },
  auto: { panels: 'two', armhole: 'set-in', opening: 'none' },
  suits: {
    sleeve: (choices) => !isBand(choices),
    armhole: (choices) => !isBand(choices) && choices.sleeve !== 'none',
    neck: (choices) => !isBand(choices),
    lining: isBand,
    // Half a circle and a halter have their own way round the neck.
    straps: (choices, value) =>
      isBand(choices) &&
      ((!isRound(choices) && choices.bodice !== 'halter') || value === 'straight' || value === 'none'),
    // A band opens behind as it comes; half a circle needs no opening.
    opening: (choices, value) => (isBand(choices) ? value === 'auto' || (value === 'none' && !isRound(choices)) : true),
  },
  needs: [
    ...needs(bodiceNeeds, (choices: Bodices) => !isBand(choices)),
    ...needs(sleeveNeeds, (choices: Bodices & Sleeves) => !isBand(choices) && choices.sleeve !== 'none'),
    ...needs(bareNeeds, (choices: Bodices & Sleeves) => !isBand(choices) && choices.sleeve === 'none'),
    ...needs(['chest-girth', 'waist-girth', 'bodice-height', 'neck-girth', 'armhole-depth', 'strap-length'], isBand),
    ...needs(skirtNeeds),
    ...needs(['underarm-to-waist', 'head-girth']),
  ],
});
