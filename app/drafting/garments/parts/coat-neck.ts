import type { Mm } from '../../../body';
import { flare } from '../../blocks/flare';
import type { Hems, Hoods } from '../../heads/choices';
import type { RefTo } from '../../rows/names';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import type { Sizes } from '../../sizes/maker';
import { type BarrelGives, type Coats, isHooded } from './barrel';
import { bindingPart } from './binding';
import { earsPart } from './ears';
import { hoodPart } from './hood';
import { fromFront } from './strip';

/** A standing collar, folded double, is this share of the neck high (common practice, no source), and never narrower than can be sewn. */
const COLLAR_SHARE = 0.06;
const NARROWEST_MM = 8;

type Neck = 'coat-back.neckline' | 'coat-back.neck-end' | 'coat-belly.neckline' | 'coat-belly.neck-end';
type Choices = Coats & Hems;
type Takes = { readonly choices: Choices; readonly size: BarrelGives['size']; readonly edge: BarrelGives['edge'] };
type Gives = { readonly size: never; readonly edge: EdgesOf<'collar-band', typeof flare> };

/** Half the neckline from the throat to the nape, as a collar meets it. */
const neckline: readonly RefTo<Neck>[] = [
  { piece: 'coat-belly', edge: 'neckline' },
  { piece: 'coat-back', edge: 'neckline', back: true },
];
/** The same to the very edge of the opening: where a binding ends. */
const wholeNeckline = ({ closes }: Choices): RefTo<Neck>[] => [
  ...(closes === 'belly' ? [{ piece: 'coat-belly', edge: 'neck-end' } as const] : []),
  ...neckline,
  ...(closes === 'back' ? [{ piece: 'coat-back', edge: 'neck-end', back: true } as const] : []),
];
const ends = ({ closes }: Choices) => (closes === 'belly' ? 'front' : 'back');

const collar = part<Takes, Gives>({
  pieces: [
    piece<Takes>()('collar-band', flare, {
      copies: 1,
      mirrored: false,
      onFold: true,
      sizes: {
        flareTop: ({ length }) => length('coat-belly.neckline') + length('coat-back.neckline'),
        flareBottom: ({ length }) => length('coat-belly.neckline') + length('coat-back.neckline'),
        flareHeight: ({ sizes }) => 2 * Math.max(sizes.neck * COLLAR_SHARE, NARROWEST_MM),
      },
      roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
    }),
  ],
  seams: [
    { name: 'collar-end', sewn: 2, kind: 'folded', first: [{ piece: 'collar-band', edge: 'side' }], second: [] },
    {
      name: 'collar-neck',
      sewn: 2,
      first: neckline,
      second: (choices) => [fromFront('collar-band', 'top', ends(choices))],
      cornered: true,
    },
    {
      name: 'collar-inside',
      sewn: 2,
      kind: 'laid',
      first: [{ piece: 'collar-band', edge: 'top' }],
      second: [{ piece: 'collar-band', edge: 'bottom' }],
    },
  ],
});

const chin = (): RefTo<'coat-belly.chin'>[] => [{ piece: 'coat-belly', edge: 'chin' }];
const before = (): RefTo<'coat-belly.neckline'>[] => [{ piece: 'coat-belly', edge: 'neckline' }];
const behind = (): RefTo<'coat-back.neckline'>[] => [{ piece: 'coat-back', edge: 'neckline', back: true }];
const opensBehind = ({ closes }: Coats) => closes === 'back';

/** Of half the neck at least so much lies in front, beside what is left free, for a hood to be sewn to (common practice, no source). */
const LEAST_IN_FRONT = 0.1;
const tooNarrow = ({ sizes: { bellyNeckX, neck } }: { readonly sizes: Sizes<'bellyNeckX' | 'neck'> }, free: Mm) =>
  bellyNeckX - free < (LEAST_IN_FRONT * neck) / 2;

/** On a belly that is narrow at the neck a hood's edges meet under the chin; on one still narrower there is a collar. */
const narrowInFront = part<{ choices: Choices & Hoods; size: Takes['size'] | 'chinGap'; edge: never }>({
  instead: [
    {
      choice: 'chin',
      from: 'open',
      to: 'meet',
      code: 'chin-meets-instead',
      because: 'narrow-in-front',
      check: ['leg-spread', 'neck-girth'],
      when: (look) => tooNarrow(look, look.sizes.chinGap),
    },
    {
      choice: 'coatNeck',
      from: 'hood',
      to: 'collar',
      code: 'collar-instead',
      because: 'narrow-in-front',
      check: ['leg-spread', 'neck-girth'],
      when: (look) => tooNarrow(look, 0),
    },
  ],
});

/** The neck of a coat that opens from it to its hem: bound, with a standing collar, or with a hood. */
export const coatNeckParts = [
  only(
    ({ coatNeck }: Choices) => coatNeck === 'bound',
    bindingPart('binding', { edge: wholeNeckline, closed: () => false, ends, hollow: () => true }),
  ),
  only(({ coatNeck }: Choices) => coatNeck === 'collar', collar),
  only(
    isHooded,
    hoodPart<Coats, RefTo<'coat-belly.chin' | 'coat-belly.neckline' | 'coat-back.neckline'>>({
      front: before,
      back: behind,
      chin,
      opensBehind,
    }),
  ),
  only(isHooded, narrowInFront),
  only(isHooded, earsPart),
] as const;
