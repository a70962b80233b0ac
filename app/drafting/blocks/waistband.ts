import { line, point } from '../geometry';
import { block } from './block';

/**
 * Half a straight band beside its fold, folded lengthwise when sewn; x right from the fold, y down. Sizes in mm:
 * `bandHalf` of the waist, `bandDeep` twice its finished height, `bandPast` how far each end laps past the opening.
 */
export const waistband = block({
  sizes: ['bandHalf', 'bandDeep', 'bandPast'],
  edges: ['top', 'top-end', 'side', 'bottom', 'centre'],
  lines: ['middle'],
  draw: ({ bandHalf, bandDeep, bandPast }) => {
    const end = bandHalf + bandPast;
    return {
      edges: {
        top: [line(point(0, 0), point(bandHalf, 0))],
        'top-end': [line(point(bandHalf, 0), point(end, 0))],
        side: [line(point(end, 0), point(end, bandDeep))],
        bottom: [line(point(end, bandDeep), point(0, bandDeep))],
        centre: [line(point(0, bandDeep), point(0, 0))],
      },
      lines: { middle: [line(point(0, bandDeep / 2), point(end, bandDeep / 2))] },
    };
  },
});
