import { one } from './choice';
import { chinChoice, type Ears, earsChoice, type Hoods, hemChoice } from './choices';
import { dressedAuto, dressedChoices, looseSuits } from './dressed';
import { head, needs, quietly } from './head';
import { earNeeds, hoodNeeds } from './needed';

const hasHood = ({ hood }: Pick<Hoods, 'hood'>) => hood !== 'none';

/** A cape that closes at the neck in front, with or without a hood; never with a cord. */
export const capeHead = head({
  id: 'cape',
  bodies: ['upright', 'four-legged', 'round'],
  level: 'first',
  looks: ['arms', 'ears', 'stuffing'],
  choices: {
    hood: one(['auto', 'none', 'two', 'three'], 'none'),
    chin: chinChoice,
    ears: earsChoice,
    ...dressedChoices,
    hem: hemChoice,
  },
  auto: { ...dressedAuto, hood: 'two' },
  suits: {
    ...looseSuits,
    chin: ({ hood }) => hood !== 'none',
    ears: ({ hood }) => hood !== 'none',
  },
  needs: [
    ...needs(['neck-girth', 'cape-length']),
    ...needs(['over-arms-girth'], (_, looks) => (looks?.kind ?? 'upright') === 'upright'),
    ...needs(['chest-girth'], (_, looks) => looks?.kind === 'four-legged'),
    ...needs(['body-girth'], (_, looks) => looks?.kind === 'round'),
    ...needs(
      hoodNeeds.filter((id) => id !== 'head-girth'),
      hasHood,
    ),
    // It tells how wide a strip is, and nothing has to pass over the head.
    ...needs(['head-girth'], ({ hood }: Pick<Hoods, 'hood'>) => hood === 'auto' || hood === 'three'),
    ...quietly(['head-girth'], hasHood),
    ...needs(earNeeds, ({ hood, ears }: Pick<Hoods, 'hood'> & Ears) => hasHood({ hood }) && ears === 'open'),
  ],
});
