import type { Mm } from '../../body';
import { flare } from '../blocks/flare';
import { earGore, gore } from '../blocks/gore';
import type { Brims, HatEars } from '../heads/choices';
import { hatHead } from '../heads/hat';
import { assemble } from '../rows/garment';
import type { Look, RefTo } from '../rows/names';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { GORES, hatSizes } from '../sizes/hat';
import type { SizesOf } from '../sizes/maker';

type Choices = Brims & HatEars;
type Gives = {
  readonly size: SizesOf<typeof hatSizes>;
  readonly edge:
    | EdgesOf<'gore' | 'gore-front' | 'gore-back', typeof gore>
    | EdgesOf<'gore-before' | 'gore-behind', typeof earGore>
    | EdgesOf<'cuff', typeof flare>;
};
type Names = Gives & { readonly choices: Choices };

const opens = ({ hatEars }: HatEars) => hatEars === 'open';
const covers = (choices: HatEars) => !opens(choices);
const cuffed = ({ brim }: Brims) => brim === 'cuff';
const brimRole = (choices: Brims) => (cuffed(choices) ? 'seam' : 'hem') as 'seam' | 'hem';

/** The brim all the way round, from the centre front where gores differ. */
const brims = (choices: HatEars): readonly RefTo<Gives['edge']>[] =>
  opens(choices)
    ? [
        { piece: 'gore-front', edge: 'brim', times: 2 },
        { piece: 'gore-before', edge: 'brim', times: 2 },
        { piece: 'gore-behind', edge: 'brim', times: 2 },
        { piece: 'gore-back', edge: 'brim', times: 2 },
      ]
    : [{ piece: 'gore', edge: 'brim', times: 2 * GORES }];

function halfRound({ choices, length }: Pick<Look<Names>, 'choices' | 'length'>): Mm {
  const round = opens(choices)
    ? 2 * length('gore-front.brim') +
      2 * length('gore-before.brim') +
      2 * length('gore-behind.brim') +
      2 * length('gore-back.brim')
    : 2 * GORES * length('gore.brim');
  return round / 2;
}

const middle = (name: 'gore' | 'gore-front' | 'gore-back') =>
  piece<Names>()(name, gore, {
    copies: name === 'gore' ? GORES : 1,
    mirrored: false,
    onFold: true,
    roles: (choices) => ({ side: 'seam', brim: brimRole(choices), centre: 'fold' }),
    when: name === 'gore' ? covers : opens,
  });

const beside = (name: 'gore-before' | 'gore-behind') =>
  piece<Names>()(name, earGore, {
    copies: 2,
    mirrored: true,
    onFold: false,
    roles: (choices) => ({ above: 'seam', ear: 'opening', below: 'seam', brim: brimRole(choices), side: 'seam' }),
    ...(name === 'gore-behind' ? { back: true as const } : {}),
    when: opens,
  });

/** The brim is round once the gores are. */
const aroundEars = () => ['ear-above', 'ear-below'];

/** A slit shorter than an ear asks for by this much is said, mm. */
const MISSING_MM = 1;
/** And a head so much flatter than any hat. */
const FLAT_MM = 3;

export const hat = assemble(hatHead, [
  part<{ choices: Choices; size: never; edge: never }, Gives>({
    sizes: [hatSizes],
    passages: [{ measure: 'head-girth', through: 'brim', gives: ({ hatRound }) => hatRound }],
    pieces: [
      middle('gore'),
      middle('gore-front'),
      middle('gore-back'),
      beside('gore-before'),
      beside('gore-behind'),
      piece<Names>()('cuff', flare, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: {
          flareTop: halfRound,
          flareBottom: halfRound,
          flareHeight: ({ sizes }) => 2 * sizes.cuffDeep,
        },
        roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
        when: cuffed,
      }),
    ],
    seams: [
      {
        name: 'gores',
        sewn: 1,
        first: [{ piece: 'gore', edge: 'side', times: GORES }],
        second: [{ piece: 'gore', edge: 'side', times: GORES }],
        cornered: true,
        when: covers,
      },
      {
        name: 'gore-front',
        sewn: 2,
        first: [{ piece: 'gore-before', edge: 'side' }],
        second: [{ piece: 'gore-front', edge: 'side', back: true }],
        cornered: true,
        when: opens,
      },
      {
        name: 'gore-back',
        sewn: 2,
        first: [{ piece: 'gore-behind', edge: 'side' }],
        second: [{ piece: 'gore-back', edge: 'side', back: true }],
        cornered: true,
        when: opens,
      },
      ...(['above', 'below'] as const).map((edge) => ({
        name: `ear-${edge}`,
        sewn: 2 as const,
        first: [{ piece: 'gore-before' as const, edge }],
        second: [{ piece: 'gore-behind' as const, edge }],
        cornered: true as const,
        when: opens,
      })),
      ...(['before', 'behind'] as const).map((side) => ({
        name: `ear-${side}`,
        sewn: 2 as const,
        kind: 'folded' as const,
        first: [{ piece: `gore-${side}` as const, edge: 'ear' as const }],
        second: [],
        when: opens,
      })),
      {
        name: 'hat-hem',
        sewn: 1,
        kind: 'folded',
        after: aroundEars,
        first: brims,
        second: [],
        when: (choices) => !cuffed(choices),
      },
      {
        name: 'hat-cuff-end',
        sewn: 1,
        first: [{ piece: 'cuff', edge: 'side' }],
        second: [{ piece: 'cuff', edge: 'side' }],
        when: cuffed,
      },
      {
        name: 'hat-cuff',
        sewn: 1,
        after: aroundEars,
        first: brims,
        second: [{ piece: 'cuff', edge: 'top', times: 2 }],
        cornered: true,
        when: cuffed,
      },
      {
        name: 'hat-cuff-inside',
        sewn: 2,
        kind: 'laid',
        first: [{ piece: 'cuff', edge: 'top' }],
        second: [{ piece: 'cuff', edge: 'bottom', back: true }],
        when: cuffed,
      },
    ],
    unsuited: [
      { choice: 'hatEars', from: 'auto', to: 'open', when: ({ ears }) => ears !== 'none' },
      { choice: 'hatEars', from: 'open', to: 'covered', code: 'no-ears', when: ({ ears }) => ears === 'none' },
    ],
    notes: [
      {
        code: 'head-flat',
        measures: ['over-head', 'head-girth'],
        told: ({ sizes: { flatHead } }) => (flatHead > FLAT_MM ? { by: 2 * flatHead } : null),
      },
      {
        code: 'ear-slit-short',
        measures: ['ear-base', 'ear-girth', 'ear-inset'],
        told: ({ sizes: { earMissing, earLong } }) =>
          earMissing > MISSING_MM ? { by: earMissing, slit: earLong } : null,
        when: opens,
      },
    ],
    fit: [{ place: 'brim', measure: 'head-girth', garment: ({ sizes }) => sizes.hatRound }],
  }),
]);
