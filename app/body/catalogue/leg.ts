import type { Measure } from '../measure';
import { row } from './row';

/** From the waist down: waist to crotch, legs, tail. */
export const legMeasures = [
  row('underarm-to-waist', 'surface', ['waist', 'side'], 'length', [50, 0, 0], 0.25),
  row('body-rise', 'straight', ['waist', 'side'], 'length', [95, 0, 0], 0.085, { leans: { hem: 0.06 } }),
  row('crotch-length', 'surface', ['waist', 'front'], 'length', [300, 0, 0], 0.045, {
    leans: { trunk: 0.09, hem: 0.04 },
    optional: true,
  }),
  row('front-crotch', 'surface', ['waist', 'front'], 'length', [150, 0, 0], 0.06, {
    leans: { trunk: 0.09, hem: 0.04 },
  }),
  row('thigh-girth', 'girth', ['leg', 'front'], 'leg', [220, 0, 0], 0.06, { leans: { trunk: 0.08 } }),
  row('foot-girth', 'girth', ['leg', 'front'], 'leg', [235, 155, 0], 0.14, { leans: { trunk: 0.05 } }),
  row('foot-length', 'straight', ['leg', 'front'], 'leg', [92, 0, 0], 0.2, { leans: { trunk: 0.05 } }),
  row('front-leg-girth', 'girth', ['leg', 'side'], 'leg', [0, 150, 0], 0.07),
  row('waist-to-tail', 'surface', ['tail', 'back'], 'length', [65, 0, 0], 0.18, { leans: { hem: 0.08 } }),
  row('tail-base-girth', 'girth', ['tail', 'back'], 'tail', [100, 90, 95], 0.15),
  row('tail-girth', 'girth', ['tail', 'back'], 'tail', [130, 110, 118], 0.15),
] as const satisfies readonly Measure[];
