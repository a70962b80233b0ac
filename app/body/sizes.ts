/**
 * The finished sizes a draft is made of, each one number in mm (shares are plain ratios). Blocks take only these;
 * corrections learnt from trying on are stored by these names, so a name once used stays for ever.
 */
export const sizeIds = [
  'neck',
  'neckHalfWidth',
  'frontNeckDrop',
  'backNeckDrop',
  'chest',
  'tummy',
  'hem',
  'frontLength',
  'backLength',
  'sideLength',
  'shoulder',
  'armholeDepth',
  'armhole',
  'bicep',
  'cuff',
  'sleeveLength',
  'underarmLength',
  'capHeight',
  'hoodFront',
  'hoodDepth',
  'hoodCrown',
  'hoodNeck',
  'inset',
  'sideLevel',
  'waist',
  'skirtTop',
  'skirtLength',
  'hoodFace',
  'capeNeck',
  'capeHem',
  'capeLength',
] as const;

export type SizeId = (typeof sizeIds)[number];
