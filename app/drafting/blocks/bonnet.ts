import { arc, line, point } from '../geometry';
import { block } from './block';

/**
 * Half of what goes over the head from ear to ear, beside its fold at the top; x right from it, y down from the edge round the
 * face. Sizes in mm: `bonnetHalf` down to the neck, `bonnetDeep` from the face back. An ear comes through a slit a third of the way back,
 * `earFrom` the fold and `earLong` long; a strap of `strapWidth` is stitched on at the corner of face and neck.
 */
export const bonnetFront = block({
  sizes: ['bonnetHalf', 'bonnetDeep', 'strapWidth'],
  optional: ['earFrom', 'earLong'],
  edges: ['face', 'neck', 'back', 'centre'],
  lines: ['ear', 'strap'],
  draw: ({ bonnetHalf, bonnetDeep, strapWidth, earFrom, earLong }) => {
    const middle = bonnetDeep * EAR_AT;
    const [near, beside] = [
      STRAP_FROM_FACE * bonnetDeep,
      bonnetHalf - Math.min(STRAP_INSIDE_MM, bonnetHalf * MOST_INSIDE),
    ];
    return {
      edges: {
        face: [line(point(0, 0), point(bonnetHalf, 0))],
        neck: [line(point(bonnetHalf, 0), point(bonnetHalf, bonnetDeep))],
        back: [line(point(bonnetHalf, bonnetDeep), point(0, bonnetDeep))],
        centre: [line(point(0, bonnetDeep), point(0, 0))],
      },
      lines: {
        strap: [line(point(beside, near), point(beside, near + strapWidth))],
        ...(earFrom !== null && earLong !== null
          ? { ear: [line(point(earFrom, middle), point(earFrom + earLong, middle))] }
          : {}),
      },
    };
  },
});

/** Ears stand this share of the depth behind the face's edge: so much behind them again goes round to the back (geometry of a ball). */
const EAR_AT = 0.35;
/** A strap is stitched on so far behind the face's edge, of the depth, and so far above the neck's, mm, or of a tiny one this share. */
const STRAP_FROM_FACE = 0.12;
const STRAP_INSIDE_MM = 6;
const MOST_INSIDE = 0.2;

/** Half of a bonnet's back beside its fold: straight up from the neck by `bonnetUp`, then round; as wide as its radius `bonnetBack`, mm. */
export const bonnetBack = block({
  sizes: ['bonnetBack', 'bonnetUp'],
  edges: ['crown', 'neck', 'centre'],
  draw: ({ bonnetBack: radius, bonnetUp }) => {
    const low = radius + bonnetUp;
    return {
      edges: {
        crown: [...arc(point(0, radius), radius, -Math.PI / 2, 0), line(point(radius, radius), point(radius, low))],
        neck: [line(point(radius, low), point(0, low))],
        centre: [line(point(0, low), point(0, 0))],
      },
      lines: {},
    };
  },
});
