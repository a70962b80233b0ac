import { one } from './choice';
import {
  armholeChoice,
  casedHemChoice,
  chinChoice,
  type Ears,
  earsChoice,
  openingChoice,
  pocketChoice,
  type Sleeves,
} from './choices';
import { head, needs } from './head';
import { bareNeeds, bodiceNeeds, earNeeds, hoodNeeds, sleeveNeeds } from './needed';

/** A top with sleeves and a hood, for anything that sits or stands upright. */
export const hoodedTopHead = head({
  id: 'hooded-top',
  bodies: ['upright'],
  level: 'patience',
  opensAt: 'front',
  choices: {
    opening: openingChoice,
    sleeve: one(['long', 'short', 'none'], 'long'),
    armhole: armholeChoice,
    hood: one(['auto', 'two', 'three'], 'auto'),
    chin: chinChoice,
    ears: earsChoice,
    pocket: pocketChoice,
    hem: casedHemChoice,
  },
  auto: { opening: 'none', armhole: 'set-in', hood: 'two' },
  suits: { armhole: ({ sleeve }) => sleeve !== 'none' },
  needs: [
    ...needs(bodiceNeeds),
    ...needs(sleeveNeeds, ({ sleeve }: Pick<Sleeves, 'sleeve'>) => sleeve !== 'none'),
    ...needs(bareNeeds, ({ sleeve }: Pick<Sleeves, 'sleeve'>) => sleeve === 'none'),
    ...needs(hoodNeeds),
    { measure: 'paw-girth', when: ({ pocket }) => pocket },
    ...needs(earNeeds, ({ ears }: Ears) => ears === 'open'),
  ],
});
