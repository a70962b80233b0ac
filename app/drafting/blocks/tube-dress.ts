import { cubic, hermite, line, point, scale, subtract } from '../geometry';
import { block } from './block';

/** Handles of the armhole, of its depth and of what it cuts in: it comes down steep, and goes out square to the side. */
const DOWN = 0.55;
const OUT = 0.9;

/**
 * Half a front or back of a dress beside its fold; x right from it, y down from the top, which is gathered on an elastic. Sizes in
 * mm: `dressTop` half the top, `dressHalf` at the underarm `dressArm` below, `dressHem` at the hem, `dressSide` down the side.
 */
export const tubeDress = block({
  sizes: ['dressTop', 'dressHalf', 'dressArm', 'dressHem', 'dressSide'],
  edges: ['top', 'armhole', 'side', 'hem', 'centre'],
  draw: ({ dressTop, dressHalf, dressArm, dressHem, dressSide }) => {
    const lean = Math.atan2(dressHem - dressHalf, dressSide);
    const underarm = point(dressHalf, dressArm);
    const down = point(Math.sin(lean), Math.cos(lean));
    const [corner, out] = [point(dressTop, 0), point(down.y, -down.x)];
    const hem = point(dressHalf + dressSide * down.x, dressArm + dressSide * down.y);
    const low = point(0, hem.y + hem.x * Math.tan(lean / 2));
    return {
      edges: {
        top: [line(point(0, 0), point(dressTop, 0))],
        armhole: [
          cubic(
            corner,
            point(dressTop, DOWN * dressArm),
            subtract(underarm, scale(out, OUT * (dressHalf - dressTop))),
            underarm,
          ),
        ],
        side: [line(underarm, hem)],
        hem: [hermite(hem, point(-down.y, down.x), low, point(-1, 0), 1 / 3, 1 / 3)],
        centre: [line(low, point(0, 0))],
      },
      lines: {},
    };
  },
});
