import type { Mm } from '../../body';
import { BIB_REACH } from '../curves/shares';
import { easedNeck } from './ease';
import { maker } from './maker';
import { PAST_CENTRE_MM } from './scale';
import type { Wearer } from './wearer';

/** A cape's hem stands off its neck by at least this much for each mm of its length: enough to hang in folds. */
const FULLNESS = 2.4;
/** Over arms held out it lies level at both sides, and hangs before and behind them: there and back for each (geometry); with less it would ride up behind. */
const OVER_ARMS_OUT = 4;
/** Wider than this angle, radians, the fronts would lie in each other's way on the cloth: the rest is gathered at the neck. */
const WIDEST = 4.4;
/** What a cape's hem passes over. */
const WIDEST_OF = { upright: 'over-arms-girth', round: 'body-girth' } as const;
export const OVER_ARMS_EASE_MM = 10;

/** No neck is cut tighter than this radius: there must be room for its allowance. */
const TIGHTEST_MM = 12;

/** A cape: a ring sector round the neck whose hem passes over body and arms together (arc = radius × angle: geometry). */
export const capeSizes = maker(
  [],
  ['neck', 'neckLower', 'capeNeck', 'capeHem', 'capeFront', 'capeLength'],
  (wearer) => {
    if (wearer.kind === 'four-legged') return onFourLegs(wearer);
    const length = Math.max(wearer.of('cape-length'), wearer.hem + 10);
    const neck = easedNeck(wearer.of('neck-girth'), wearer.cloth);
    const hem = Math.max(wearer.of(WIDEST_OF[wearer.kind]) + OVER_ARMS_EASE_MM, neck + fullness(wearer) * length);
    const top: Mm = Math.max(neck, hem - WIDEST * length, TIGHTEST_MM * WIDEST);
    return {
      sizes: { neck, neckLower: 0, capeNeck: top / 2, capeHem: hem / 2, capeFront: length, capeLength: length },
    };
  },
);

/** On four legs the neck is half a ring: both fronts lie in one line, and the sides run back along the body (common practice, no source). */
const HALF_RING = Math.PI;
/** From the spine round a quarter of a round trunk and straight down to the level of its belly: a quarter, and a radius (geometry). */
const TO_BELLY = 1 / 4 + 1 / (2 * Math.PI);

/**
 * As long behind as wished, but only as long in front, and so as wide, as hangs to the level of the belly: a hem as far from the
 * neck all round would trail beside the legs, and be trodden on before them.
 */
function onFourLegs(wearer: Wearer) {
  const least = wearer.hem + 10;
  const length = Math.max(wearer.of('cape-length'), least);
  const neck = easedNeck(wearer.of('neck-girth'), wearer.cloth);
  const top = Math.max(neck, TIGHTEST_MM * HALF_RING);
  const front = Math.min(Math.max(TO_BELLY * wearer.of('chest-girth') - top / HALF_RING, least), length);
  const hem = top + HALF_RING * front;
  return { sizes: { neck, neckLower: 0, capeNeck: top / 2, capeHem: hem / 2, capeFront: front, capeLength: length } };
}

const fullness = ({ kind, traits }: Wearer): number =>
  kind === 'upright' && (traits.arms === 'out' || traits.arms === 'up') ? OVER_ARMS_OUT : FULLNESS;

/** A bib's arms lap behind the neck; they are this share of the neck wide, within limits (common practice, no source). */
const ARM = { share: 0.09, least: 16, most: 28 } as const;

/** A bib: arms round the neck that lap behind it, and a front as long as wished. */
export const bibSizes = maker([], ['neck', 'bibNeck', 'bibLength', 'bibArm'], (wearer) => {
  const neck = easedNeck(wearer.of('neck-girth'), wearer.cloth);
  const bibArm = Math.min(Math.max(neck * ARM.share, ARM.least), ARM.most);
  return {
    sizes: {
      neck,
      bibNeck: Math.max(neck / 2 + PAST_CENTRE_MM[wearer.scale], TIGHTEST_MM * BIB_REACH),
      bibLength: Math.max(wearer.of('bib-length'), bibArm),
      bibArm,
    },
  };
});

/** A scarf is about this wide for its length (common practice, no source), never under this. */
const SCARF_WIDTH = 0.11;
const NARROWEST_SCARF_MM = 20;

export const scarfSizes = maker([], ['scarfLong', 'scarfHalf'], (wearer) => {
  const length = wearer.of('scarf-length');
  return { sizes: { scarfLong: length, scarfHalf: Math.max(length * SCARF_WIDTH, NARROWEST_SCARF_MM) / 2 } };
});
