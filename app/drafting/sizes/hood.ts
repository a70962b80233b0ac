import type { Made, SizeMaker } from './wearer';

/** Width of the strip of a three-part hood, as a share of the head's girth, and of that at the nape (common practice). */
const STRIP_SHARE = 0.18;
const NAPE_SHARE = 0.6;
/** A little more than half the face edge, so that the hood's edge frames the face (common practice, no source). */
const LEAST_FACE_EASE_MM = 6;

/** A hood over the head: face edge, depth and crown eased; strip widths for three parts. */
export const hoodSizes: SizeMaker = (wearer): Made => {
  const face = wearer.surface('face-edge', LEAST_FACE_EASE_MM);
  const three = wearer.choices.hood === 'three';
  const strip = three ? Math.min(wearer.of('head-girth') * STRIP_SHARE, face * 0.4) : 0;
  return {
    sizes: {
      hoodFace: face,
      hoodFront: (face - strip) / 2,
      hoodDepth: wearer.surface('hood-depth'),
      hoodCrown: wearer.surface('crown-arc'),
      hoodRound: 0.6,
      napeRise: 0.12,
      stripFace: strip / 2,
      stripNape: (strip * NAPE_SHARE) / 2,
    },
  };
};
