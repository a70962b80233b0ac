import type { Mm } from '../../body';
import { curvature, type Path } from '../geometry';

/** Hollow by less than this radius an edge gapes or pulls: it is stay-stitched, and its allowance snipped (common practice, no source). */
const HOLLOW_RADIUS_MM: Mm = 120;
const SAMPLES = 8;

/** Whether an edge of a clockwise ring curves into its piece. */
export function isHollow(path: Path): boolean {
  return path.some((curve) =>
    Array.from({ length: SAMPLES - 1 }, (_, index) => curvature(curve, (index + 1) / SAMPLES)).some(
      (bend) => bend < -1 / HOLLOW_RADIUS_MM,
    ),
  );
}

/** Whether it curves out of it as much: what is turned out then must be notched. */
export function isRound(path: Path): boolean {
  return path.some((curve) => {
    const bend = curve.kind === 'line' ? 0 : curvature(curve, 0.5);
    return Number.isFinite(bend) && bend > 1 / HOLLOW_RADIUS_MM;
  });
}
