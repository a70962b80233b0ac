import { one } from './choice';
import { chinChoice, type Ears, earsChoice, type Hoods, hemChoice } from './choices';
import { head, needs } from './head';
import { earNeeds, hoodNeeds } from './needed';

/** A cape that closes at the neck in front, with or without a hood; never with a cord. */
export const capeHead = head({
  id: 'cape',
  bodies: ['upright'],
  level: 'first',
  choices: { hood: one(['auto', 'none', 'two', 'three'], 'none'), chin: chinChoice, ears: earsChoice, hem: hemChoice },
  auto: { hood: 'two' },
  suits: { chin: ({ hood }) => hood !== 'none', ears: ({ hood }) => hood !== 'none' },
  needs: [
    ...needs(['neck-girth', 'over-arms-girth', 'cape-length']),
    ...needs(hoodNeeds, ({ hood }: Pick<Hoods, 'hood'>) => hood !== 'none'),
    ...needs(earNeeds, ({ hood, ears }: Pick<Hoods, 'hood'> & Ears) => hood !== 'none' && ears === 'open'),
  ],
});
