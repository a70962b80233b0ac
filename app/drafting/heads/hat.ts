import { one } from './choice';
import { type HatEars, hatEarsChoice } from './choices';
import { head, needs } from './head';

/** A hat of six gores, for any head: turned up at the edge, with a cuff or a brim, the ears under it or through its seams. */
export const hatHead = head({
  id: 'hat',
  bodies: ['upright', 'four-legged', 'round'],
  level: 'practice',
  looks: ['ears', 'stuffing', 'head'],
  choices: { brim: one(['cuff', 'turned', 'brim'], 'cuff'), hatEars: hatEarsChoice },
  auto: { hatEars: 'open' },
  needs: [
    ...needs(['head-girth', 'over-head']),
    ...needs(
      ['ear-base', 'ear-girth', 'ear-inset'],
      ({ hatEars }: HatEars, looks) =>
        hatEars === 'open' || hatEars === 'down' || (hatEars === 'auto' && (looks?.traits.ears ?? 'none') !== 'none'),
    ),
  ],
});
