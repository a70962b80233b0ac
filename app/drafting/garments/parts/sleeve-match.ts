import type { Mm, Traits } from '../../../body';
import type { raglanSleeve } from '../../blocks/raglan';
import type { sleeve } from '../../blocks/sleeve';
import type { Sleeves } from '../../heads/choices';
import type { Look } from '../../rows/names';
import type { EdgesOf } from '../../rows/piece-row';
import type { MatchRow, Turn } from '../../rows/rows';
import { LEAST_SIDE_MM } from '../../sizes/bodice';
import type { Sizes, SizesOf } from '../../sizes/maker';
import { shoulderDart } from '../../sizes/shoulder-dart';
import type { sleeveSizes } from '../../sizes/sleeve';
import { armOf } from './top';

/** What a sleeve is set into, and what it is itself. */
export type SleeveNames = {
  readonly choices: Sleeves;
  readonly size: SizesOf<typeof sleeveSizes> | Bodiced;
  readonly edge: Armholes | EdgesOf<'sleeve', typeof sleeve | typeof raglanSleeve>;
};
export type Bodiced = 'armholeDepth' | 'sideLevel' | 'shoulder' | 'inset' | 'slope' | 'neckBefore' | 'neckBehind';
export type Armholes = 'front.armhole' | 'back.armhole';
type Seen = Look<SleeveNames>;
type Knob = Turn<SleeveNames>;

export const isRaglan = (choices: Sleeves) => armOf(choices) === 'raglan';
export const hasSleeve = (choices: Sleeves) => armOf(choices) !== 'bare';
export const isInOne = (choices: Sleeves) => armOf(choices) === 'in-one';
/** Sleeves that are pieces of their own. */
export const hasOwnSleeve = (choices: Sleeves) => hasSleeve(choices) && !isInOne(choices);
export const setIn = (choices: Sleeves) => armOf(choices) === 'set-in';
export const isPuffed = (choices: Pick<Sleeves, 'sleeve'>) => choices.sleeve === 'puffed';
/** How much fuller than its armhole a puffed cap is gathered in (common practice, no source). */
const PUFFED_CAP = [1.2, 1.8] as const;

/** How far a knob may be turned, as shares of where it started (common practice, no source). */
const DEEPEN = [1.15, 1.25, 1.4, 1.6] as const;
/** And the side keeps at least this share of its length. */
export const LEAST_SIDE_SHARE = 0.45;
/** For a raglan's rise alone a side gives less, or it would lean too far; for an arm that does not pass otherwise, more. */
const RISE_SIDE_SHARE = 0.85;
const LEAST_RAGLAN_SIDE_SHARE = 0.45;
/** An arm too thick for any armhole of this body is gathered into it, up to this ratio. */
const MOST_RAGLAN_GATHERED = 2.5;
const FLATTEST_CAP = 2 / 3;
const WIDEST_SLEEVE = 1.15;
const MOST_RAISED_CAP = 1.2;
/** A cap set in flat is hardly longer than its armhole: what a cloth can ease in is for where nothing else gives (common practice, no source). */
const SET_IN_FLAT = [1, 1.01] as const;

export const armhole = ({ length }: Pick<Look<{ choices: object; size: never; edge: Armholes }>, 'length'>) =>
  length('front.armhole') + length('back.armhole');
const cap = ({ length }: Seen) => length('sleeve.front-cap') + length('sleeve.back-cap');
/** What the armhole must at least be to pass the arm's root; null where nobody measured that. */
const root = ({ wearer, sizes }: Seen) => (wearer.taken('arm-root-girth') ? sizes.armhole : null);

const from =
  (size: 'capHeight' | 'bicep', share: number): Knob['limit'] =>
  (_, start) =>
    start[size] * share;

/** Deeper by a share, but never so deep that the side has no room for its hem, nor less than `kept` of its length. */
export function deepened(
  { wearer, sizes }: Pick<Look<{ choices: object; size: 'armholeDepth'; edge: never }>, 'wearer' | 'sizes'>,
  { sideLevel, armholeDepth }: Sizes<'armholeDepth' | 'sideLevel'>,
  share: number,
  kept: number,
): Mm {
  const side = Math.max(wearer.hem + LEAST_SIDE_MM, (sideLevel - armholeDepth) * kept);
  return Math.max(Math.min(armholeDepth * share, sideLevel - side), sizes.armholeDepth);
}

const deepen = (share: number, kept = LEAST_SIDE_SHARE): Knob => ({
  size: 'armholeDepth',
  limit: (look, start) => deepened(look, start, share, kept),
  code: 'armhole-deepened',
  check: ['armhole-depth', 'upper-arm-girth'],
});

const flatten: Knob = {
  size: 'capHeight',
  limit: from('capHeight', FLATTEST_CAP),
  code: 'cap-changed',
  check: ['arm-length', 'underarm-length'],
};
const raise: Knob = { ...flatten, limit: from('capHeight', MOST_RAISED_CAP) };
const widen: Knob = {
  size: 'bicep',
  limit: from('bicep', WIDEST_SLEEVE),
  code: 'sleeve-widened',
  check: ['upper-arm-girth', 'armhole-depth'],
};
/** A knob that is turned only for arms that point so. */
const forArms = (arms: readonly Traits['arms'][], knob: Knob): Knob => ({
  ...knob,
  limit: (look, start) => (arms.includes(look.wearer.traits.arms) ? knob.limit(look, start) : look.sizes[knob.size]),
});
/** Back to the depth as measured, unless the arm's root asks for more. */
const takeBack: Knob = {
  size: 'armholeDepth',
  limit: (look, start) =>
    root(look) === null ? Math.min(look.wearer.of('armhole-depth'), start.armholeDepth) : look.sizes.armholeDepth,
  code: 'armhole-raised',
  check: ['armhole-depth'],
};

const ARM_CHECK = ['upper-arm-girth', 'armhole-depth', 'arm-length', 'underarm-length'] as const;

const capShare = (look: Seen) => cap(look) / armhole(look);

/** How a sleeve is brought to its armhole: what is turned, how far, in which order. */
export const sleeveMatch: readonly MatchRow<SleeveNames>[] = [
  {
    what: 'arm-root',
    ratio: (look) => armhole(look) / (root(look) ?? armhole(look)),
    aim: () => [1, Number.POSITIVE_INFINITY],
    turn: [deepen(DEEPEN[2])],
    rest: 'refuse',
    check: ['arm-root-girth', 'armhole-depth'],
    when: setIn,
  },
  {
    what: 'sleeve-ease',
    ratio: capShare,
    aim: () => SET_IN_FLAT,
    turn: [
      // Arms that stand off need no height over the shoulder; arms that hang need it before they need width.
      forArms(['out', 'up'], flatten),
      deepen(DEEPEN[0]),
      flatten,
      deepen(DEEPEN[1]),
      takeBack,
      forArms(['down'], raise),
      widen,
      raise,
    ],
    rest: 'leave',
    check: ARM_CHECK,
    when: (choices) => setIn(choices) && !isPuffed(choices),
  },
  {
    what: 'sleeve',
    ratio: capShare,
    aim: (wearer) => (isPuffed(wearer.choices) ? PUFFED_CAP : [1, 1 + wearer.cloth.easesIn]),
    turn: [deepen(DEEPEN[0]), flatten, deepen(DEEPEN[2]), takeBack, widen, raise],
    rest: 'gather',
    check: ARM_CHECK,
    when: setIn,
  },
  {
    what: 'raglan-rise',
    ratio: (look) => rise(look) / leastRise(look),
    aim: () => [1, Number.POSITIVE_INFINITY],
    turn: [deepen(DEEPEN[2], RISE_SIDE_SHARE)],
    rest: 'accept',
    check: ARM_CHECK,
    when: isRaglan,
  },
  ...(['front', 'back'] as const).map(
    (side): MatchRow<SleeveNames> => ({
      what: `${side}-raglan`,
      ratio: (look) => look.length(`sleeve.${side}-raglan`) / look.length(`${side}.armhole`),
      aim: () => [1, 1],
      turn: [deepen(DEEPEN[3], LEAST_RAGLAN_SIDE_SHARE)],
      rest: 'gather',
      gathersTo: MOST_RAGLAN_GATHERED,
      check: ARM_CHECK,
      when: isRaglan,
    }),
  ),
];

/** How high a raglan head rises: cap and shoulder together, and never so flat that its edges buckle. */
const FLATTEST_HEAD = 0.4;
const rise = (look: Seen) => (shoulderDart(look.wearer, look.sizes)?.long ?? 0) + look.length('sleeve.over-arm');
const leastRise = ({ sizes: { capHeight, shoulder, bicep } }: Seen) =>
  Math.max(capHeight + shoulder, (bicep / 2) * FLATTEST_HEAD);
