import type { Block } from '../garments/garment';
import { line, type Path, point } from '../geometry';
import { flare } from './flare';

/**
 * A straight skirt piece with its pleat lines, from the top down a third of the way. A knife pleat shows a third of the
 * cloth it takes; a box pleat is two knife pleats folded away from each other. Folds are numbered in the order they are
 * laid, from the centre out: `fold-n` comes to lie on `place-n`. `pleats` are knife pleats a piece; `box` is 1 or 0.
 */
export const pleated: Block = {
  sizes: [...flare.sizes, 'pleats', 'box'],
  draw: (sizes) => {
    const { flareTop = 0, flareHeight = 0, pleats = 1, box = 0 } = sizes;
    const deep = flareTop / pleats / 3;
    const lines: Record<string, Path> = {};
    const upright = (x: number): Path => [line(point(x, 0), point(x, flareHeight / 3))];
    for (let n = 0; n < pleats; n++) {
      const from = 3 * deep * n;
      const away = box === 1 && n % 2 === 1;
      lines[`fold-${n + 1}`] = upright(away ? from + 2 * deep : from + deep);
      lines[`place-${n + 1}`] = upright(away ? from + NEAR_MM : from + 3 * deep - NEAR_MM);
    }
    return { edges: flare.draw(sizes).edges, lines };
  },
};

/** Lines stay this far inside the piece's own edges, mm: the last fold lands a thread's width before the seam. */
const NEAR_MM = 0.5;
