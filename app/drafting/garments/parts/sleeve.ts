import { raglanSleeve } from '../../blocks/raglan';
import { sleeve } from '../../blocks/sleeve';
import { LEAST_SIDE_MM } from '../../sizes/bodice';
import { LEAST_INSET_MM, LEAST_SHOULDER_MM } from '../../sizes/shoulder';
import { sleeveSizes } from '../../sizes/sleeve';
import type { Choices } from '../../sizes/wearer';
import type { Look, MatchRow, Part, PieceRow, Turn } from '../garment';
import { hasSleeve, hemRole, isRaglan } from './bodice';

const setIn = (choices: Choices) => hasSleeve(choices) && !isRaglan(choices);
const raglan = isRaglan;

/** How far a knob may be turned, as shares of where it started (common practice, no source). */
const DEEPEN = [1.15, 1.4, 1.4, 1.6] as const;
/** And the side keeps at least this share of its length. */
const LEAST_SIDE_SHARE = 0.45;
const LEAST_RAGLAN_SIDE_SHARE = 0.3;
/** An arm too thick for any armhole of this body is gathered into it, up to this ratio. */
const MOST_RAGLAN_GATHERED = 1.8;
const FLATTEST_CAP = 2 / 3;
const WIDEST_SLEEVE = 1.15;
const HIGHEST_CAP = 1.2;

const armhole = (look: Look) => look.length('front', 'armhole') + look.length('back', 'armhole');
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
const raise: Turn = { ...flatten, limit: from('capHeight', HIGHEST_CAP) };
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

const match: readonly MatchRow[] = [
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
    aim: (wearer) => [1, 1 + wearer.cloth.easesIn],
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
    when: raglan,
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
      when: raglan,
    }),
  ),
];

/** How high a raglan head rises: cap and shoulder together, and never so flat that its edges buckle. */
const FLATTEST_HEAD = 0.4;
const rise = (look: Look) => look.length('sleeve', 'over-arm') - (look.sizes.underarmLength ?? 0);
const leastRise = ({ sizes }: Look) =>
  Math.max((sizes.capHeight ?? 0) + (sizes.shoulder ?? 0), ((sizes.bicep ?? 0) / 2) * FLATTEST_HEAD);

const shared = { name: 'sleeve', copies: 2, mirrored: true, onFold: false } as const;

const pieces: readonly PieceRow[] = [
  {
    ...shared,
    block: sleeve,
    takes: (look) => ({ capShare: look.length('front', 'armhole') / armhole(look) }),
    roles: (choices) => ({
      'front-cap': 'seam',
      'back-cap': 'seam',
      'back-underarm': 'seam',
      cuff: hemRole(choices),
      'front-underarm': 'seam',
    }),
    when: setIn,
  },
  {
    ...shared,
    block: raglanSleeve,
    takes: (look) => ({ frontRaglan: look.length('front', 'armhole'), backRaglan: look.length('back', 'armhole') }),
    roles: (choices) => ({
      'front-raglan': 'seam',
      neck: 'seam',
      'back-raglan': 'seam',
      'back-underarm': 'seam',
      cuff: hemRole(choices),
      'front-underarm': 'seam',
    }),
    when: raglan,
  },
];

/** Sleeves set into an armhole, or raglan ones where there is no shoulder to set them in. */
export const sleevePart: Part = {
  needs: (['arm-root-girth', 'upper-arm-girth', 'paw-girth', 'arm-length', 'underarm-length'] as const).map(
    (measure) => ({ measure, when: hasSleeve }),
  ),
  sizes: [(wearer, sizes) => (hasSleeve(wearer.choices) ? sleeveSizes(wearer, sizes) : { sizes: {} })],
  passages: [{ measure: 'paw-girth', through: 'cuff', gives: (sizes) => sizes.cuff ?? 0, when: hasSleeve }],
  pieces,
  seams: [
    {
      name: 'armhole',
      sewn: 2,
      first: [
        { piece: 'front', edge: 'armhole', back: true },
        { piece: 'back', edge: 'armhole' },
      ],
      second: [
        { piece: 'sleeve', edge: 'front-cap' },
        { piece: 'sleeve', edge: 'back-cap' },
      ],
      longer: 'gathered',
      when: setIn,
    },
    {
      name: 'front-raglan',
      sewn: 2,
      first: [{ piece: 'front', edge: 'armhole', back: true }],
      second: [{ piece: 'sleeve', edge: 'front-raglan' }],
      longer: 'gathered',
      when: raglan,
    },
    {
      name: 'back-raglan',
      sewn: 2,
      first: [{ piece: 'back', edge: 'armhole' }],
      second: [{ piece: 'sleeve', edge: 'back-raglan' }],
      longer: 'gathered',
      when: raglan,
    },
    {
      name: 'underarm',
      sewn: 2,
      first: [{ piece: 'sleeve', edge: 'back-underarm' }],
      second: [{ piece: 'sleeve', edge: 'front-underarm', back: true }],
      when: hasSleeve,
    },
    { name: 'cuff', sewn: 2, kind: 'folded', first: [{ piece: 'sleeve', edge: 'cuff' }], second: [], when: hasSleeve },
  ],
  match,
  instead: [
    {
      choice: 'armhole',
      from: 'set-in',
      to: 'raglan',
      code: 'raglan-instead',
      check: ['shoulder-length', 'armhole-depth', 'upper-arm-girth'],
      when: (look, failed) =>
        setIn(look.choices) &&
        (failed === 'sleeve' ||
          failed === 'arm-root' ||
          (look.sizes.inset ?? 0) < LEAST_INSET_MM - 0.01 ||
          (look.sizes.shoulder ?? 0) < LEAST_SHOULDER_MM),
    },
  ],
  fit: [
    { place: 'bicep', measure: 'upper-arm-girth', garment: (look) => look.sizes.bicep ?? 0, when: hasSleeve },
    {
      place: 'cuff',
      measure: 'paw-girth',
      garment: (look) => look.sizes.cuff ?? 0,
      when: (choices) => choices.sleeve === 'long',
    },
    {
      place: 'armhole',
      measure: 'arm-root-girth',
      garment: armhole,
      why: ({ wearer }) => (wearer.taken('arm-root-girth') ? null : 'not-measured'),
      when: setIn,
    },
  ],
};
