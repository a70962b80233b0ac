import { type Bodices, isOpen, isRound, type Opens } from '../../heads/choices';
import type { RefTo } from '../../rows/names';
import { only, part } from '../../rows/part';
import { type BandChoices, type BandGives, isHalter, isLined } from './band';
import { bindingPart } from './binding';
import type { Side } from './top';
import { twin } from './twin';

type Choices = Bodices & Opens;
/** The shell's edges. */
type Edge = Extract<BandGives['edge'], `${Side}.${string}`>;
type Ref = RefTo<Edge>;
type Takes = { readonly choices: BandChoices; readonly size: never; readonly edge: BandGives['edge'] };

/** The top of the bodice from centre front to the back's opening, or its fold. */
function topEdge(choices: Choices): Ref[] {
  return [
    { piece: 'front', edge: 'neckline' },
    ...(isHalter(choices) ? [{ piece: 'front', edge: 'armhole' } as const] : []),
    ...(isRound(choices) ? [] : [{ piece: 'back', edge: 'neckline', back: true } as const]),
    ...(isOpen('back')(choices) && !isRound(choices) ? [{ piece: 'back', edge: 'neck-end', back: true } as const] : []),
  ];
}

/** A full lining of the bodice, stitched down over the waist seam. */
const lining = only(
  isLined,
  part<Takes>({
    seams: [
      twin<Choices, Edge>('lining-top', topEdge),
      twin<Choices, Edge>('lining-back', () => [{ piece: 'back', edge: 'centre' }], {
        when: (choices) => isOpen('back')(choices) && !isRound(choices),
      }),
      {
        name: 'lining-side',
        sewn: 2,
        first: [{ piece: 'back-lining', edge: 'side' }],
        second: [{ piece: 'front-lining', edge: 'side' }],
        when: (choices) => !isRound(choices),
      },
      twin<Choices, Edge>(
        'lining-hem',
        (choices) => [
          { piece: 'front', edge: 'hem', back: true },
          ...(isRound(choices) ? [] : [{ piece: 'back', edge: 'hem' } as const]),
          ...(isOpen('back')(choices) && !isRound(choices) ? [{ piece: 'back', edge: 'hem-end' } as const] : []),
        ],
        { kind: 'laid' },
      ),
    ],
  }),
);

const bound = only(
  (choices: BandChoices) => !isLined(choices),
  bindingPart('top-binding', {
    edge: topEdge,
    closed: (choices: Choices) => !isOpen('back')(choices) && !isRound(choices),
    ends: () => 'back',
    // A halter's armholes are; what runs straight or dips a little is not.
    hollow: isHalter,
  }),
);

/** The top of a strapped bodice, lined with all of it or bound. */
export const bandTopParts = [lining, bound] as const;
