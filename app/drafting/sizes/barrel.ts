import type { Flag, MeasureId, Mm } from '../../body';
import { type NeckAsked, type NeckEnd, neckEnd } from '../curves/barrel';
import type { Adjustment } from '../draft-types';
import { easedNeck, LEAST_LIMB_EASE_MM } from './ease';
import { maker } from './maker';
import type { Wearer } from './wearer';

/** Leg holes are this much larger than the leg at least, over its fit (common practice, no source). */
const LEG_EASE = 0.12;
const FIRM_FOOT_MM = 5;
/** Between the holes, and from each to the spine, at least so much cloth is left, mm: less would tear. */
const LEAST_BETWEEN_MM = 8;
const LEAST_BACK_MM = 12;
/** Half of the belly's neck edge, mm, and as shares of its width at the legs: narrower it cannot be bound, wider it is no chest. */
const LEAST_BELLY_NECK_MM = 8;
const BELLY_NECK = { least: 0.25, most: 0.95 } as const;
/** Where no corner is found at first: other shares for the belly's neck edge; the neck wider by these shares, and the way from nape to legs other by these. */
const BELLY_NECKS: readonly number[] = [0.4, 0.6, 0.8];
const NECKS: readonly number[] = [1, 1.04, 1.08];
const NAPES: readonly number[] = [1, 0.95, 1.05, 0.9, 1.1];
/** Behind the legs at least so much is left for a side seam, mm; a coat ends so far before the tail. */
const LEAST_BEHIND_MM = 12;
const BEFORE_TAIL_MM = 5;
/** A hem turns no farther from fold to corner, radians (50°); a wished length underneath gives way. */
const MOST_HEM_TURN = 0.87;

const CORNER: readonly MeasureId[] = ['nape-to-leg', 'neck-to-leg', 'neck-girth', 'chest-girth', 'leg-spread'];

/**
 * A coat round a body on four legs, halves beside the folds of back and belly. The belly is as wide as the space between the legs and
 * half a hole on either side, so that the seam crosses each hole in its middle; the back has the rest of the chest. The neck
 * corner is solved; where it is not, the neck is let out and the legs' level moved a little, and that is said.
 */
export const barrelSizes = maker(
  [],
  [
    'neck',
    'chest',
    'belly',
    'legRadius',
    'lean',
    'backLegHalf',
    'backNeckX',
    'backNeckTurn',
    'backLegAt',
    'backHemX',
    'backHemTurn',
    'backLong',
    'bellyLegHalf',
    'bellyNeckX',
    'bellyNeckTurn',
    'bellyLegAt',
    'bellyHemX',
    'bellyHemTurn',
    'bellyLong',
  ],
  (wearer) => {
    const chest = wearer.girth('chest-girth', 2);
    const belly = wearer.girth('belly-girth', 2);
    const radius = legHole(wearer) / (2 * Math.PI);
    const bellyHalf = Math.max(wearer.of('leg-spread') / 2, LEAST_BETWEEN_MM / 2) + radius;
    const backHalf = chest / 2 - bellyHalf;
    const asked: NeckAsked = {
      neck: easedNeck(wearer.of('neck-girth'), wearer.cloth) / 2,
      backHalf,
      bellyHalf,
      bellyNeck: 0,
      backLong: wearer.of('nape-to-leg'),
      bellyLong: wearer.of('neck-to-leg'),
    };
    const corner = solved(asked);
    const { neck, backLong, bellyNeck, end } = corner ?? { ...asked, bellyNeck: bellyHalf / 2, end: PLAIN };
    const hole = { from: backLong, to: backLong + 2 * radius };
    const long = Math.max(wearer.of('back-length') - BEFORE_TAIL_MM, hole.to + LEAST_BEHIND_MM);
    // What lies before the hind legs grows towards the belly; of a belly larger than the chest it is as wide as that.
    const wished = Math.max(wearer.of('under-length'), LEAST_BEHIND_MM);
    const share = belly > chest ? 1 : Math.min(1, (radius + wished) / Math.max(long - hole.from - radius, 1));
    const hem = chest + (belly - chest) * share;
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
        chest,
        belly: hem,
        legRadius: radius,
        lean: end.lean,
        backLegHalf: backHalf,
        backNeckX: end.backNeck,
        backNeckTurn: end.backTurn,
        backLegAt: backLong,
        backHemX: backHalf + wider,
        backHemTurn: -hemTurn,
        backLong: long,
        bellyLegHalf: bellyHalf,
        bellyNeckX: bellyNeck,
        bellyNeckTurn: -end.bellyTurn,
        bellyLegAt: asked.bellyLong,
        bellyHemX: bellyHalf + wider,
        bellyHemTurn: hemTurn,
        bellyLong: asked.bellyLong + 2 * radius + behind,
      },
      adjustments: corner ? said(asked, corner, behind - wished) : [],
      stops: corner && backHalf > radius + LEAST_BACK_MM ? [] : cannot(chest, 2 * asked.neck),
    };
  },
);

/** Stands in where no corner is found, so that there is something to refuse. */
const PLAIN: NeckEnd = { backTurn: 0, bellyTurn: 0, lean: 0, backNeck: 1 };

type Corner = { readonly neck: Mm; readonly backLong: Mm; readonly bellyNeck: Mm; readonly end: NeckEnd };

/** The corner with what has to give for it, as little as may be: neither, the level of the legs, the neck. */
function solved(asked: NeckAsked): Corner | null {
  const { bellyHalf } = asked;
  for (const wider of NECKS)
    for (const longer of NAPES) {
      const [neck, backLong] = [asked.neck * wider, asked.backLong * longer];
      // Both seams lean alike where the belly's edge gives up half of what the back's does.
      const even = bellyHalf - (asked.backHalf + bellyHalf - neck) / 2;
      for (const half of [even, ...BELLY_NECKS.map((share) => share * bellyHalf)]) {
        const least = Math.max(LEAST_BELLY_NECK_MM, BELLY_NECK.least * bellyHalf);
        const bellyNeck = Math.max(Math.min(half, BELLY_NECK.most * bellyHalf), least);
        const end = neckEnd({ ...asked, neck, backLong, bellyNeck });
        if (end) return { neck, backLong, bellyNeck, end };
      }
    }
  return null;
}

/** A hole goes round the leg, eased, and lets the foot through. */
function legHole(wearer: Wearer): Mm {
  const leg = wearer.girth('front-leg-girth', 0, LEAST_LIMB_EASE_MM);
  const foot = wearer.of('foot-girth');
  const passes = wearer.traits.stuffing === 'firm' ? foot + FIRM_FOOT_MM : foot * wearer.softPass;
  return Math.max(leg, wearer.of('front-leg-girth') * (1 + LEG_EASE), passes);
}

/** Less than this is no news to the maker, mm. */
const UNSAID_MM = 1;

function said(asked: NeckAsked, { neck, backLong }: Corner, behind: Mm): Adjustment[] {
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
