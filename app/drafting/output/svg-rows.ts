import type { Mm } from '../../body';
import { type Figure, type Turned, turnFigure } from '../sheets/figure';

/** Between pieces and round them all, mm. */
const BETWEEN_MM = 10;

/** Rows of pieces are no wider, mm: about what projectors and cutting mats take. */
const WIDEST_ROW_MM = 1000;

/** A figure with the top left corner of its rows, on whole mm: room for words is looked for by the mm. */
export type Place = { readonly figure: Figure; readonly turned: Turned; readonly x: Mm; readonly y: Mm };

/** Pieces from left to right, in rows. */
export function inRows(figures: readonly Figure[]): {
  readonly places: readonly Place[];
  readonly width: Mm;
  readonly height: Mm;
} {
  const places: Place[] = [];
  let [x, y, tallest, widest] = [BETWEEN_MM, BETWEEN_MM, 0, 0];
  for (const figure of figures) {
    const turned = turnFigure(figure, 0);
    const [width, height] = [Math.ceil(turned.rows.width), Math.ceil(turned.rows.height)];
    if (x > BETWEEN_MM && x + width + BETWEEN_MM > WIDEST_ROW_MM) {
      [x, y, tallest] = [BETWEEN_MM, y + tallest + BETWEEN_MM, 0];
    }
    places.push({ figure, turned, x, y });
    x += width + BETWEEN_MM;
    tallest = Math.max(tallest, height);
    widest = Math.max(widest, x);
  }
  return { places, width: widest, height: y + tallest + BETWEEN_MM };
}
