import { STITCHED_DOWN_MM } from '../curves/shares';
import { line, point } from '../geometry';
import { block } from './block';

/**
 * Half an apron beside its fold; x right from the centre line, y down from the middle of its top. Sizes in mm: `bibHalf` and
 * `apronHalf` half as wide at the top and from the waist on, `bibHigh` from the top to the waist, `apronLong` from there to
 * the hem, `strapWidth` of the strap at each corner. A pocket in the middle, where there is one: `pocketHalf` of its width,
 * `pocketHigh`, its top `pocketFrom` below the waist.
 */
export const apron = block({
  sizes: ['bibHalf', 'apronHalf', 'bibHigh', 'apronLong', 'strapWidth'],
  optional: ['pocketHalf', 'pocketHigh', 'pocketFrom'],
  edges: ['top', 'bib-side', 'side', 'bottom', 'centre'],
  lines: ['neck-strap', 'waist-strap', 'pocket-side', 'pocket-bottom'],
  draw: ({ bibHalf, apronHalf, bibHigh, apronLong, strapWidth, pocketHalf, pocketHigh, pocketFrom }) => {
    const low = bibHigh + apronLong;
    const within = Math.max(apronHalf - STITCHED_DOWN_MM, apronHalf / 2);
    const down = Math.min(STITCHED_DOWN_MM, bibHigh / 3);
    const right = bibHalf + ((apronHalf - bibHalf) * down) / bibHigh;
    const pocket =
      pocketHalf === null || pocketHigh === null || pocketFrom === null
        ? {}
        : {
            'pocket-side': [
              line(point(pocketHalf, bibHigh + pocketFrom), point(pocketHalf, bibHigh + pocketFrom + pocketHigh)),
            ],
            'pocket-bottom': [
              line(point(pocketHalf, bibHigh + pocketFrom + pocketHigh), point(0, bibHigh + pocketFrom + pocketHigh)),
            ],
          };
    return {
      edges: {
        top: [line(point(0, 0), point(bibHalf, 0))],
        'bib-side': [line(point(bibHalf, 0), point(apronHalf, bibHigh))],
        side: [line(point(apronHalf, bibHigh), point(apronHalf, low))],
        bottom: [line(point(apronHalf, low), point(0, low))],
        centre: [line(point(0, low), point(0, 0))],
      },
      lines: {
        'neck-strap': [line(point(right - strapWidth, down), point(right, down))],
        'waist-strap': [line(point(within, bibHigh), point(within, bibHigh + strapWidth))],
        ...pocket,
      },
    };
  },
});
