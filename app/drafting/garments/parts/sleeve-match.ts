import type { Look, MatchRow, Turn } from '../../rows/garment';
import { LEAST_SIDE_MM } from '../../sizes/bodice';
import type { Choices } from '../../sizes/wearer';
import { hasSleeve, isRaglan } from './bodice';

export const setIn = (choices: Choices) => hasSleeve(choices) && !isRaglan(choices);
export const isPuffed = (choices: Choices) => choices.sleeve === 'puffed';
/** How much fuller than its armhole a puffed cap is gathered in (common practice, no source). */
const PUFFED_CAP = [1.2, 1.8] as const;

/** How far a knob may be turned, as shares of where it started (common practice, no source). */
const DEEPEN = [1.15, 1.4, 1.4, 1.6] as const;
/** And the side keeps at least this share of its length. */
const LEAST_SIDE_SHARE = 0.45;
const LEAST_RAGLAN_SIDE_SHARE = 0.3;
/** An arm too thick for any armhole of this body is gathered into it, up to this ratio. */
const MOST_RAGLAN_GATHERED = 2.5;
const FLATTEST_CAP = 2 / 3;
const WIDEST_SLEEVE = 1.15;
const MOST_RAISED_CAP = 1.2;

export const armhole = (look: Look) => look.length('front', 'armhole') + look.length('back', 'armhole');
const cap = (look: Look) => look.length('sleeve', 'front-cap') + look.length('sleeve', 'back-cap');

const from = (size: string, share: number) => (_: Look, start: Readonly<Record<string, number>>) =>
  (start[size] ?? 0) * share;

/** Deeper, but never so deep that the side has no room for its hem. */
const deepen = (share: number): Turn => ({
  size: 'armholeDepth',
  limit: (look, start) => {
    const { sideLevel = 0, armholeDepth = 0 } = start;
    const kept = isRaglan(look.choices) ? LEAST_RAGLAN_SIDE_SHARE : LEAST_SIDE_SHARE;
    const side = Math.max(look.wearer.hem + LEAST_SIDE_MM, (sideLevel - armholeDepth) * kept);
    return Math.max(Math.min(armholeDepth * share, sideLevel - side), look.sizes.armholeDepth ?? 0);
  },
  code: 'armhole-deepened',
  check: ['armhole-depth', 'upper-arm-girth'],
});

const flatten: Turn = {
  size: 'capHeight',
  limit: from('capHeight', FLATTEST_CAP),
  code: 'cap-changed',
  check: ['arm-length', 'underarm-length'],
};
const raise: Turn = { ...flatten, limit: from('capHeight', MOST_RAISED_CAP) };
const widen: Turn = {
  size: 'bicep',
  limit: from('bicep', WIDEST_SLEEVE),
  code: 'sleeve-widened',
  check: ['upper-arm-girth', 'armhole-depth'],
};
/** Back to the depth as measured, unless the arm's root asks for more. */
const takeBack: Turn = {
  size: 'armholeDepth',
  limit: (look, start) =>
    (look.sizes.armhole ?? 0) > 0
      ? (look.sizes.armholeDepth ?? 0)
      : Math.min(look.wearer.of('armhole-depth'), start.armholeDepth ?? 0),
  code: 'armhole-raised',
  check: ['armhole-depth'],
};

const ARM_CHECK = ['upper-arm-girth', 'armhole-depth', 'arm-length', 'underarm-length'] as const;

/** How a sleeve is brought to its armhole: what is turned, how far, in which order. */
export const sleeveMatch: readonly MatchRow[] = [
  {
    what: 'arm-root',
    ratio: (look) => ((look.sizes.armhole ?? 0) > 0 ? armhole(look) / (look.sizes.armhole ?? 1) : 1),
    aim: () => [1, Number.POSITIVE_INFINITY],
    turn: [deepen(DEEPEN[2])],
    rest: 'refuse',
    check: ['arm-root-girth', 'armhole-depth'],
    when: setIn,
  },
  {
    what: 'sleeve',
    ratio: (look) => cap(look) / armhole(look),
    aim: (wearer) => (isPuffed(wearer.choices) ? PUFFED_CAP : [1, 1 + wearer.cloth.easesIn]),
    turn: [deepen(DEEPEN[0]), flatten, deepen(DEEPEN[1]), takeBack, widen, raise],
    rest: 'gather',
    check: ARM_CHECK,
    when: setIn,
  },
  {
    what: 'raglan-rise',
    ratio: (look) => rise(look) / leastRise(look),
    aim: () => [1, Number.POSITIVE_INFINITY],
    turn: [deepen(DEEPEN[2])],
    rest: 'accept',
    check: ARM_CHECK,
    when: isRaglan,
  },
  ...(['front', 'back'] as const).map(
    (side): MatchRow => ({
      what: `${side}-raglan`,
      ratio: (look) => look.length('sleeve', `${side}-raglan`) / look.length(side, 'armhole'),
      aim: () => [1, 1],
      turn: [deepen(DEEPEN[3])],
      rest: 'gather',
      gathersTo: MOST_RAGLAN_GATHERED,
      check: ARM_CHECK,
      when: isRaglan,
    }),
  ),
];

/** How high a raglan head rises: cap and shoulder together, and never so flat that its edges buckle. */
const FLATTEST_HEAD = 0.4;
const rise = (look: Look) => look.length('sleeve', 'over-arm');
const leastRise = ({ sizes }: Look) =>
  Math.max((sizes.capHeight ?? 0) + (sizes.shoulder ?? 0), ((sizes.bicep ?? 0) / 2) * FLATTEST_HEAD);
