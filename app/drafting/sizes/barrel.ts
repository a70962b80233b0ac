import type { Flag, MeasureId, Mm } from '../../body';
import { holeHigh } from '../curves/barrel';
import type { Adjustment } from '../draft-types';
import { barrelCorner, type Corner, type CornerAsked } from './barrel-corner';
import { easedNeck, LEAST_LIMB_EASE_MM } from './ease';
import { maker } from './maker';
import type { Wearer } from './wearer';

/** Leg holes are this much larger than the leg at least, over its fit (common practice, no source). */
const LEG_EASE = 0.12;
const FIRM_FOOT_MM = 5;
/** Between the holes at least so much cloth is left, mm: less would tear. */
const LEAST_BETWEEN_MM = 8;
/** Behind the legs at least so much is left for a side seam, mm; a coat ends so far before the tail. */
const LEAST_BEHIND_MM = 12;
const BEFORE_TAIL_MM = 5;
/** Behind the legs each seam goes inwards at most this share of its length, and of the belly's half width (common practice, no source). */
const MOST_TAKEN_IN = 0.6;
/** A hem turns no farther from fold to corner, radians (50°); a wished length underneath gives way. */
const MOST_HEM_TURN = 0.87;

const CORNER: readonly MeasureId[] = ['nape-to-leg', 'neck-to-leg', 'neck-girth', 'chest-girth', 'leg-spread'];

/**
 * A coat round a body on four legs, halves beside the folds of back and belly. The belly is as wide as the space between the legs and
 * half a hole on either side, so that the seam crosses each hole in its middle, or nearer its outer side; the back has the rest of the
 * chest. The neck corner is solved; where it is not, the neck is let out and the legs' level moved a little, and that is said.
 */
export const barrelSizes = maker(
  [],
  [
    'neck',
    'neckLower',
    'chest',
    'belly',
    'legHigh',
    'bellyLegDeep',
    'backLegDeep',
    'lean',
    'backLegHalf',
    'backNeckX',
    'backNeckTurn',
    'backNeckEnds',
    'backLegAt',
    'backHemX',
    'backHemTurn',
    'backLong',
    'bellyLegHalf',
    'bellyNeckX',
    'bellyNeckTurn',
    'bellyNeckEnds',
    'bellyLegAt',
    'bellyHemX',
    'bellyHemTurn',
    'bellyLong',
  ],
  (wearer) => {
    const chest = wearer.girth('chest-girth', 2);
    const belly = wearer.girth('belly-girth', 2);
    const radius = legHole(wearer) / (2 * Math.PI);
    const asked: CornerAsked = {
      chest: chest / 2,
      middle: Math.max(wearer.of('leg-spread'), LEAST_BETWEEN_MM) / 2 + radius,
      radius,
      neck: easedNeck(wearer.of('neck-girth'), wearer.cloth) / 2,
      backLong: wearer.of('nape-to-leg'),
      bellyLong: wearer.of('neck-to-leg'),
    };
    const corner = barrelCorner(asked);
    const { neck, backLong, off, bellyHalf, backHalf, bellyNeck, end } = corner ?? plain(asked);
    const high = holeHigh(radius, off);
    const hole = { from: backLong, to: backLong + 2 * high };
    const long = Math.max(wearer.of('back-length') - BEFORE_TAIL_MM, hole.to + LEAST_BEHIND_MM);
    // What lies before the hind legs grows towards the belly; of a belly larger than the chest it is as wide as that.
    const wished = Math.max(wearer.of('under-length'), LEAST_BEHIND_MM);
    const share = belly > chest ? 1 : Math.min(1, (radius + wished) / Math.max(long - hole.from - radius, 1));
    // Taken in no more than the side can follow over so short a way.
    const least = chest - 4 * Math.min(MOST_TAKEN_IN * wished, MOST_TAKEN_IN * bellyHalf);
    const hem = Math.max(chest + (belly - chest) * share, least);
    const reach = Math.tan(MOST_HEM_TURN / 2) * (hem / 2);
    const behind = Math.max(
      Math.min(Math.max(wished, long - hole.to - reach), long - hole.to + reach),
      LEAST_BEHIND_MM,
    );
    const hemTurn = 2 * Math.atan((long - hole.to - behind) / (hem / 2));
    const wider = (hem - chest) / 4;
    return {
      sizes: {
        neck: 2 * neck,
        neckLower: 0,
        chest,
        belly: hem,
        legHigh: high,
        bellyLegDeep: radius + off,
        backLegDeep: radius - off,
        lean: end.lean,
        backLegHalf: backHalf,
        backNeckX: end.backNeck,
        backNeckTurn: end.backTurn,
        backNeckEnds: end.backEnds,
        backLegAt: backLong,
        backHemX: backHalf + wider,
        backHemTurn: -hemTurn,
        backLong: long,
        bellyLegHalf: bellyHalf,
        bellyNeckX: bellyNeck,
        bellyNeckTurn: -end.bellyTurn,
        bellyNeckEnds: -end.bellyEnds,
        bellyLegAt: asked.bellyLong,
        bellyHemX: bellyHalf + wider,
        bellyHemTurn: hemTurn,
        bellyLong: asked.bellyLong + 2 * high + behind,
      },
      adjustments: corner ? said(asked, corner, behind - wished) : [],
      stops: corner ? [] : cannot(chest, 2 * asked.neck),
    };
  },
);

/** Stands in where no corner is found, so that there is something to refuse. */
const plain = ({ chest, middle, ...asked }: CornerAsked): Corner => ({
  ...asked,
  off: 0,
  bellyHalf: middle,
  backHalf: chest - middle,
  bellyNeck: middle / 2,
  end: { backTurn: 0, bellyTurn: 0, backEnds: 0, bellyEnds: 0, lean: 0, backNeck: 1 },
});

/** A hole goes round the leg, eased, and lets the foot through. */
function legHole(wearer: Wearer): Mm {
  const leg = wearer.girth('front-leg-girth', 0, LEAST_LIMB_EASE_MM);
  const foot = wearer.of('foot-girth');
  const passes = wearer.traits.stuffing === 'firm' ? foot + FIRM_FOOT_MM : foot * wearer.softPass;
  return Math.max(leg, wearer.of('front-leg-girth') * (1 + LEG_EASE), passes);
}

/** Less than this is no news to the maker, mm. */
const UNSAID_MM = 1;

function said(asked: CornerAsked, { neck, backLong }: Corner, behind: Mm): Adjustment[] {
  const rows: readonly (readonly [string, Mm, readonly MeasureId[]])[] = [
    ['coat-neck-wider', 2 * (neck - asked.neck), ['neck-girth', ...CORNER.slice(0, 2)]],
    ['coat-legs-level', backLong - asked.backLong, CORNER.slice(0, 2)],
    ['coat-under-length', behind, ['under-length', 'back-length']],
  ];
  return rows.flatMap(([code, by, check]) =>
    Math.abs(by) > UNSAID_MM ? [{ code, by: Math.abs(by), because: 'coat-corner', check: [...check] }] : [],
  );
}

/** No neck corner: the simple coat would suit. */
function cannot(chest: Mm, neck: Mm): Flag[] {
  return [
    { code: 'coat-corner-not-drawn', severity: 'impossible', measures: [...CORNER], values: { chest, neck } },
    { code: 'wears-coat', severity: 'note', measures: [], values: {} },
  ];
}
