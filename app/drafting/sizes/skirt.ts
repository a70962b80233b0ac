import type { Mm } from '../../body';
import { type Cloth, GATHERS_UP_TO_MM } from './cloths';
import type { Made, SizeMaker, Wearer } from './wearer';

/** Gathers take twice the finished width in thin cloth, 1.5 times up to 1 mm (textbooks: two to three times; practice). */
const GATHERS = { thin: 2, upToMm: 0.4, thick: 1.5 } as const;
/** Pleats that meet take three times the finished width (textbooks: 50 cm finished = 150 cm). */
const PLEATS = 3;
/** A pleat is never narrower, nor, where it can be helped, wider than this share of half the front. */
const NARROWEST_PLEAT_MM = 8;
const USUAL_PLEAT_MM = 18;
/** Each tier gathers on to the one above by this much. */
const TIER_GATHERS = 1.5;
export const TIERS = 3;
/** A cut on the round gives on the bias: drafted this much small, stay-stitched (common practice; under the 3 % eased). */
const BIAS_SMALLER = 0.972;
/** An A-line hem over its waist. */
const A_LINE_HEM = 1.45;
/** An elastic waist is cut to pass the hip, and at least this much wider than the waist. */
const ELASTIC_WIDER = 1.5;
const BAND_HEIGHT_MM = 12;
const TWO_SEAMS = 2;
const LEAST_WAIST_EASE_MM = 4;
const LEAST_LENGTH_OVER_HEM_MM = 10;

/** A skirt by quarters: widths at the waist and hem, length, pleats, tiers, and the band it hangs from. */
export const skirtSizes: SizeMaker = (wearer): Made => {
  const style = String(wearer.choices.skirt);
  const waist = wearer.girth('waist-girth', TWO_SEAMS, LEAST_WAIST_EASE_MM);
  const hip = wearer.girth('hip-girth', TWO_SEAMS);
  const length = Math.max(wearer.of('waist-to-hem'), wearer.hem + LEAST_LENGTH_OVER_HEM_MM);
  const tiers = style === 'tiers' ? TIERS : 1;
  const full = ['gathered', 'tiers', 'elastic'].includes(style) ? hip : 0;
  const top = Math.max(waist * topShare(style, wearer), full);
  return {
    sizes: {
      waist,
      hip,
      skirtTop: top / 4,
      skirtRatio: top / waist,
      skirtHem: hemOf(style, top, hip, length) / 4,
      skirtLength: length / tiers,
      skirtOpen:
        style === 'elastic' || wearer.choices.opening === 'none' ? 0 : openLength(wearer, waist, length / tiers),
      tier2: (top * TIER_GATHERS) / 4,
      tier3: (top * TIER_GATHERS ** 2) / 4,
      pleats: pleatsIn(waist / 4),
      bandHalf: waist / 2,
      waistbandHeight: BAND_HEIGHT_MM,
    },
  };
};

function topShare(style: string, wearer: Wearer): number {
  if (style === 'gathered' || style === 'tiers') return gathers(wearer.cloth);
  if (style === 'box' || style === 'knife') return PLEATS;
  if (style === 'half-circle' || style === 'circle') return BIAS_SMALLER;
  return style === 'elastic' ? ELASTIC_WIDER : 1;
}

/** How much fuller cloth of a thickness is cut to be gathered. */
export function gathers(cloth: Cloth): number {
  return cloth.thickness <= GATHERS.upToMm ? GATHERS.thin : GATHERS.thick;
}

/** Cloth too thick to gather well. */
export function tooThick(cloth: Cloth): boolean {
  return cloth.thickness > GATHERS_UP_TO_MM;
}

/** Hem round, from the top round: circle skirts turn through π or 2π (radius = waist/2π·share: geometry). */
function hemOf(style: string, top: Mm, hip: Mm, length: Mm): Mm {
  if (style === 'half-circle') return top + Math.PI * length;
  if (style === 'circle') return top + 2 * Math.PI * length;
  return style === 'a-line' ? Math.max(top * A_LINE_HEM, hip * 1.05) : top;
}

/** The back opens far enough for the hips to pass the waist, and a hand the opening. */
function openLength(wearer: Wearer, waist: Mm, length: Mm): Mm {
  const needed = Math.max(wearer.of('hip-girth') - waist, 0) / 2 + 10;
  return Math.min(Math.max(needed, length * 0.3), length * 0.7);
}

/** Pleats in a quarter of the waist: a whole number, so that they end evenly at the centre and the side. */
function pleatsIn(quarter: Mm): number {
  const most = Math.max(Math.floor(quarter / NARROWEST_PLEAT_MM), 1);
  return Math.min(Math.max(Math.round(quarter / USUAL_PLEAT_MM), 2), most);
}
