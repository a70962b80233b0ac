// Straight lengths in the card's plane.

import type { Known, Mm } from '../../body';
import { distance, subtract } from '../../body/point';
import { type Fit, slopesOf } from './fit';
import { solveLinear } from './linear';
import { GIVE_SPREADS, type SeenPlane } from './plane';
import type { Spot } from './space';
import { laidOn, type View } from './view';

/**
 * The straight distance between two points tapped in the plane (px from the picture's upper left), marked as from a
 * photo. Null where one lies beyond the plane's horizon. The give covers the taps and the camera; not a toy that bulges
 * out of the card's plane, which reads too large by its height over the camera's distance.
 */
export function distanceOn({ fits, middle, tap }: SeenPlane, first: Spot, second: Spot): Known | null {
  const [a, b] = [subtract(first, middle), subtract(second, middle)];
  const readings = fits.flatMap((fit) => {
    const value = distanceIn(fit.view, a, b);
    return value === null ? [] : [{ share: fit.share, value, variance: varianceOf(fit, a, b, tap) }];
  });
  if (readings.length < fits.length || readings.length === 0) return null;
  const value = readings.reduce((sum, each) => sum + each.share * each.value, 0);
  const variance = readings.reduce((sum, each) => sum + each.share * (each.variance + (each.value - value) ** 2), 0);
  return { value, from: 'photo', give: GIVE_SPREADS * Math.sqrt(variance) };
}

function distanceIn(view: View, a: Spot, b: Spot): Mm | null {
  const [one, other] = [laidOn(view, a), laidOn(view, b)];
  return one && other ? distance(one, other) : null;
}

/** First-order: what the view's looseness and the two taps' own misses do to the distance. */
function varianceOf(fit: Fit, a: Spot, b: Spot, tap: number): number {
  const read = (view: View, p = a, q = b) => distanceIn(view, p, q) ?? 0;
  const slopes = slopesOf((view) => [read(view)], fit.view).map(([slope = 0]) => slope);
  const loose = solveLinear(fit.hold, slopes) ?? slopes.map(() => 0);
  const ofView = slopes.reduce((sum, slope, at) => sum + slope * (loose[at] ?? 0), 0);
  const nudges = [
    { x: 0.5, y: 0 },
    { x: 0, y: 0.5 },
  ];
  const ofTaps = nudges.flatMap(({ x, y }) => {
    const around = (spot: Spot, sign: number) => ({ x: spot.x + sign * x, y: spot.y + sign * y });
    return [
      read(fit.view, around(a, 1)) - read(fit.view, around(a, -1)),
      read(fit.view, a, around(b, 1)) - read(fit.view, a, around(b, -1)),
    ];
  });
  return ofView + tap ** 2 * ofTaps.reduce((sum, slope) => sum + slope ** 2, 0);
}
