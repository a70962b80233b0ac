import type { Mm } from '../../body';
import type { Skirts } from '../heads/choices';
import { gathers, meetingWidth } from './fullness';
import { maker } from './maker';
import type { Wearer } from './wearer';

/** What a pleat shows: this share of the waist, and never so narrow that its folds are under 8 mm deep (common practice, no source). */
const PLEAT = { knife: { share: 1 / 20, narrowest: 8 }, box: { share: 1 / 12, narrowest: 16 } } as const;
/** Each tier gathers on to the one above by this much. */
export const TIER_GATHERS = 1.5;
const TIERS = 3;
/** A cut on the round gives on the bias: drafted small by nearly all the cloth eases in, stay-stitched (common practice, no source). */
const BIAS_SHARE = 0.96;
/** An A-line hem over its waist. */
const A_LINE_HEM = 1.45;
/** An elastic waist is cut to pass the hip, and at least this much wider than the waist. */
const ELASTIC_WIDER = 1.5;
/** A waistband is this share of the waist high, within what can be sewn and worn (common practice, no source). */
const BAND_SHARE = 1 / 40;
const BAND_MM = { least: 8, most: 30 } as const;
const TWO_SEAMS = 2;
const LEAST_WAIST_EASE_MM = 4;
const LEAST_LENGTH_OVER_HEM_MM = 10;

/** A skirt by quarters: widths at the waist and hem, length, pleats, tiers, and the band it hangs from. */
export const skirtSizes = maker(
  [],
  [
    'waist',
    'hip',
    'skirtTop',
    'skirtRatio',
    'looseTop',
    'skirtHem',
    'skirtLength',
    'skirtOpen',
    'pleats',
    'bandHalf',
    'waistbandHeight',
  ],
  (wearer: Wearer<Skirts>) => {
    const style = wearer.choices.skirt;
    const waist = wearer.girth('waist-girth', TWO_SEAMS, LEAST_WAIST_EASE_MM);
    const hip = wearer.girth('hip-girth', TWO_SEAMS);
    const length = Math.max(wearer.of('waist-to-hem'), wearer.hem + LEAST_LENGTH_OVER_HEM_MM);
    const tiers = style === 'tiers' ? TIERS : 1;
    const full = style === 'gathered' || style === 'tiers' || style === 'elastic' ? hip : 0;
    const top = Math.max(waist * topShare(style, wearer), full);
    return {
      sizes: {
        waist,
        hip,
        skirtTop: top / 4,
        skirtRatio: top / waist,
        looseTop: Math.max(top, waist * ELASTIC_WIDER) / 4,
        skirtHem: hemOf(style, top, hip, length) / 4,
        skirtLength: length / tiers,
        skirtOpen: style === 'elastic' ? 0 : openLength(wearer, waist, length / tiers),
        pleats: pleatsIn(waist, style),
        bandHalf: waist / 2,
        waistbandHeight: Math.min(Math.max(waist * BAND_SHARE, BAND_MM.least), BAND_MM.most),
      },
    };
  },
);

type Style = Skirts['skirt'];

function topShare(style: Style, wearer: Wearer): number {
  if (style === 'gathered' || style === 'tiers') return gathers(wearer.cloth);
  if (style === 'box' || style === 'knife') return meetingWidth(1, 1);
  if (style === 'half-circle' || style === 'circle') return 1 / (1 + BIAS_SHARE * wearer.cloth.easesIn);
  return style === 'elastic' ? ELASTIC_WIDER : 1;
}

/** Hem round, from the top round: circle skirts turn through π or 2π (radius = waist/2π·share: geometry), and nothing flares more. */
function hemOf(style: Style, top: Mm, hip: Mm, length: Mm): Mm {
  const circle = top + 2 * Math.PI * length;
  if (style === 'half-circle') return top + Math.PI * length;
  if (style === 'circle') return circle;
  return style === 'a-line' ? Math.min(Math.max(top * A_LINE_HEM, hip * 1.05), circle) : top;
}

/** The back opens far enough for the hips to pass the waist, and a hand the opening. */
export function openLength(wearer: Pick<Wearer, 'of'>, waist: Mm, length: Mm): Mm {
  const needed = Math.max(wearer.of('hip-girth') - waist, 0) / 2 + 10;
  return Math.min(Math.max(needed, length * 0.3), length * 0.7);
}

/** Pleats in a quarter of the waist: a whole number, so that they end evenly at the centre and the side. */
function pleatsIn(waist: Mm, style: Style): number {
  const { share, narrowest } = style === 'box' ? PLEAT.box : PLEAT.knife;
  const most = Math.max(Math.floor(waist / 4 / narrowest), 1);
  return Math.min(Math.round(1 / 4 / share), most);
}
