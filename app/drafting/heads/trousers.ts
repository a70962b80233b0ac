import { one } from './choice';
import {
  gussetChoice,
  type LegCount,
  legHemChoice,
  legsChoice,
  mayEndSooner,
  shorterChoice,
  type Tails,
  type Trousers,
  tailChoice,
  waistChoice,
} from './choices';
import { dressedAuto, dressedChoices, dressedSuits, looseSuits } from './dressed';
import { head, type Looks, needs, quietly } from './head';

/** What legs and a seat are measured by. */
export const trouserNeeds = [
  ...needs(['waist-girth', 'hip-girth', 'body-rise', 'foot-girth']),
  ...needs(['waist-to-hem'], isTube),
  ...needs(['thigh-girth', 'crotch-length'], (choices: LegCount, looks) => !isTube(choices, looks)),
  // A seat that is sat on shares it unevenly, each toy in its way.
  ...needs(['front-crotch'], (choices: LegCount, looks) => !isTube(choices, looks) && looks?.traits.posture === 'sits'),
  ...quietly(['front-crotch'], (choices: LegCount, looks) => !isTube(choices, looks)),
  ...needs(
    ['inside-leg-length'],
    (choices: LegCount & Trousers, looks) => !isTube(choices, looks) && choices.trousers !== 'elastic',
  ),
  ...needs(['waist-to-tail', 'tail-base-girth', 'tail-girth'], leavesTail),
] as const;

const closes = ({ tail }: Tails) => tail === 'waist';

/** Trousers with an elastic waist: two legs, or a tube where the toy's are sewn together. */
export const trousersHead = head({
  id: 'trousers',
  bodies: ['upright'],
  level: 'practice',
  looks: ['posture', 'legs', 'tail', 'stuffing'],
  choices: {
    trousers: one(['long', 'short', 'elastic', 'pyjamas'], 'long'),
    legs: legsChoice,
    waist: waistChoice,
    gusset: gussetChoice,
    tail: tailChoice,
    hem: legHemChoice,
    shorterLeg: shorterChoice,
    ...dressedChoices,
  },
  // Short elastic legs end in their elastic.
  suits: {
    ...dressedSuits(closes),
    // What is drawn on closes nowhere.
    dresser: (choices) => closes(choices) && looseSuits.dresser(choices),
    hem: ({ trousers }) => trousers !== 'elastic',
    shorterLeg: (choices) => choices.trousers !== 'elastic' && mayEndSooner.leg(choices),
  },
  auto: { ...dressedAuto, legs: 'two', waist: 'turned', gusset: 'none', tail: 'open' },
  needs: trouserNeeds,
});

export function isTube({ legs }: LegCount, looks?: Looks): boolean {
  return legs === 'tube' || (legs === 'auto' && looks?.traits.legs === 'sewn');
}

function leavesTail({ tail }: Tails, looks?: Looks): boolean {
  return tail === 'open' || tail === 'waist' || (tail === 'auto' && looks?.traits.tail === true);
}
