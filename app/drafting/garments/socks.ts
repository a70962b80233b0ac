import { sock as sockBlock } from '../blocks/sock';
import { sockSide } from '../blocks/sock-side';
import type { Heels, Hems, Socks } from '../heads/choices';
import { socksHead } from '../heads/socks';
import { assemble } from '../rows/garment';
import type { RefTo } from '../rows/names';
import { only, part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { isKnit } from '../sizes/cloths';
import { LEAST_EASE_MM } from '../sizes/ease';
import { elasticFor } from '../sizes/fastening';
import type { SizesOf } from '../sizes/maker';
import { WRIST_RIB_MM } from '../sizes/scale';
import { STANDS_OUT, sockSizes } from '../sizes/sock';
import { hemRole, isReady, readyNote } from './parts/hem';
import { ribPart } from './parts/rib';

type Choices = Socks & Hems & Heels;
type Gives = {
  readonly size: SizesOf<typeof sockSizes>;
  readonly edge: EdgesOf<'sock', typeof sockBlock> | EdgesOf<'sock', typeof sockSide>;
};
type Names = Gives & { readonly choices: Choices };

const isShaped = ({ heel }: Heels): boolean => heel === 'shaped';
const isTube = (choices: Heels): boolean => !isShaped(choices);
const isRibbed = ({ hem }: Hems): boolean => hem === 'rib';

export const socks = assemble(socksHead, [
  part<{ choices: Choices; size: never; edge: never }, Gives>({
    sizes: [sockSizes],
    passages: [
      {
        measure: 'foot-girth',
        through: 'sock-top',
        gives: ({ sockTop, sockLeg }) => 2 * Math.min(sockTop, sockLeg),
        seamed: true,
      },
    ],
    pieces: [
      piece<Names>()('sock', sockBlock, {
        copies: 2,
        mirrored: false,
        onFold: true,
        narrowHem: true,
        roles: (choices) => ({ top: hemRole(choices), round: 'seam', centre: 'fold' }),
        when: isTube,
      }),
      piece<Names>()('sock', sockSide, {
        copies: 4,
        mirrored: true,
        onFold: false,
        narrowHem: true,
        roles: (choices) => ({ top: hemRole(choices), front: 'seam', round: 'seam' }),
        when: isShaped,
      }),
    ],
    seams: [
      {
        name: 'sock-top',
        sewn: 2,
        kind: 'folded',
        // In one, all round but for the seam behind: an elastic is drawn through both sides.
        after: (choices) => (isShaped(choices) ? ['sock-front'] : []),
        first: [{ piece: 'sock', edge: 'top', times: 2 }],
        second: [],
        when: (choices) => !isRibbed(choices) && !isReady(choices),
      },
      {
        name: 'sock-front',
        sewn: 2,
        first: [{ piece: 'sock', edge: 'front' }],
        second: [{ piece: 'sock', edge: 'front' }],
        when: isShaped,
      },
      {
        name: 'sock-round',
        sewn: 2,
        // So narrow a tube is hemmed, or ribbed, while it lies flat.
        after: (choices) => [
          ...(isShaped(choices) ? ['sock-front'] : []),
          ...(isRibbed(choices) ? ['sock-rib-edge'] : isReady(choices) ? [] : ['sock-top']),
        ],
        first: [{ piece: 'sock', edge: 'round' }],
        second: [{ piece: 'sock', edge: 'round' }],
      },
    ],
    unsuited: [
      { choice: 'sock', from: 'high', to: 'low', code: 'sock-to-the-seam', when: ({ legs }) => legs === 'sewn' },
    ],
    instead: [
      {
        choice: 'heel',
        from: 'shaped',
        to: 'tube',
        code: 'sock-tube',
        check: ['foot-length', 'foot-girth'],
        when: ({ sizes }) => sizes.sockStands < STANDS_OUT,
      },
    ],
    notes: [
      { code: 'feet-sewn', measures: [], told: ({ wearer: { traits } }) => (traits.legs === 'sewn' ? {} : null) },
      { code: 'sock-not-knit', measures: [], told: ({ wearer: { cloth } }) => (isKnit(cloth) ? null : {}) },
      { ...readyNote, when: isReady },
    ],
    fit: [
      {
        place: 'sock-foot',
        measure: 'foot-girth',
        garment: ({ sizes }) => 2 * sizes.sockFoot,
        why: ({ sizes, wearer }) =>
          2 * sizes.sockFoot < wearer.of('foot-girth') + LEAST_EASE_MM ? 'knit-stretches' : null,
      },
    ],
    notions: [
      {
        kind: 'elastic',
        place: 'sock-top',
        count: 2,
        length: ({ sizes }) => elasticFor(sizes.sockAnkle),
        when: ({ hem }) => hem === 'casing',
      },
    ],
  }),
  only(
    isRibbed,
    ribPart<Choices, RefTo<'sock.top'>, 'sock-rib'>('sock-rib', {
      edge: () => [{ piece: 'sock', edge: 'top', times: 2 }],
      closed: () => true,
      // Its own ends run on from the seam behind: a tube's top begins at its fold, a side's there.
      ends: (choices) => (isShaped(choices) ? 'back' : 'front'),
      high: WRIST_RIB_MM,
      rings: 2,
      on: 'sock-round',
    }),
  ),
]);
