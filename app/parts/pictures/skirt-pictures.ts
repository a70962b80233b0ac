import { cloth, deep, flared, line, type Picture, stitch, waistband } from './strokes';

const straight = cloth('M25 20 14 58h44L47 20z');

/** The skirts, each by what its hem and waist show. */
export const skirtPictures: Readonly<Record<string, Picture>> = {
  'skirt.gathered': [
    waistband,
    cloth('M25 20C21 34 15 46 11 56q6 5 10 1t10 2 10 0 10-2 10-1C57 46 51 34 47 20z'),
    line('M29 20l-2 9m7-9-1 10m6-10 1 10m5-10 2 9'),
  ],
  'skirt.knife': [waistband, straight, deep('M31 20l-5 38h4l4-38zM38 20v38h4l-1-38zM45 20l6 38h4l-7-38z')],
  'skirt.box': [waistband, straight, deep('M31 20l-6 38h3l5-38zM39 20l4 38h3l-5-38z'), line('M36 24v34')],
  'skirt.elastic': [
    cloth('M24 14q3 3 6 0 3 3 6 0 3 3 6 0 3 3 6 0l-1 8q-3-3-5 0-3-3-6 0-3-3-6 0-3-3-5 0z'),
    cloth('M25 22 15 58h42L47 22z'),
    line('M29 23l-1 7m7-7v7m7-7 1 7'),
  ],
  'skirt.a-line': [waistband, flared],
  'skirt.half-circle': [waistband, cloth('M25 20 9 52q27 14 54 0L47 20z'), line('M31 21l-7 34m17-34 7 34')],
  'skirt.circle': [
    waistband,
    cloth('M25 20 5 48q4 8 10 4t11 6 10 1 10-1 11-6 10-4L47 20z'),
    line('M29 21 15 52m18-31-7 37m17-37 14 31M39 21l7 37'),
  ],
  'skirt.tiers': [
    cloth('M26 14h20l3 14H23z'),
    cloth('M20 28h32l4 15H16z'),
    cloth('M13 43h46l4 16H9z'),
    stitch('M21 28h30M14 43h44'),
  ],
};
