/** One stroke of a small drawing, in a frame 72 wide and 72 high; `as` names how it is drawn. */
export type Stroke = { readonly as: 'cloth' | 'deep' | 'line' | 'stitch' | 'skin' | 'tape'; readonly d: string };
export type Picture = readonly Stroke[];

export const cloth = (d: string): Stroke => ({ as: 'cloth', d });
export const deep = (d: string): Stroke => ({ as: 'deep', d });
export const line = (d: string): Stroke => ({ as: 'line', d });
export const stitch = (d: string): Stroke => ({ as: 'stitch', d });
export const skin = (d: string): Stroke => ({ as: 'skin', d });
/** A bit of tape under a drawing: this one is measured out for the maker. */
export const measured: Stroke = { as: 'tape', d: 'M20 67h32' };

export const trunk = cloth('M26 24c4 4 16 4 20 0l4 36H22z');
export const longSleeves = cloth(
  'M26 24C18 28 12 38 8 49l8 4c3-6 6-11 9-14zM46 24c8 4 14 14 18 25l-8 4c-3-6-6-11-9-14z',
);
export const shortSleeves = cloth('M26 24c-6 2-10 7-13 12l8 6 4-4zM46 24c6 2 10 7 13 12l-8 6-4-4z');
export const puffedSleeves = cloth(
  'M26 24c-10-5-19 3-17 12 1 3 9 6 12 5l4-4zM46 24c10-5 19 3 17 12-1 3-9 6-12 5l-4-4z',
);
export const hood = cloth('M26 24C14 4 58 4 46 24c-4 4-16 4-20 0z');
export const face = deep('M29 23c-5-14 19-14 14 0-3 2-11 2-14 0z');
export const neckHole = deep('M26 24c4-5 16-5 20 0-4 4-16 4-20 0z');
export const waistband = cloth('M25 14h22v6H25z');
export const flared = cloth('M25 20 12 58q24 6 48 0L47 20z');
