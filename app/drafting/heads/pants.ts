import { one } from './choice';
import { type LegCount, legsChoice, type Pants, type Tails, tailChoice, waistChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits, looseSuits } from './dressed';
import { head, type Looks, needs, quietly } from './head';

const closes = ({ pants, tail }: Pants & Tails) => pants === 'nappy' || tail === 'waist';
const nappySuits = { ...looseSuits, ...dressedSuits(closes) };

/** Pants in one piece, an elastic at the waist and round each leg; or a nappy that closes at its sides. */
export const pantsHead = head({
  id: 'pants',
  bodies: ['upright'],
  level: 'first',
  looks: ['posture', 'legs', 'tail', 'stuffing'],
  choices: {
    pants: one(['pants', 'nappy'], 'pants'),
    legs: legsChoice,
    waist: waistChoice,
    tail: tailChoice,
    ...dressedChoices,
  },
  auto: { ...dressedAuto, legs: 'two', waist: 'turned', tail: 'open' },
  suits: {
    ...nappySuits,
    // What is drawn on closes nowhere.
    dresser: (choices) => closes(choices) && nappySuits.dresser(choices),
    // What closes at its sides goes between the legs.
    legs: ({ pants }) => pants === 'pants',
    // A nappy's waist is hemmed.
    waist: ({ pants }) => pants === 'pants',
  },
  needs: [
    ...needs(['waist-girth', 'hip-girth', 'body-rise', 'thigh-girth']),
    ...needs(['crotch-length'], (choices: LegCount, looks) => !isTube(choices, looks)),
    ...quietly(['front-crotch'], (choices: LegCount, looks) => !isTube(choices, looks)),
    ...needs(['foot-girth'], ({ pants }: Pants) => pants === 'pants'),
    ...needs(['waist-to-tail', 'tail-base-girth', 'tail-girth'], leavesTail),
  ],
});

function isTube({ legs }: LegCount, looks?: Looks): boolean {
  return legs === 'tube' || (legs === 'auto' && looks?.traits.legs === 'sewn');
}

function leavesTail({ tail }: Tails, looks?: Looks): boolean {
  return tail === 'open' || tail === 'waist' || (tail === 'auto' && looks?.traits.tail === true);
}
