import type { Mm } from '../../../body';
import { hoodSide, hoodStrip } from '../../blocks/hood';
import type { Ref } from '../../draft-types';
import { type Look, type MatchRow, type Part, sumOf, type Turn } from '../../rows/garment';
import { hoodSizes } from '../../sizes/hood';
import type { Choices } from '../../sizes/wearer';
import { overHead } from './ears';

const crown = overHead('hood', 'crown');
const stripSide = overHead('strip', 'side');
const threeParts = (choices: Choices) => choices.hood === 'three';
const twoParts = (choices: Choices) => choices.hood === 'two';

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

const flatter: Turn = { size: 'hoodRound', limit: () => ROUND.flattest };

/** A garment that opens behind opens into the hood, so it has no strip, and the crown is left open above the nape. */
const opensBehind = (choices: Choices) => choices.opening === 'back';
const NAPE_OPEN = 0.4;
const wholeCrown = (look: Look) => sumOf(crown(look.choices), look) / (1 - (opensBehind(look.choices) ? NAPE_OPEN : 0));

/** Half the neckline a hood is sewn to, from centre front to centre back. */
type Neckline = (choices: Choices) => readonly Ref[];

/** The neck edge: what the neckline leaves beside the nape strip, or longer and pleated in. */
function hoodNeck(look: Look, neckline: Neckline) {
  const neck = sumOf(neckline(look.choices), look);
  const stripNape = Math.min(look.sizes.stripNape ?? 0, neck * WIDEST_NAPE);
  const plain = neck - stripNape;
  const wanted = Math.min((look.sizes.hoodDepth ?? 0) * LEAST_NECK_SHARE, neck * MOST_PLEATED - stripNape);
  return { stripNape, hoodNeck: wanted > plain * PLEATS_FROM ? wanted : plain };
}
/** Less than this is not worth a pleat. */
const PLEATS_FROM = 1.03;

const HOOD_CHECK = ['crown-arc', 'hood-depth', 'face-edge'] as const;

const match: readonly MatchRow[] = [
  {
    what: 'hood-crown',
    ratio: (look) => wholeCrown(look) / (look.sizes.hoodCrown ?? 1),
    aim: (wearer) => (wearer.taken('crown-arc') ? [1, CROWN_OVER] : [0.8, 1.25]),
    turn: [
      flatter,
      { size: 'hoodRound', limit: () => ROUND.fullest },
      { size: 'napeRise', limit: () => MOST_NAPE_RISE },
    ],
    rest: 'accept',
    check: HOOD_CHECK,
    when: twoParts,
  },
  {
    what: 'hood-crown',
    ratio: (look) => sumOf(crown(look.choices), look) / sumOf(stripSide(look.choices), look),
    aim: () => [1, 1],
    turn: [
      flatter,
      { size: 'napeRise', limit: () => MOST_NAPE_RISE },
      { size: 'hoodRound', limit: () => ROUND.full },
      {
        size: 'hoodDepth',
        limit: (_, start) => (start.hoodDepth ?? 0) * 1.3,
        code: 'hood-depth-changed',
        check: HOOD_CHECK,
      },
      {
        size: 'hoodCrown',
        limit: (_, start) => (start.hoodCrown ?? 0) * 4,
        code: 'hood-crown-changed',
        check: HOOD_CHECK,
      },
      {
        size: 'hoodCrown',
        limit: (_, start) => (start.hoodCrown ?? 0) * 0.3,
        code: 'hood-crown-changed',
        check: HOOD_CHECK,
      },
    ],
    rest: 'refuse',
    check: HOOD_CHECK,
    when: threeParts,
  },
];

/** A hood in two halves, or with a strip over the head between them. Never a drawstring (ASTM F1816, EN 14682). */
export const hoodPart = (neckline: Neckline): Part => ({
  needs: (['head-girth', 'face-edge', 'crown-arc', 'hood-depth'] as const).map((measure) => ({ measure })),
  sizes: [hoodSizes],
  pieces: [
    {
      name: 'strip',
      copies: 1,
      mirrored: false,
      onFold: true,
      block: hoodStrip,
      takes: (look) => ({ stripNape: hoodNeck(look, neckline).stripNape }),
      roles: () => ({ face: 'hem', ear: 'opening', nape: 'seam', centre: 'fold' }),
      when: threeParts,
    },
    {
      name: 'hood',
      copies: 2,
      mirrored: true,
      onFold: false,
      block: hoodSide,
      takes: (look) => ({
        hoodNeck: hoodNeck(look, neckline).hoodNeck,
        napeOpen: opensBehind(look.choices) ? NAPE_OPEN : 0,
      }),
      roles: () => ({ face: 'hem', ear: 'opening', opening: 'opening', neck: 'seam' }),
      cuts: ['ear'],
    },
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
        ...(threeParts(choices) ? [{ piece: 'strip', edge: 'face', times: 2 }] : []),
      ],
      second: [],
    },
    {
      name: 'hood-neck',
      sewn: 2,
      first: neckline,
      second: (choices) => [
        { piece: 'hood', edge: 'neck', back: true },
        ...(threeParts(choices) ? [{ piece: 'strip', edge: 'nape' }] : []),
      ],
      longer: 'pleated',
      cornered: true,
    },
  ],
  match,
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
      when: (look) => threeParts(look.choices) && opensBehind(look.choices),
    },
  ],
  fit: [
    {
      place: 'face',
      measure: 'face-edge',
      garment: (look) =>
        2 * look.length('hood', 'face') + (threeParts(look.choices) ? 2 * look.length('strip', 'face') : 0),
    },
    { place: 'hood-depth', measure: 'hood-depth', garment: (look) => look.sizes.hoodDepth ?? 0 },
    {
      place: 'crown',
      measure: 'crown-arc',
      garment: overCrown,
      why: (look) => (overCrown(look) < look.wearer.surface('crown-arc') - 0.01 ? 'hood-crown-differs' : null),
    },
  ],
});

/** What the hood gives over the head: along the middle of the strip, or along the seam. */
function overCrown(look: Look): Mm {
  return threeParts(look.choices) ? (look.sizes.hoodCrown ?? 0) : wholeCrown(look);
}

/** The crown of a two-part hood cannot meet both the arc and the depth. */
function crownFar(look: Look): boolean {
  const row = match[0];
  if (!row || !twoParts(look.choices) || opensBehind(look.choices)) return false;
  const [low, high] = row.aim(look.wearer);
  const ratio = row.ratio(look);
  return ratio < low - 1e-4 || ratio > high + 1e-4;
}
