import { flare } from '../blocks/flare';
import { openGore, roundGore, wingGore } from '../blocks/round-gore';
import type { Hems, TunicNecks, Wings } from '../heads/choices';
import { tunicHead } from '../heads/tunic';
import { assemble } from '../rows/garment';
import { type Look, type RefTo, sumOf } from '../rows/names';
import { only, part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import type { SizesOf } from '../sizes/maker';
import { PAST_CENTRE_MM } from '../sizes/scale';
import { tunicSizes } from '../sizes/tunic';
import { bindingPart } from './parts/binding';
import { drawnTunicPart } from './parts/drawn-tunic';
import { fastenedPart } from './parts/fastened';
import { hemRole } from './parts/hem';
import { scrapNeck } from './parts/thick';
import { wingFeed, wingsPart } from './parts/wings';

type Choices = Hems & Wings & TunicNecks & { readonly neck: 'bound' | 'faced' };
type Gores =
  | EdgesOf<'tunic-front', typeof roundGore>
  | EdgesOf<'tunic-before' | 'tunic-behind', typeof wingGore>
  | EdgesOf<'tunic-back', typeof openGore>;
type Sized = SizesOf<typeof tunicSizes>;
type Gives = { readonly size: never; readonly edge: Gores };
type Names = { readonly choices: Choices; readonly size: Sized; readonly edge: Gores };

const isGored = ({ tunicNeck }: TunicNecks) => tunicNeck === 'gored';
const isDrawn = (choices: TunicNecks) => !isGored(choices);
const isBound = ({ neck }: Choices) => neck === 'bound';

/** From the middle of the front round to the middle of the back. */
const neckline: readonly RefTo<Gores>[] = [
  { piece: 'tunic-front', edge: 'neck' },
  { piece: 'tunic-before', edge: 'neck' },
  { piece: 'tunic-behind', edge: 'neck', back: true },
  { piece: 'tunic-back', edge: 'neck', back: true },
];
const hemline: readonly RefTo<Gores>[] = [
  { piece: 'tunic-front', edge: 'hem', back: true },
  { piece: 'tunic-before', edge: 'hem', back: true },
  { piece: 'tunic-behind', edge: 'hem' },
  { piece: 'tunic-back', edge: 'hem' },
];

const beside = (name: 'tunic-before' | 'tunic-behind') =>
  piece<Names>()(name, wingGore, {
    copies: 2,
    mirrored: true,
    onFold: false,
    sizes: wingFeed,
    roles: (choices) => ({
      neck: 'seam',
      seam: 'seam',
      above: 'seam',
      wing: 'opening',
      below: 'seam',
      hem: hemRole(choices),
      side: 'seam',
    }),
    ...(name === 'tunic-behind' ? { back: true as const } : {}),
  });

/** A neck that rests so little lower than its thread is no news, mm. */
const UNSAID_MM = 5;

const gored = part<{ choices: Choices; size: Sized; edge: never }, Gives>({
  passages: [
    {
      measure: 'body-girth',
      through: 'neck',
      gives: ({ neck }) => neck,
      opened: ({ tunicLong }) => 2 * tunicLong,
      whole: true,
    },
  ],
  pieces: [
    piece<Names>()('tunic-front', roundGore, {
      copies: 1,
      mirrored: false,
      onFold: true,
      roles: (choices) => ({ neck: 'seam', side: 'seam', hem: hemRole(choices), centre: 'fold' }),
    }),
    beside('tunic-before'),
    beside('tunic-behind'),
    piece<Names>()('tunic-back', openGore, {
      copies: 2,
      mirrored: true,
      onFold: false,
      sizes: { backPast: ({ wearer }) => PAST_CENTRE_MM[wearer.scale] },
      roles: (choices) => ({
        neck: 'seam',
        side: 'seam',
        hem: hemRole(choices),
        'hem-end': hemRole(choices),
        centre: 'closure',
        'neck-end': 'neckline',
      }),
      back: true,
    }),
  ],
  seams: [
    {
      name: 'tunic-front',
      sewn: 2,
      first: [{ piece: 'tunic-before', edge: 'side' }],
      second: [{ piece: 'tunic-front', edge: 'side', back: true }],
    },
    {
      name: 'tunic-back',
      sewn: 2,
      first: [{ piece: 'tunic-behind', edge: 'side' }],
      second: [{ piece: 'tunic-back', edge: 'side', back: true }],
    },
    {
      name: 'hem',
      sewn: 2,
      kind: 'folded',
      first: [...hemline, { piece: 'tunic-back', edge: 'hem-end' }],
      second: [],
    },
    {
      name: 'back-closure',
      sewn: 2,
      kind: 'folded',
      // A strip is bound over the upper end; a facing ends at the middle.
      first: (choices) => [
        { piece: 'tunic-back', edge: 'centre' },
        ...(isBound(choices) ? [] : [{ piece: 'tunic-back', edge: 'neck-end' } as const]),
      ],
      second: [],
    },
  ],
  notes: [
    scrapNeck,
    {
      code: 'neck-rests-lower',
      measures: ['neck-girth'],
      told: ({ sizes: { neckLower } }) => (neckLower > UNSAID_MM ? { by: neckLower } : null),
    },
    {
      code: 'tail-below-closure',
      measures: [],
      told: ({ wearer }) => (wearer.traits.tail ? {} : null),
    },
  ],
  fit: [
    { place: 'neck', measure: 'neck-girth', garment: (look) => 2 * sumOf(neckline, look) },
    { place: 'tummy', measure: 'body-girth', garment: ({ sizes }) => sizes.tummy },
    { place: 'hem', measure: 'hem-girth', garment: (look) => 2 * sumOf(hemline, look) },
  ],
  notions: [{ kind: 'closure', place: 'back-closure', length: ({ length }) => length('tunic-back.centre') }],
});

type FacingGives = { readonly size: never; readonly edge: EdgesOf<'tunic-facing', typeof flare> };
type FacingNames = {
  readonly choices: Choices;
  readonly size: Sized;
  readonly edge: Gores | FacingGives['edge'];
};

/** A facing is so deep, mm, and no deeper than this share of the way down. */
const FACING_MM = 22;
const MOST_FACING = 0.35;
const facingDeep = ({ sizes }: Pick<Look<FacingNames>, 'sizes'>) => Math.min(FACING_MM, MOST_FACING * sizes.tunicLong);

/** A sector that lies on the slope below the neck. */
const facing = part<{ choices: Choices; size: Sized; edge: Gores }, FacingGives>({
  pieces: [
    piece<FacingNames>()('tunic-facing', flare, {
      copies: 1,
      mirrored: false,
      onFold: true,
      sizes: {
        flareTop: (look) => sumOf(neckline, look),
        flareBottom: (look) => sumOf(neckline, look) + Math.PI * look.sizes.neckRise * facingDeep(look),
        flareHeight: facingDeep,
      },
      roles: () => ({ top: 'seam', side: 'opening', bottom: 'edge', centre: 'fold' }),
    }),
  ],
  seams: [
    {
      name: 'facing-neck',
      sewn: 2,
      first: neckline,
      second: [{ piece: 'tunic-facing', edge: 'top' }],
      cornered: true,
    },
    {
      name: 'facing-back-end',
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'tunic-facing', edge: 'side' }],
      second: [],
    },
  ],
});

export const tunic = assemble(tunicHead, [
  fastenedPart,
  part<{ choices: Choices; size: never; edge: never }, { size: Sized; edge: never }>({ sizes: [tunicSizes] }),
  only(isGored, gored),
  only(isGored, wingsPart('tunic-before', 'tunic-behind')),
  only(
    (choices: Choices) => isGored(choices) && isBound(choices),
    bindingPart('binding', {
      edge: (): RefTo<Gores>[] => [...neckline, { piece: 'tunic-back', edge: 'neck-end', back: true }],
      closed: () => false,
      ends: () => 'back',
      hollow: () => true,
    }),
  ),
  only((choices: Choices) => isGored(choices) && !isBound(choices), facing),
  only(isDrawn, drawnTunicPart),
  only(isDrawn, wingsPart('drawn-front', 'drawn-back')),
]);
