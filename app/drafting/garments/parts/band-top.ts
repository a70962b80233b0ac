import type { Ref } from '../../draft-types';
import { only, type Part } from '../../rows/garment';
import type { Choices } from '../../sizes/wearer';
import { isHalter, isLined, isRound } from './band';
import { bindingPart } from './binding';
import { isOpen } from './bodice';
import { twin } from './twin';

/** The top of the bodice from centre front to the back's opening, or its fold. */
function topEdge(choices: Choices): Ref[] {
  return [
    { piece: 'front', edge: 'neckline' },
    ...(isHalter(choices) ? [{ piece: 'front', edge: 'armhole' }] : []),
    ...(isRound(choices) ? [] : [{ piece: 'back', edge: 'neckline', back: true as const }]),
    ...(isOpen('back')(choices) && !isRound(choices) ? [{ piece: 'back', edge: 'neck-end', back: true as const }] : []),
  ];
}

/** A full lining of the bodice, stitched down over the waist seam. */
const lining: Part = only(isLined, {
  seams: [
    twin('lining-top', topEdge),
    twin('lining-back', () => [{ piece: 'back', edge: 'centre' }], {
      when: (choices) => isOpen('back')(choices) && !isRound(choices),
    }),
    {
      name: 'lining-side',
      sewn: 2,
      first: [{ piece: 'back-lining', edge: 'side' }],
      second: [{ piece: 'front-lining', edge: 'side' }],
      when: (choices) => !isRound(choices),
    },
    twin(
      'lining-hem',
      (choices) => [
        { piece: 'front', edge: 'hem', back: true },
        ...(isRound(choices) ? [] : [{ piece: 'back', edge: 'hem' }]),
      ],
      { kind: 'laid' },
    ),
  ],
});

const bound: Part = only(
  (choices) => !isLined(choices),
  bindingPart('top-binding', {
    edge: topEdge,
    closed: (choices) => !isOpen('back')(choices) && !isRound(choices),
    ends: () => 'back',
  }),
);

/** The top of a strapped bodice, lined with all of it or bound. */
export const bandTopParts: readonly Part[] = [lining, bound];
