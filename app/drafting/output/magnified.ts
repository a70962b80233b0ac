import type { Mm } from '../../body';
import { type Point, transformPath } from '../geometry';
import { type Ink, SMALLEST_PT, smallestOf, type TextWidth } from './ink';

/** So much larger the smallest words are in a print than in the usual one. */
export const magnifiedBy = (widthOf: TextWidth): number => smallestOf(widthOf) / SMALLEST_PT;

/** Ink drawn from 0, 0 in the usual print, made `by` times as large and laid at a place: what kept clear of what still does. */
export function magnified(ink: readonly Ink[], by: number, at: { readonly x: Mm; readonly y: Mm }): readonly Ink[] {
  const to = ({ x, y }: Point): Point => ({ x: at.x + x * by, y: at.y + y * by });
  return ink.map((each) =>
    each.kind === 'words'
      ? { ...each, at: to(each.at), size: each.size * by }
      : { ...each, path: transformPath(each.path, to) },
  );
}

/** Widths for what will be magnified: the letters as they are, in the usual print. */
export function usualWidth(widthOf: TextWidth): TextWidth {
  const own = (text: string, size: number, bold: boolean) => widthOf(text, size, bold);
  return Object.assign(own, { direction: widthOf.direction });
}
