import type { Mm } from '../../../body';
import { hoodSide, hoodStrip } from '../../blocks/hood';
import type { Ref } from '../../draft-types';
import type { Ears, Hoods } from '../../heads/choices';
import { type EdgeIn, type Look, type RefTo, sumOf } from '../../rows/names';
import { type Part, part } from '../../rows/part';
import { piece } from '../../rows/piece-row';
import type { MatchRow, Turn } from '../../rows/rows';
import { type earSizes, hoodSizes } from '../../sizes/hood';
import type { SizesOf } from '../../sizes/maker';
import { crown, type HoodEdge, inSeam, inSlit, stripSide } from './ears';

type HoodChoices = Hoods & Ears;
const threeParts = ({ hood }: Hoods) => hood === 'three';
const twoParts = ({ hood }: Hoods) => hood === 'two';

/** A crown may be this much longer than the head's arc before a third part is better (common practice, no source). */
const CROWN_OVER = 1.05;
/** A neck edge shorter than this share of the hood's depth is made longer and pleated in, up to a ratio. */
const LEAST_NECK_SHARE = 0.75;
const MOST_PLEATED = 1.5;
/** The nape strip takes at most this share of half the neckline. */
const WIDEST_NAPE = 0.25;
const ROUND = { flattest: 0.5, full: 0.75, fullest: 0.85 } as const;
/** The nape rises at most this share of the neck edge above the chin. */
const MOST_NAPE_RISE = 0.22;

const flatter: Turn<Names> = { size: 'hoodRound', limit: () => ROUND.flattest };

/** A garment that opens behind opens into the hood, so it has no strip, and the crown is left open above the nape. */
const NAPE_OPEN = 0.4;

/** What a hood is told of its garment: the half neckline it is sewn to, from centre front to centre back, and whether that opens behind. */
export type Under<C extends object, R extends Ref> = {
  readonly neckline: (choices: C) => readonly R[];
  readonly opensBehind: (choices: C) => boolean;
};

type Gives = { readonly size: SizesOf<typeof hoodSizes>; readonly edge: HoodEdge };
type EarSize = SizesOf<typeof earSizes>;
/** A hood's own names; `under.neckline` stands for whatever it is sewn to. */
type Names = {
  readonly choices: HoodChoices;
  readonly size: Gives['size'] | EarSize;
  readonly edge: HoodEdge | 'under.neckline';
};
type Takes = Pick<Names, 'choices'> & { readonly size: EarSize; readonly edge: 'under.neckline' };

/** The neck edge: what the neckline leaves beside the nape strip, or longer and pleated in. */
function hoodNeck(neck: Mm, sizes: Look<Names>['sizes']) {
  const stripNape = Math.min(sizes.stripNape, neck * WIDEST_NAPE);
  const plain = neck - stripNape;
  const wanted = Math.min(sizes.hoodDepth * LEAST_NECK_SHARE, neck * MOST_PLEATED - stripNape);
  return { stripNape, hoodNeck: wanted > plain * PLEATS_FROM ? wanted : plain };
}
/** Less than this is not worth a pleat. */
const PLEATS_FROM = 1.03;

const HOOD_CHECK = ['crown-arc', 'hood-depth', 'face-edge'] as const;

/** The crown of a two-part hood against the head's arc; `open`, the share of it left open above the nape. */
const twoPartCrown = (open: (choices: HoodChoices) => number) =>
  ({
    what: 'hood-crown',
    ratio: (look) => wholeCrown(look, open) / look.sizes.hoodCrown,
    aim: (wearer) => (wearer.taken('crown-arc') ? [1, CROWN_OVER] : [0.8, 1.25]),
    turn: [
      flatter,
      { size: 'hoodRound', limit: () => ROUND.fullest },
      { size: 'napeRise', limit: () => MOST_NAPE_RISE },
    ],
    rest: 'accept',
    check: HOOD_CHECK,
    when: twoParts,
  }) satisfies MatchRow<Names>;

/** The crown of one side against the edge of the strip. */
const threePartCrown: MatchRow<Names> = {
  what: 'hood-crown',
  ratio: (look) => sumOf(crown(look.choices), look) / sumOf(stripSide(look.choices), look),
  aim: () => [1, 1],
  turn: [
    flatter,
    { size: 'napeRise', limit: () => MOST_NAPE_RISE },
    { size: 'hoodRound', limit: () => ROUND.full },
    {
      size: 'hoodDepth',
      limit: (_, start) => start.hoodDepth * 1.3,
      code: 'hood-depth-changed',
      check: HOOD_CHECK,
    },
    {
      size: 'hoodCrown',
      limit: (_, start) => start.hoodCrown * 4,
      code: 'hood-crown-changed',
      check: HOOD_CHECK,
    },
    {
      size: 'hoodCrown',
      limit: (_, start) => start.hoodCrown * 0.3,
      code: 'hood-crown-changed',
      check: HOOD_CHECK,
    },
  ],
  rest: 'refuse',
  check: HOOD_CHECK,
  when: threeParts,
};

const wholeCrown = (look: Look<Names>, open: (choices: HoodChoices) => number) =>
  sumOf(crown(look.choices), look) / (1 - open(look.choices));

/** A hood in two halves, or with a strip over the head between them. Never a drawstring (ASTM F1816, EN 14682). */
export function hoodPart<C extends object, R extends Ref>({
  neckline,
  opensBehind,
}: Under<C, R>): Part<{ choices: C & HoodChoices; size: EarSize; edge: EdgeIn<R> }, Gives> {
  // What a hood asks of its garment it asks with that garment's own choices: whoever assembles them is held to have them.
  const told = { neckline, opensBehind } as unknown as Under<HoodChoices, RefTo<'under.neckline'>>;
  const open = (choices: HoodChoices) => (told.opensBehind(choices) ? NAPE_OPEN : 0);
  const neckOf = (look: Look<Names>) => hoodNeck(sumOf(told.neckline(look.choices), look), look.sizes);
  const twoPart = twoPartCrown(open);
  /** What the hood gives over the head: along the middle of the strip, or along the seam. */
  const overCrown = (look: Look<Names>): Mm =>
    threeParts(look.choices) ? look.sizes.hoodCrown : wholeCrown(look, open);
  /** The crown of a two-part hood cannot meet both the arc and the depth. */
  const crownFar = (look: Look<Names>): boolean => {
    if (!twoParts(look.choices) || open(look.choices) > 0) return false;
    const [low, high] = twoPart.aim(look.wearer);
    const ratio = twoPart.ratio(look);
    return ratio < low - 1e-4 || ratio > high + 1e-4;
  };
  const rows = part<Takes, Gives>({
    sizes: [hoodSizes],
    pieces: [
      piece<Names>()('strip', hoodStrip, {
        copies: 1,
        mirrored: false,
        onFold: true,
        sizes: {
          stripNape: (look) => neckOf(look).stripNape,
          earFrom: ({ choices, sizes }) => (inSeam(choices) ? sizes.earFrom : null),
          earOpen: ({ choices, sizes }) => (inSeam(choices) ? sizes.ear : null),
        },
        roles: () => ({ face: 'hem', ear: 'opening', nape: 'seam', centre: 'fold' }),
        when: threeParts,
      }),
      piece<Names>()('hood', hoodSide, {
        copies: 2,
        mirrored: true,
        onFold: false,
        sizes: {
          hoodNeck: (look) => neckOf(look).hoodNeck,
          napeOpen: ({ choices }) => (told.opensBehind(choices) ? NAPE_OPEN : null),
          earFrom: ({ choices, sizes }) => (inSeam(choices) || inSlit(choices) ? sizes.earFrom : null),
          earOpen: ({ choices, sizes }) => (inSeam(choices) ? sizes.ear : null),
          earSlit: ({ choices, sizes }) => (inSlit(choices) ? sizes.ear : null),
          earInset: ({ choices, sizes }) => (inSlit(choices) ? sizes.earInset : null),
        },
        roles: () => ({ face: 'hem', ear: 'opening', opening: 'opening', neck: 'seam' }),
        cuts: ['ear'],
      }),
    ],
    seams: [
      {
        name: 'hood-crown',
        sewn: 1,
        first: [{ piece: 'hood', edge: 'crown' }],
        second: [{ piece: 'hood', edge: 'crown' }],
        when: twoParts,
      },
      {
        name: 'hood-crown',
        sewn: 2,
        first: [{ piece: 'strip', edge: 'side' }],
        second: [{ piece: 'hood', edge: 'crown' }],
        when: (choices) => threeParts(choices) && choices.ears !== 'open',
      },
      {
        name: 'hood-face',
        sewn: 1,
        kind: 'folded',
        first: (choices) => [
          { piece: 'hood', edge: 'face', times: 2 },
          ...(threeParts(choices) ? [{ piece: 'strip', edge: 'face', times: 2 } as const] : []),
        ],
        second: [],
      },
      {
        name: 'hood-neck',
        sewn: 2,
        first: told.neckline,
        second: (choices) => [
          { piece: 'hood', edge: 'neck', back: true },
          ...(threeParts(choices) ? [{ piece: 'strip', edge: 'nape' } as const] : []),
        ],
        longer: 'pleated',
        cornered: true,
      },
    ],
    match: [twoPart, threePartCrown],
    instead: [
      {
        choice: 'hood',
        from: 'two',
        to: 'three',
        code: 'hood-three-instead',
        check: HOOD_CHECK,
        onlyAuto: true,
        when: crownFar,
      },
      {
        choice: 'hood',
        from: 'three',
        to: 'two',
        code: 'hood-two-instead',
        check: [],
        when: (look) => threeParts(look.choices) && told.opensBehind(look.choices),
      },
    ],
    fit: [
      {
        place: 'face',
        measure: 'face-edge',
        garment: (look) =>
          2 * look.length('hood.face') + (threeParts(look.choices) ? 2 * look.length('strip.face') : 0),
      },
      { place: 'hood-depth', measure: 'hood-depth', garment: (look) => look.sizes.hoodDepth },
      {
        place: 'crown',
        measure: 'crown-arc',
        garment: overCrown,
        why: (look) => (overCrown(look) < look.wearer.surface('crown-arc') - 0.01 ? 'hood-crown-differs' : null),
      },
    ],
  });
  return rows as unknown as Part<{ choices: C & HoodChoices; size: EarSize; edge: EdgeIn<R> }, Gives>;
}
