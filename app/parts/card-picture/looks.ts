import type { Figure, Look } from '../../measuring';
import { COLOURS, type Shape } from './drawing';

type Ink = Pick<Shape, 'fill' | 'line' | 'opacity'>;

const outlined = (fill: string, width: number): Ink => ({ fill, line: { colour: COLOURS.ink, width } });
const drawn = (width: number, dash?: readonly number[]): Ink => ({
  line: { colour: COLOURS.ink, width, ...(dash && { dash }) },
});

/** What `figure.css` says of each look, by day. What the maker put on the toy is left out of a card. */
const inks: Partial<Record<Look, Ink>> = {
  ground: { fill: COLOURS.line, opacity: 0.6 },
  fur: outlined('#e7d3b4', 2.4),
  'fur-deep': outlined('#d9bf98', 2.4),
  'fur-pale': outlined('#f6ead3', 1.8),
  shade: { fill: '#d9bf98', opacity: 0.75 },
  edge: drawn(2.4),
  blush: { fill: '#e9b9a6' },
  ink: { fill: COLOURS.ink },
  glint: { fill: COLOURS.sheet },
  line: drawn(2.2),
  fine: drawn(1.8),
  seam: { ...drawn(1.4, [4, 5]), opacity: 0.55 },
};

/** The toy of a figure, its frame's corner at `at`. */
export function toyShapes(figure: Figure, at: readonly [number, number], scale: number): Shape[] {
  return figure.shapes.flatMap(({ layer, look, path }) => {
    const ink = inks[look];
    return layer === 'marks' || !ink ? [] : [{ is: 'shape', path, at, scale, ...ink }];
  });
}
