import { line, type Path, point } from '../geometry';
import { block } from './block';
import { flare } from './flare';

/** Folds are drawn this share of the way down, and the arrow from a fold to its place this share of that. */
const DRAWN_SHARE = 1 / 3;
const ARROW_SHARE = 0.4;
/** Half the width and the length of an arrow's head, mm; small pleats have smaller ones. */
const HEAD = { half: 1.2, long: 3 } as const;

/**
 * A straight skirt piece with its pleats, from the top down a third of the way: folds and the places they are laid on, numbered
 * from the centre out, and an arrow from each fold to its place; a place on the piece's own edge needs no line. Pleats meet: each takes three times what it shows (textbooks of dressmaking).
 * Knife pleats all turn towards the side; half of one shows beside the centre and half beside the side seam. Box pleats turn
 * both ways from their middles, and their folds meet on the centre line and on the side seam, so that both are hidden.
 * `pleats` are whole pleats a piece.
 */
export const pleated = (kind: 'knife' | 'box') =>
  block({
    sizes: [...flare.sizes, 'pleats'],
    optional: flare.optional,
    edges: flare.edges,
    lines: ['fold', 'lay', 'place'],
    draw: (sizes) => {
      const { flareTop, flareHeight, pleats } = sizes;
      const shown = flareTop / pleats / 3;
      const height = flareHeight * DRAWN_SHARE;
      const lines: Record<`${'fold' | 'lay' | 'place'}-${number}`, Path> = {};
      const laid = kind === 'box' ? boxFolds(pleats, shown) : knifeFolds(pleats, shown);
      const upright = (x: number): Path => [line(point(x, 0), point(x, height))];
      const places = laid
        .map(({ place }) => place)
        .filter(
          (x, at, all) => x > EDGE_MM && x < flareTop - EDGE_MM && !all.slice(0, at).some((each) => near(each, x)),
        );
      for (const [index, { fold, place }] of laid.entries()) {
        lines[`fold-${index + 1}`] = upright(fold);
        lines[`lay-${index + 1}`] = arrow(fold, place, height * ARROW_SHARE);
      }
      for (const [index, x] of places.entries()) lines[`place-${index + 1}`] = upright(x);
      return { edges: flare.draw(sizes).edges, lines };
    },
  });

/** Places this near are one, or the edge itself, mm. */
const EDGE_MM = 0.01;

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < EDGE_MM;
}

/** A fold and the place it is laid on, mm from the centre. */
type Laid = { readonly fold: number; readonly place: number };

function knifeFolds(pleats: number, shown: number): Laid[] {
  return Array.from({ length: pleats }, (_, n) => {
    const fold = shown * (3 * n + 0.5);
    return { fold, place: fold + 2 * shown };
  });
}

function boxFolds(pleats: number, shown: number): Laid[] {
  return Array.from({ length: pleats }, (_, n) => {
    const middle = shown * (3 * n + 1.5);
    return [
      { fold: middle - shown / 2, place: middle - 1.5 * shown },
      { fold: middle + shown / 2, place: middle + 1.5 * shown },
    ];
  }).flat();
}

/** Level, from a fold to its place; the head is drawn forth and back, so that it stays one line. */
function arrow(fold: number, place: number, y: number): Path {
  const along = Math.sign(place - fold);
  const long = Math.min(HEAD.long, Math.abs(place - fold) / 3);
  const half = (long * HEAD.half) / HEAD.long;
  const tip = point(place, y);
  const [above, below] = [point(place - along * long, y - half), point(place - along * long, y + half)];
  return [line(point(fold, y), tip), line(tip, above), line(above, tip), line(tip, below)];
}
