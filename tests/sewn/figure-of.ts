import type { Body } from '../../app/body';
import type { Figure } from './figure';
import { uprightFigure } from './upright-body';

/** The body a garment is tried on. */
export function figureOf(body: Body): Figure {
  return uprightFigure(body);
}
