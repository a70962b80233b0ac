import type { Measure } from '../measure';
import { row } from './row';

/** Head, ears and neck. */
export const headMeasures = [
  row('head-girth', 'girth', ['head', 'front'], 'head', [432, 340, 430], 0.06),
  row('face-edge', 'surface', ['head', 'front'], 'head', [342, 265, 0], 0.08, {
    leans: { face: -0.04 },
    governs: ['hoodFront'],
  }),
  row('crown-arc', 'surface', ['head', 'side'], 'head', [184, 148, 0], 0.065, {
    leans: { face: 0.08 },
    governs: ['hoodCrown'],
  }),
  row('hood-depth', 'surface', ['head', 'side'], 'head', [130, 105, 0], 0.055, {
    leans: { face: 0.08 },
    governs: ['hoodDepth'],
  }),
  row('over-head', 'surface', ['head', 'front'], 'head', [175, 135, 170], 0.12),
  row('ear-base', 'straight', ['head', 'front'], 'ear', [55, 45, 45], 0.12),
  row('ear-girth', 'girth', ['head', 'front'], 'ear', [125, 105, 100], 0.12),
  row('ear-inset', 'surface', ['head', 'front'], 'head', [55, 40, 50], 0.27),
  row('ear-from-face-edge', 'surface', ['head', 'side'], 'head', [30, 25, 0], 0.3),
  row('neck-girth', 'girth', ['neck', 'front'], 'trunk', [268, 250, 395], 0.11, { governs: ['neck'] }),
] as const satisfies readonly Measure[];
