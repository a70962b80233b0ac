import { MM_PER_INCH, type Mm, type Unit } from '../../body';

/** Widths that cloth is sold in, where it is measured in centimetres or in inches, mm (common practice, no source). */
const SOLD: Readonly<Record<Unit, readonly Mm[]>> = {
  cm: [1100, 1400, 1500],
  in: [44, 54, 60].map((inches) => inches * MM_PER_INCH),
};

export const soldWidths = (unit: Unit): readonly Mm[] => SOLD[unit];

/** No cloth is narrower or wider, and no scrap smaller, mm. */
export const LEAST_MM = 50;
export const MOST_MM = 3200;

/** A scrap to begin with: a fat quarter, nearly. */
export const usualScrap = (unit: Unit): { readonly long: Mm; readonly wide: Mm } =>
  unit === 'cm' ? { long: 500, wide: 400 } : { long: 20 * MM_PER_INCH, wide: 16 * MM_PER_INCH };
