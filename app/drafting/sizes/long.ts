import { maker } from './maker';
import { frontShare } from './trunk';

/** A nightshirt's hem over the hips, so that it swings (common practice, no source). */
const SWING = 1.12;
const TWO_SEAMS = 2;

/** A bodice let down past the hips to a wished hem below the waist, flaring from the chest. */
export const longSizes = maker(
  ['chest', 'tummy', 'hem', 'armholeDepth', 'armDrop', 'sideLevel', 'frontLength', 'backLength'],
  ['sideLevel', 'frontLength', 'backLength', 'hem', 'hemShare'],
  (wearer, { chest, tummy, hem, armholeDepth, armDrop, sideLevel, frontLength, backLength }) => {
    const side = Math.max(wearer.of('underarm-to-waist') + wearer.of('waist-to-hem'), sideLevel - armholeDepth);
    const longer = armholeDepth + side - sideLevel;
    const widest = Math.max(wearer.girth('hip-girth', TWO_SEAMS), wearer.girth('body-girth', TWO_SEAMS)) * SWING;
    return {
      sizes: {
        sideLevel: sideLevel + longer,
        frontLength: frontLength + longer,
        backLength: Math.max(backLength, armDrop) + longer,
        hem: Math.max(widest, chest, tummy, hem),
        hemShare: frontShare(wearer),
      },
    };
  },
);
