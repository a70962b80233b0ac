import type { Mm } from '../../../body';
import type { HoodSide } from '../../blocks/hood';
import type { Ears, Hoods } from '../../heads/choices';
import { type Look, sumOf } from '../../rows/names';
import type { MatchRow, Turn } from '../../rows/rows';
import { type earSizes, type hoodSizes, NARROWEST_STRIP_SHARE, widestStrip } from '../../sizes/hood';
import type { SizesOf } from '../../sizes/maker';
import { crown, type HoodEdge } from './ears';

export type HoodChoices = Hoods & Ears;
export const threeParts = ({ hood }: Hoods) => hood === 'three';
export const twoParts = ({ hood }: Hoods) => hood === 'two';
export const leavesChin = ({ chin }: Hoods) => chin === 'open';

/** A crown may be this much longer than the head's arc before a third part is better (common practice, no source). */
export const CROWN_OVER = 1.05;
/** Never shorter than the arc, whatever a solver leaves over. */
const CROWN_LEAST = 1.0001;
/** Round a head that was only guessed, a crown is good enough within these shares of the guess. */
const GUESSED = [0.8, 1.25] as const;
/**
 * A hood whose neck is under this share of its depth hooks in under the head: it is made longer and laid in pleats behind the
 * shoulders, up to a ratio there and a share of the whole neck (common practice, no source). Less than so much is not worth a pleat.
 */
const LEAST_NECK_SHARE = 0.78;
const MOST_PLEATED = 2;
const MOST_FULL = 0.5;
const LEAST_PLEAT_MM = 4;
/** The strip at the nape: a share of its width, no less than half of so many mm, and at most this share of the back neckline. */
const NAPE_SHARE = 0.6;
const LEAST_NAPE_MM = 12;
const WIDEST_NAPE = 0.5;
const ROUND = { flattest: 0.5, fullest: 0.85 } as const;
/** The nape rises at most this share of the neck edge above the chin. */
const MOST_NAPE_RISE = 0.22;

const flatter: Turn<HoodNames> = { size: 'hoodRound', limit: () => ROUND.flattest };

export type HoodGives = { readonly size: SizesOf<typeof hoodSizes>; readonly edge: HoodEdge };
export type EarSize = SizesOf<typeof earSizes>;
/** A hood's own names; `under.front` and its like stand for whatever it is sewn to. */
export type HoodNames = {
  readonly choices: HoodChoices;
  readonly size: HoodGives['size'] | EarSize | UnderSize;
  readonly edge: HoodEdge | UnderEdge;
};
export type HoodTakes = Pick<HoodNames, 'choices'> & { readonly size: EarSize | UnderSize; readonly edge: UnderEdge };
/** The neck it is sewn to, and how much lower that lies in front than where the face edge was measured to. */
export type UnderSize = 'neck' | 'neckLower';
export type UnderEdge = 'under.front' | 'under.back' | 'under.chin';

/** The neck edge beside the nape strip: as long as the neckline, or longer behind the shoulders and laid in pleats there. */
export function neckOf(front: Mm, back: Mm, { strip, hoodDepth }: Look<HoodNames>['sizes']) {
  const stripFace = strip / 2;
  const stripNape = Math.min(stripFace, Math.max(stripFace * NAPE_SHARE, LEAST_NAPE_MM / 2), back * WIDEST_NAPE);
  const plain = back - stripNape;
  const wanted = hoodDepth * LEAST_NECK_SHARE - front - back;
  const full = Math.min(wanted, plain * (MOST_PLEATED - 1), (front + back) * MOST_FULL);
  const neckPleats = full < LEAST_PLEAT_MM ? 0 : full;
  return { stripNape, hoodBehind: plain + neckPleats, hoodNeck: front + plain + neckPleats, neckPleats };
}

export const HOOD_CHECK = ['crown-arc', 'hood-depth', 'face-edge'] as const;
export const isMeasured = ({ taken }: Look<HoodNames>['wearer']) => taken('crown-arc') && taken('hood-depth');
const aim = (wearer: Look<HoodNames>['wearer']) =>
  isMeasured(wearer) ? ([CROWN_LEAST, CROWN_OVER] as const) : GUESSED;
const shaped = [
  flatter,
  { size: 'hoodRound', limit: () => ROUND.fullest },
  { size: 'napeRise', limit: () => MOST_NAPE_RISE },
] as const satisfies readonly Turn<HoodNames>[];

/** The crown of a two-part hood against the head's arc; `open`, the share of it left open above the nape. */
export const twoPartCrown = (open: (choices: HoodChoices) => number) =>
  ({
    what: 'hood-crown',
    ratio: (look) => wholeCrown(look, open) / look.sizes.hoodCrown,
    aim,
    turn: shaped,
    rest: 'accept',
    check: HOOD_CHECK,
    when: twoParts,
  }) satisfies MatchRow<HoodNames>;

/** Down to its narrowest, where a wider one leaves the crown too short. */
const narrower: Turn<HoodNames> = {
  size: 'strip',
  limit: ({ wearer }, { strip }) => Math.min(strip, wearer.of('head-girth') * NARROWEST_STRIP_SHARE),
  code: 'strip-narrowed',
  check: HOOD_CHECK,
};

/** Up to its widest, where nothing else keeps the crown from standing up: a head far larger than its neck. */
const wider: Turn<HoodNames> = {
  size: 'strip',
  limit: ({ wearer, sizes }, { strip }) => Math.max(strip, widestStrip(wearer, sizes)),
  code: 'strip-widened',
  check: HOOD_CHECK,
};

/** The middle of the strip, as long as its seams make it, against the head's arc. */
export const threePartCrown: MatchRow<HoodNames> = {
  what: 'hood-crown',
  ratio: (look) => look.length('strip.centre') / look.sizes.hoodCrown,
  aim,
  turn: [narrower, ...shaped, wider],
  rest: 'accept',
  check: HOOD_CHECK,
  when: threeParts,
};

export const wholeCrown = (look: Look<HoodNames>, open: (choices: HoodChoices) => number) =>
  sumOf(crown(look.choices), look) / (1 - open(look.choices));

/** A side lower than this share of its neck edge, or shallower than this share of its face edge, is no hood. */
const LEAST_FRONT = 0.3;
const LEAST_DEPTH = 0.25;

/** One side of a hood whose neck edge is as long as `hoodNeck`: without its half of the strip, in front and behind; down to the neckline. */
export function sideOf(
  { sizes: { hoodFace, hoodDepth, hoodRound, napeRise, strip, neckLower } }: Look<HoodNames>,
  hoodNeck: Mm,
): HoodSide {
  const hoodFront = Math.max((hoodFace - strip) / 2 + neckLower, hoodNeck * LEAST_FRONT);
  return {
    hoodFront,
    hoodDepth: Math.max(hoodDepth - strip / 2, hoodFront * LEAST_DEPTH),
    hoodNeck,
    hoodRound,
    napeRise,
  };
}
