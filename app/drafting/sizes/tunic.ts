import { type Flag, type MeasureId, type Mm, USUAL_CASING_MM } from '../../body';
import { roundAlong, roundRise, roundThrough, turnAt, turnAtHeight } from '../curves/round';
import type { TunicNecks, Wings } from '../heads/choices';
import { easedNeck } from './ease';
import { GORES } from './hat';
import { maker } from './maker';
import type { Wearer } from './wearer';

/** A neck wider than this share of the body lies on no slope: nothing would hold it up (common practice, no source). */
const WIDEST_NECK = 0.965;
/** So near the fullest line, radians, a hem is said by its girth to be anywhere: there it ends. */
const NEAREST_HEM = 0.12;
/** A way out is so much longer than a flat wing is wide, and goes round an arm with so much room, mm (common practice, no source). */
const WING_ROOM = 1.1;
const FLAT_ROOM_MM = 8;
const ARM_ROOM_MM = 10;
/** Straight, it has a seam at either side. */
const TWO_SEAMS = 2;
/** Above and below it so much of the seam is sewn, a casing and the hem beside it. */
const ABOVE_WING_MM = 12;
const BELOW_WING_MM = 10;
/** Half the girth of what is round, for its width (geometry); what is flat has its width on either side. */
const HALF_ROUND = Math.PI / 2;
export const wingShare = ({ wings }: Wings): number => (wings === 'round' ? HALF_ROUND : 1);

/**
 * A tunic for a round body: the body as two half ellipsoids through its girths, and where on it the finished neck comes to rest
 * and the hem ends. Only girths are eased: lengths are those of the way over the body, so that the hem hangs where it was measured.
 */
export const tunicSizes = maker(
  [],
  [
    'goreCount',
    'neck',
    'tummy',
    'hem',
    'roundFull',
    'roundUp',
    'roundDown',
    'neckTurn',
    'hemTurn',
    'neckRise',
    'neckLower',
    'tunicLong',
    'tunicHalf',
    'wingFrom',
    'wingLong',
    'wingMissing',
    'wingMoved',
  ],
  (wearer: Wearer<Wings & TunicNecks>) => {
    const drawn = wearer.choices.tunicNeck === 'drawn';
    const full = wearer.of('body-girth');
    const up = roundThrough(full, wearer.of('top-girth'), wearer.of('top-height'));
    const down = roundThrough(full, wearer.of('base-girth'), wearer.of('base-height'));
    const neck = easedNeck(wearer.of('neck-girth'), wearer.cloth);
    const inside = neck - Math.PI * wearer.cloth.thickness;
    const neckTurn = turnAt(up, Math.min(inside, full * WIDEST_NECK));
    const hemTurn = Math.max(turnAt(down, wearer.of('hem-girth')), NEAREST_HEM);
    const rests = roundAlong(up, neckTurn);
    const thread = roundAlong(up, turnAt(up, wearer.of('neck-girth')));
    // An elastic as long as the neck stays on the thread; from the fullest line straight cloth hangs straight.
    const above = drawn ? thread : rests;
    const tunicLong = above + (drawn ? down.high * Math.sin(hemTurn) : roundAlong(down, hemTurn));
    const tummy = wearer.girth('body-girth', drawn ? TWO_SEAMS : GORES);
    return {
      sizes: {
        goreCount: GORES,
        neck,
        tummy,
        hem: wearer.girth('hem-girth', drawn ? TWO_SEAMS : GORES),
        roundFull: full,
        roundUp: up.high,
        roundDown: down.high,
        neckTurn,
        hemTurn,
        neckRise: roundRise(up, neckTurn),
        neckLower: thread - rests,
        tunicLong,
        tunicHalf: tummy / 4,
        ...wingOf(wearer, { above, tunicLong }, (height) =>
          height > 0 ? roundAlong(up, turnAtHeight(up, height)) : -roundAlong(down, turnAtHeight(down, -height)),
        ),
      },
      stops: [
        ...(inside > full * WIDEST_NECK ? cannotHold(inside, full) : []),
        ...hemOver(wearer.of('hem-girth'), full),
      ],
    };
  },
);

/** Where a wing comes through the seam at the side. Upper and lower height are each taken halfway: they part the whole height as the fullest line does. */
function wingOf(
  wearer: Wearer<Wings & TunicNecks>,
  { above, tunicLong }: { readonly above: Mm; readonly tunicLong: Mm },
  along: (height: Mm) => Mm,
): Record<'wingFrom' | 'wingLong' | 'wingMissing' | 'wingMoved', Mm> {
  if (wearer.choices.wings === 'none') return { wingFrom: 0, wingLong: 0, wingMissing: 0, wingMoved: 0 };
  const half = wearer.of('wing-base') * wingShare(wearer.choices);
  const room = wearer.choices.wings === 'round' ? ARM_ROOM_MM : FLAT_ROOM_MM;
  const wanted = Math.max(half * WING_ROOM, half + room);
  const casing = wearer.choices.tunicNeck === 'drawn' ? USUAL_CASING_MM[wearer.scale] : 0;
  const highest = Math.min(casing + ABOVE_WING_MM, tunicLong / 3);
  const lowest = tunicLong - Math.min(wearer.hem + BELOW_WING_MM, tunicLong / 4);
  const wingLong = Math.min(wanted, lowest - highest);
  const [top, base] = [wearer.of('top-height'), wearer.of('base-height')];
  const fullest = (wearer.of('height') * base) / (base + top);
  const middle = above - along(wearer.of('wing-height') - fullest);
  const wingFrom = Math.min(Math.max(middle - wingLong / 2, highest), lowest - wingLong);
  return { wingFrom, wingLong, wingMissing: wanted - wingLong, wingMoved: wingFrom + wingLong / 2 - middle };
}

/** The fullest line is the fullest: a hem a tenth wider, which no tape is off by, was measured on another body. */
const WIDEST_HEM = 1.1;

function hemOver(girth: Mm, full: Mm): Flag[] {
  return girth > full * WIDEST_HEM
    ? [
        {
          code: 'girth-over-fullest',
          severity: 'impossible',
          measures: ['hem-girth', 'body-girth'],
          values: { girth, full },
        },
      ]
    : [];
}

const HOLDS: readonly MeasureId[] = ['neck-girth', 'body-girth'];

/** What hangs from the neck by itself would slip too; what is worn on the head, or slept in, would not. */
function cannotHold(neck: Mm, full: Mm): Flag[] {
  return [
    { code: 'neck-holds-nothing', severity: 'impossible', measures: HOLDS, values: { neck, full } },
    ...['hat', 'scarf', 'sleeping-bag'].map(
      (id): Flag => ({ code: `wears-${id}`, severity: 'note', measures: [], values: {} }),
    ),
  ];
}
