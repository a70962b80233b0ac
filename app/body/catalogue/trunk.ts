import type { Measure } from '../measure';
import { row } from './row';

/** The girths and widths of the trunk, and what goes over it. */
export const trunkMeasures = [
  row('chest-girth', 'girth', ['front', 'front'], 'trunk', [390, 400, 0], 0.05, { governs: ['chest'] }),
  row('body-girth', 'girth', ['front', 'front'], 'trunk', [430, 0, 560], 0.02, { governs: ['tummy'] }),
  row('front-width', 'surface', ['front', 'front'], 'trunk', [218, 0, 0], 0.02, {
    leans: { split: 0.07 },
    governs: ['tummy'],
  }),
  row('back-width', 'surface', ['back', 'back'], 'trunk', [212, 0, 0], 0.02, {
    leans: { split: -0.07 },
    governs: ['tummy'],
  }),
  row('hem-girth', 'girth', ['front', 'front'], 'trunk', [412, 0, 500], 0.07, { governs: ['hem'] }),
  row('belly-girth', 'girth', ['front', 'side'], 'trunk', [0, 390, 0], 0.08),
  row('waist-girth', 'girth', ['waist', 'front'], 'trunk', [405, 0, 540], 0.08),
  row('hip-girth', 'girth', ['waist', 'front'], 'trunk', [435, 0, 0], 0.09),
  row('over-arms-girth', 'girth', ['front', 'front'], 'trunk', [620, 0, 0], 0.07, { leans: { limb: 0.08 } }),
  row('neck-to-leg', 'surface', ['front', 'front'], 'length', [0, 82, 0], 0.2),
  row('nape-to-leg', 'surface', ['front', 'side'], 'length', [0, 112, 0], 0.16),
  row('spine-to-leg', 'surface', ['front', 'side'], 'trunk', [0, 126, 0], 0.1, { leans: { leg: -0.05 } }),
  row('leg-spread', 'straight', ['front', 'front'], 'trunk', [0, 60, 0], 0.2),
  row('height', 'straight', ['whole', 'front'], 'length', [450, 300, 220], 0.16, { optional: true }),
  row('top-height', 'straight', ['front', 'front'], 'length', [0, 0, 68], 0.19),
  row('top-girth', 'girth', ['front', 'front'], 'trunk', [0, 0, 455], 0.1),
  row('base-height', 'straight', ['front', 'front'], 'length', [0, 0, 60], 0.22),
  row('base-girth', 'girth', ['front', 'front'], 'trunk', [0, 0, 465], 0.1),
  row('body-loop', 'surface', ['front', 'front'], 'length', [515, 0, 0], 0.07, { leans: { trunk: 0.05 } }),
] as const satisfies readonly Measure[];
