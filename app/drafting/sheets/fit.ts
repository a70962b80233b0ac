import { rotate } from '../geometry';
import { ROUNDING_MM } from '../packing';
import { type Figure, type Fitting, fitting, type Turned, turnFigure } from './figure';

/** Quarter turns keep text and grain upright or level; other angles are tried only where none of them fits. */
const QUARTERS = [0, 1, 2, 3].map((quarter) => (quarter * Math.PI) / 2);

/** Slants are tried this finely: half a degree, over half a turn. */
const SLANT_STEP = Math.PI / 360;

/**
 * A figure turned every way that fits a box of that size; none where it must be tiled. Room for a label beside it is
 * given up where it does not fit with it.
 */
export function turnsThatFit(figure: Figure, width: number, height: number): readonly Fitting[] {
  const turns = turnsWithRoom(figure, width, height);
  if (turns.length > 0 || !figure.labelBeside) return turns;
  return turnsWithRoom({ ...figure, labelBeside: undefined }, width, height);
}

function turnsWithRoom(figure: Figure, width: number, height: number): readonly Fitting[] {
  const quarters = QUARTERS.map((turn) => turnFigure(figure, turn)).filter((turned) => fits(turned, width, height));
  if (quarters.length > 0) return quarters.map(fitting);
  for (let turn = SLANT_STEP; turn < Math.PI; turn += SLANT_STEP) {
    const box = turnedBox(figure, turn);
    if (box.width > width || box.height > height) continue;
    const turned = turnFigure(figure, turn);
    if (fits(turned, width, height)) return [fitting(turned)];
  }
  return [];
}

function fits({ rows }: Turned, width: number, height: number): boolean {
  return rows.width <= width + ROUNDING_MM && rows.height <= height + ROUNDING_MM;
}

function turnedBox(figure: Figure, turn: number): { readonly width: number; readonly height: number } {
  const points = figure.outline.map((p) => rotate(p, turn));
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}
