import { point } from '../../body/point';
import type { Figure, Frame } from './drawing';
import { limb } from './shapes';
import { smoothPath } from './smooth';

/** The same on a head: eyes and mouth below the finger. */
export function squeezedHead(soft: boolean, frame: Frame): Figure {
  const { width, height } = frame;
  const eye = (x: number) => limb([point(x, 0.7 * height), point(x, 0.73 * height)], [0.025 * width, 0.025 * width]);
  const mouth = [
    point(0.46 * width, 0.82 * height),
    point(0.5 * width, 0.85 * height),
    point(0.54 * width, 0.82 * height),
  ];
  const { shapes, ...rest } = squeezed(soft, frame);
  const ink = [0.36, 0.64].map((x) => ({
    layer: 'toy' as const,
    look: 'ink' as const,
    path: smoothPath(eye(x * width), true),
  }));
  const smile = { layer: 'toy' as const, look: 'fine' as const, path: smoothPath(mouth, false) };
  return { ...rest, shapes: [...shapes, ...ink, smile] };
}

/** A finger pressed on a cushion of fur: it sinks into soft stuffing, and rests on firm. */
export function squeezed(soft: boolean, frame: Frame): Figure {
  const { width, height } = frame;
  const [middle, top] = [width / 2, 0.46 * height];
  const dent = soft ? 0.2 * height : 0.015 * height;
  const at = (x: number, y: number) => point(middle + x * width, y);
  const cushion = [
    at(-0.4, 0.72 * height),
    at(-0.36, top + 0.05 * height),
    at(-0.19, top - (soft ? 0.03 : 0) * height),
    at(-0.08, top + dent * 0.8),
    at(0, top + dent),
    at(0.08, top + dent * 0.8),
    at(0.19, top - (soft ? 0.03 : 0) * height),
    at(0.36, top + 0.05 * height),
    at(0.4, 0.72 * height),
    at(0.3, 0.92 * height),
    at(0, 0.95 * height),
    at(-0.3, 0.92 * height),
  ];
  const tip = top + dent - 0.085 * height;
  const finger = limb(
    [at(0.16, -0.1 * height), at(0.05, 0.5 * tip), at(0, tip)],
    [0.1 * width, 0.095 * width, 0.075 * width],
  );
  const nail = limb([at(-0.012, tip - 0.04 * height), at(-0.016, tip + 0.012 * height)], [0.03 * width, 0.034 * width]);
  const crease = (side: number) => [
    at(side * 0.13, top + dent + 0.05 * height),
    at(side * 0.2, top + dent * 0.75),
    at(side * 0.27, top + dent * 0.6),
  ];
  return {
    frame,
    view: 'front',
    shapes: [
      { layer: 'toy', look: 'fur', path: smoothPath(cushion, true) },
      ...(soft
        ? [-1, 1].map((side) => ({
            layer: 'toy' as const,
            look: 'fine' as const,
            path: smoothPath(crease(side), false),
          }))
        : []),
      { layer: 'toy', look: 'fur-pale', path: smoothPath(finger, true) },
      { layer: 'toy', look: 'blush', path: smoothPath(nail, true) },
    ],
  };
}
