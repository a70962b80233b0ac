import { bonnetEarsChoice, type HatEars } from './choices';
import { dressedAuto, dressedChoices, looseSuits } from './dressed';
import { head, needs } from './head';

/** A bonnet for any head: gathered to a round back, open round the face, closed under the chin. */
export const bonnetHead = head({
  id: 'bonnet',
  bodies: ['upright', 'four-legged', 'round'],
  level: 'practice',
  looks: ['ears'],
  choices: { hatEars: bonnetEarsChoice, ...dressedChoices },
  auto: { ...dressedAuto, hatEars: 'covered' },
  suits: looseSuits,
  needs: [
    ...needs(['head-girth', 'over-head']),
    ...needs(
      ['ear-base', 'ear-girth', 'ear-inset'],
      ({ hatEars }: HatEars, looks) =>
        hatEars === 'open' || (hatEars === 'auto' && (looks?.traits.ears ?? 'none') !== 'none'),
    ),
  ],
});
