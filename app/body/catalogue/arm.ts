import type { Measure } from '../measure';
import { row } from './row';

/** Shoulders, arms, wings. */
export const armMeasures = [
  row('shoulder-length', 'surface', ['arm', 'front'], 'shoulder', [21, 0, 0], 0.72, {
    leans: { trunk: 0.2 },
    governs: ['shoulder'],
    optional: true,
  }),
  row('across-shoulders', 'surface', ['back', 'back'], 'shoulder', [142, 0, 0], 0.25, {
    leans: { trunk: 0.16, shoulder: 0.08 },
  }),
  row('side-inset', 'straight', ['arm', 'front'], 'limb', [26, 0, 0], 0.4, { optional: true }),
  row('armhole-depth', 'straight', ['arm', 'front'], 'length', [70, 0, 0], 0.09, {
    leans: { limb: 0.08 },
    governs: ['armholeDepth'],
  }),
  row('arm-root-girth', 'girth', ['arm', 'front'], 'limb', [184, 0, 0], 0.06, {
    leans: { length: 0.08 },
    governs: ['armhole'],
  }),
  row('upper-arm-girth', 'girth', ['arm', 'front'], 'limb', [178, 0, 0], 0.06, {
    leans: { length: 0.08 },
    governs: ['bicep'],
  }),
  row('paw-girth', 'girth', ['arm', 'front'], 'limb', [165, 0, 0], 0.15, {
    leans: { length: 0.08 },
    governs: ['cuff'],
  }),
  row('wing-base', 'straight', ['arm', 'side'], 'limb', [0, 0, 60], 0.15),
  row('wing-height', 'straight', ['arm', 'side'], 'length', [0, 0, 120], 0.15),
] as const satisfies readonly Measure[];
