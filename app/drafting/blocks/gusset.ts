import { line, point } from '../geometry';
import { block } from './block';

/**
 * Half a diamond between the legs, beside its fold, which lies along the crotch seam; x right from the fold, y down from its
 * front point. Sizes in mm: `gussetLength` along the fold, `gussetSide` each of the sides that the inseams are sewn to.
 */
export const gusset = block({
  sizes: ['gussetLength', 'gussetSide'],
  edges: ['front', 'back', 'centre'],
  draw: ({ gussetLength, gussetSide }) => {
    const half = gussetLength / 2;
    const out = Math.sqrt(Math.max(gussetSide ** 2 - half ** 2, 0));
    const [front, side, back] = [point(0, 0), point(out, half), point(0, gussetLength)];
    return { edges: { front: [line(front, side)], back: [line(side, back)], centre: [line(back, front)] }, lines: {} };
  },
});
