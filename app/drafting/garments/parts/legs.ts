import type { MeasureId, Mm } from '../../../body';
import { gusset } from '../../blocks/gusset';
import { type bibPlace, leg } from '../../blocks/leg';
import { legTube } from '../../blocks/leg-tube';
import type { Look } from '../../rows/names';
import { part } from '../../rows/part';
import { piece } from '../../rows/piece-row';
import { LEAST_EASE_MM } from '../../sizes/ease';
import { elasticFor } from '../../sizes/fastening';
import { TWO_ROUND } from '../../sizes/leg';
import type { Sizes } from '../../sizes/maker';
import { PAST_CENTRE_MM } from '../../sizes/scale';
import { trouserSizes } from '../../sizes/trousers';
import { HEMMED_FLAT_UNDER_MM, hemRole, isReady, readyNote } from './hem';
import {
  hasGusset,
  hasLegs,
  isDrawnIn,
  isHung,
  isTube,
  type LegChoices,
  type LegGives,
  type LegNames,
  lapsAtTail,
  leavesTail,
  STEEPEST_TURNED,
} from './leg-names';
import { legNotes } from './leg-notes';
import { tailSeams, tailToWaist, tailUnsuited } from './leg-tail';

type Names = LegNames;

/** What a bib's part makes, in a garment that has one. */
const ofBib =
  (name: (typeof bibPlace)[number]) =>
  ({ sizes }: { readonly sizes: object }): Mm | null =>
    name in sizes ? (sizes as Sizes<typeof name>)[name] : null;
const bibbed = {
  bibHalf: ofBib('bibHalf'),
  bibBelow: ofBib('bibBelow'),
  strapWidth: ofBib('strapWidth'),
  strapFrom: ofBib('strapFrom'),
};

/** What a romper makes. */
const opened = (sizes: object): Mm => (sizes as Sizes<'legOpen'>).legOpen;

const tailed = {
  legOpen: ({ sizes, choices }: Look<Names>) => (isHung(choices) ? opened(sizes) : null),
  ...bibbed,
  tailAbove: ({ sizes, choices }: Look<Names>) => (leavesTail(choices) ? sizes.tailAbove : null),
  tailLong: ({ sizes, choices }: Look<Names>) => (leavesTail(choices) ? sizes.tailLong : null),
  tailLap: ({ wearer, choices }: Look<Names>) => (lapsAtTail(choices) ? PAST_CENTRE_MM[wearer.scale] : null),
} as const;

/** Laid on a finished edge, a leg is as wide there as above: straight, whatever was learnt from trying on. */
const straightHem = ({ sizes, choices }: Look<Names>): Mm =>
  isReady(choices) ? sizes.legHalfHip + sizes.legFork : sizes.legHem;

const roles = (choices: LegChoices) =>
  ({
    waist: choices.waist === 'faced' || isHung(choices) ? 'seam' : 'casing',
    opening: 'opening',
    'tail-closure': 'closure',
    'tail-end': 'opening',
    tail: 'opening',
    hem: hemRole(choices),
  }) as const;

const self = (edge: 'front-crotch' | 'back-crotch' | 'back-above') =>
  ({ sewn: 1, first: [{ piece: 'leg', edge }], second: [{ piece: 'leg', edge }] }) as const;

/** Both legs, sewn to each other along the crotch, with a diamond between them where one is needed. */
export const legsPart = part<{ choices: LegChoices; size: never; edge: never }, LegGives>({
  sizes: [trouserSizes],
  passages: [
    { measure: 'hip-girth', through: 'waist', gives: ({ hip }) => hip, when: (choices) => !isHung(choices) },
    { measure: 'foot-girth', through: 'leg-top', gives: ({ legTop }) => legTop, when: hasLegs },
    { measure: 'foot-girth', through: 'leg-hem', gives: ({ legHem }) => legHem, when: hasLegs },
  ],
  pieces: [
    piece<Names>()('leg', leg, {
      copies: 2,
      mirrored: true,
      onFold: false,
      sizes: {
        legGusset: ({ sizes, choices }) => (hasGusset(choices) ? sizes.gussetSide : null),
        legHem: straightHem,
        ...tailed,
      },
      roles,
      when: hasLegs,
    }),
    piece<Names>()('leg', legTube, {
      copies: 2,
      mirrored: true,
      onFold: false,
      sizes: tailed,
      roles,
      when: isTube,
    }),
    piece<Names>()('gusset', gusset, {
      copies: 1,
      mirrored: false,
      onFold: true,
      roles: () => ({ front: 'seam', back: 'seam', centre: 'fold' }),
      when: hasGusset,
    }),
  ],
  seams: [
    {
      name: 'inseam',
      sewn: 2,
      // So narrow a leg is hemmed while it lies flat.
      after: (_, { legHem }) => (legHem < HEMMED_FLAT_UNDER_MM ? ['leg-hem'] : []),
      first: [{ piece: 'leg', edge: 'back-inseam' }],
      second: [{ piece: 'leg', edge: 'front-inseam', back: true }],
      when: hasLegs,
    },
    { name: 'crotch-front', ...self('front-crotch') },
    { name: 'crotch-above', ...self('back-above'), when: ({ tail }) => tail === 'open' },
    { name: 'crotch-back', ...self('back-crotch') },
    ...(['front', 'back'] as const).map((side) => ({
      name: `gusset-${side}`,
      sewn: 2 as const,
      first: [
        {
          piece: 'leg' as const,
          edge: `${side}-gusset` as const,
          ...(side === 'front' ? { back: true as const } : {}),
        },
      ],
      second: [{ piece: 'gusset' as const, edge: side, ...(side === 'back' ? { back: true as const } : {}) }],
      cornered: true as const,
      when: hasGusset,
    })),
    ...tailSeams,
    // Two legs have a hem each, a tube has one.
    ...([['leg-hem', hasLegs] as const, ['hem', isTube] as const] as const).map(([name, has]) => ({
      name,
      sewn: 2 as const,
      kind: 'folded' as const,
      first: [{ piece: 'leg' as const, edge: 'hem' as const }],
      second: [],
      when: (choices: LegChoices) => has(choices) && !isReady(choices),
    })),
  ],
  unsuited: [
    { choice: 'legs', from: 'auto', to: 'tube', code: 'legs-in-a-tube', when: ({ legs }) => legs === 'sewn' },
    { choice: 'legs', from: 'two', to: 'tube', code: 'legs-in-a-tube', when: ({ legs }) => legs === 'sewn' },
    ...tailUnsuited,
    ...(['turned', 'ready', 'raw'] as const).map((from) => ({
      choice: 'hem' as const,
      from,
      to: 'casing' as const,
      when: (_: unknown, { trousers }: LegChoices) => trousers === 'elastic',
    })),
  ],
  instead: [
    tailToWaist,
    {
      choice: 'gusset',
      from: 'none',
      to: 'diamond',
      code: 'gusset-added',
      check: ['crotch-length', 'body-rise'],
      onlyAuto: true,
      when: ({ sizes }) => sizes.gussetWanted > 0,
    },
    {
      choice: 'gusset',
      from: 'diamond',
      to: 'none',
      code: 'gusset-left-out',
      check: ['crotch-length', 'body-rise'],
      when: ({ sizes }) => !(sizes.gussetWanted > 0),
    },
    {
      choice: 'waist',
      from: 'turned',
      to: 'faced',
      code: 'waist-faced',
      check: ['body-rise', 'crotch-length'],
      onlyAuto: true,
      when: ({ sizes: { legRaised, legHalfHip } }) => legRaised > STEEPEST_TURNED * legHalfHip,
    },
  ],
  notes: [...legNotes, { ...readyNote, when: isReady }],
  fit: [
    { place: 'hip', measure: 'hip-girth', garment: ({ sizes }) => sizes.hip },
    { place: 'waist', measure: 'waist-girth', garment: ({ sizes }) => sizes.hip, when: (choices) => !isHung(choices) },
    { place: 'thigh', measure: 'thigh-girth', garment: ({ sizes }) => sizes.legTop, when: hasLegs },
    {
      place: 'leg-hem',
      measure: 'foot-girth',
      garment: (look) => look.length('leg.hem'),
      why: (look) => (look.length('leg.hem') < look.wearer.of('foot-girth') + LEAST_EASE_MM ? whyTight(look) : null),
      when: hasLegs,
    },
    { place: 'crotch', measure: 'crotch-length', garment: ({ sizes }) => sizes.crotchSeam, when: hasLegs },
  ],
  notions: [
    {
      kind: 'closure',
      place: 'tail-closure',
      length: ({ length }) => length('leg.tail-closure'),
      when: lapsAtTail,
    },
    {
      kind: 'elastic',
      place: 'leg-hem',
      count: 2,
      length: ({ wearer, choices }) => elasticFor(wearer.of(drawnRound(choices))),
      when: (choices) => isDrawnIn(choices) && hasLegs(choices),
    },
    {
      kind: 'elastic',
      place: 'hem',
      length: ({ wearer }) => elasticFor(wearer.of('foot-girth') * TWO_ROUND),
      when: (choices) => isDrawnIn(choices) && isTube(choices),
    },
  ],
});

const isLong = ({ trousers }: Pick<LegChoices, 'trousers'>): boolean => trousers === 'long' || trousers === 'pyjamas';

/** What an elastic in the hem lies round. */
const drawnRound = (choices: LegChoices): MeasureId => (isLong(choices) ? 'foot-girth' : 'thigh-girth');

/** A short leg ends above the foot; through a long one a soft foot is pushed. */
const whyTight = ({ choices }: Pick<Look<Names>, 'choices'>): string =>
  isLong(choices) ? 'soft-foot' : 'above-the-foot';
