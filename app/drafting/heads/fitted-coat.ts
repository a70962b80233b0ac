import { one } from './choice';
import { chinChoice, type Ears, earsChoice, type Hoods, hemChoice } from './choices';
import { dressedAuto, dressedChoices, dressedSuits } from './dressed';
import { head, needs, quietly } from './head';
import { earNeeds, hoodNeeds } from './needed';

type Necked = { readonly coatNeck: string };
const isHooded = ({ coatNeck }: Necked) => coatNeck === 'hood';

/** A coat round a four-legged toy: back and belly, with holes for the front legs; it opens along belly or back. */
export const fittedCoatHead = head({
  id: 'fitted-coat',
  bodies: ['four-legged'],
  level: 'patience',
  looks: ['ears', 'stuffing'],
  choices: {
    closes: one(['belly', 'back'], 'belly'),
    ...dressedChoices,
    coatNeck: one(['bound', 'collar', 'hood'], 'bound'),
    hood: one(['auto', 'two', 'three'], 'auto'),
    chin: chinChoice,
    ears: earsChoice,
    coatLegs: one(['bound', 'turned', 'sleeves'], 'bound'),
    hem: hemChoice,
  },
  auto: { ...dressedAuto, hood: 'two' },
  suits: { ...dressedSuits(() => true), hood: isHooded, chin: isHooded, ears: isHooded },
  needs: [
    ...needs([
      'neck-girth',
      'chest-girth',
      'belly-girth',
      'neck-to-leg',
      'nape-to-leg',
      'leg-spread',
      'front-leg-girth',
      'foot-girth',
      'back-length',
      'under-length',
    ]),
    ...needs<{ readonly coatLegs: string }>(['front-leg-length'], ({ coatLegs }) => coatLegs === 'sleeves'),
    ...needs(
      hoodNeeds.filter((id) => id !== 'head-girth'),
      isHooded,
    ),
    // It tells how wide a strip is, and nothing has to pass over the head.
    ...needs(['head-girth'], (choices: Necked & Pick<Hoods, 'hood'>) => isHooded(choices) && choices.hood !== 'two'),
    ...quietly(['head-girth'], isHooded),
    ...needs(earNeeds, (choices: Necked & Ears) => isHooded(choices) && choices.ears === 'open'),
  ],
});
