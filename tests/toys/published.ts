import { type Card, type MeasureId, MM_PER_INCH, type Traits } from '../../app/body';

type Row = {
  readonly name: string;
  readonly unit: number;
  readonly traits: Partial<Traits>;
  readonly readings: Partial<Record<MeasureId, number>>;
};

const CM = 10;
const baby: Partial<Traits> = { posture: 'sits', head: 'firm' };

/** Toys whose measures someone published: facts to check against, not constants to fit. */
const rows: readonly Row[] = [
  {
    // "18\" Doll Clothes, part 1", stitchwhisperdesigns.com, 2013-07-18: cloth trunk, firm limbs.
    name: 'Play doll, 18 in',
    unit: MM_PER_INCH,
    traits: { posture: 'stands', head: 'firm' },
    readings: {
      'head-girth': 12,
      'neck-girth': 6,
      'chest-girth': 11.5,
      'waist-girth': 11,
      'hip-girth': 13,
      'across-shoulders': 5,
      'armhole-depth': 2,
      'upper-arm-girth': 4.5,
      'back-body-length': 8,
      'arm-length': 5.5,
      'underarm-length': 3.5,
      'waist-to-hem': 6,
    },
  },
  // "Guidelines on various size baby dolls", dollclothessuperstore.com: averages.
  {
    name: 'Baby doll, 19 to 23 in',
    unit: MM_PER_INCH,
    traits: baby,
    readings: { 'head-girth': 15, 'neck-girth': 8.5, 'chest-girth': 16.5, 'waist-girth': 16.5, 'hip-girth': 17.5 },
  },
  {
    name: 'Baby doll, 14 to 16 in',
    unit: MM_PER_INCH,
    traits: baby,
    readings: { 'head-girth': 12.25, 'neck-girth': 8, 'chest-girth': 13, 'waist-girth': 12.5, 'hip-girth': 13 },
  },
  {
    name: 'Baby doll, 12 in',
    unit: MM_PER_INCH,
    traits: baby,
    readings: { 'head-girth': 11.75, 'neck-girth': 7, 'chest-girth': 12, 'waist-girth': 11, 'hip-girth': 11.5 },
  },
  {
    // Diary entry of 2012-08-12, happybirth.hatenadiary.com: limbs set on its sides.
    name: 'Plush bear',
    unit: CM,
    traits: { arms: 'out', posture: 'sits', ears: 'top' },
    readings: {
      'head-girth': 35,
      'neck-girth': 24,
      'chest-girth': 39,
      'waist-girth': 39,
      'across-shoulders': 10,
      'back-body-length': 21,
      'arm-length': 24,
    },
  },
];

export const published: readonly Card[] = rows.map(({ name, unit, traits, readings }) => ({
  format: 'hemling-card',
  version: 1,
  toy: { name, body: 'upright', traits },
  unit: 'cm',
  taken: '2026-11-20',
  note: '',
  readings: Object.fromEntries(Object.entries(readings).map(([id, length]) => [id, [length * unit]])),
}));
