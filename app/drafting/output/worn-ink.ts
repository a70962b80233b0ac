import { type Point, point } from '../geometry';
import type { Box } from '../packing';
import { type DrawnFigure, figureInk, type InkLooks } from './figure-ink';
import type { Ink } from './ink';

/** The toy in the finished garment, as whoever knows its figure draws it. */
export type WornPicture = DrawnFigure;

/** What is not named is a line too fine for paper this small. */
const LOOKS: InkLooks = {
  fur: { grey: 1, pen: 'rule' },
  'fur-deep': { grey: 1, pen: 'rule' },
  'fur-pale': { grey: 1, pen: 'rule' },
  cloth: { grey: 0.86, pen: 'rule' },
  'cloth-deep': { grey: 0.76, pen: 'rule' },
  ink: { grey: 0, pen: 'rule' },
  edge: { pen: 'rule' },
  'cloth-line': { pen: 'rule' },
};

/** The picture within a box, as large as it goes, at its right end. */
export function wornInk(picture: WornPicture, box: Box): readonly Ink[] {
  const { width, height } = picture.frame;
  const scale = Math.min(box.width / width, box.height / height);
  const to = ({ x, y }: Point): Point =>
    point(box.x + box.width - (width - x) * scale, box.y + (box.height - height * scale) / 2 + y * scale);
  return figureInk(picture, LOOKS, to);
}
