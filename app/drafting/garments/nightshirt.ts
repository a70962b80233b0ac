import { assemble } from '../rows/garment';
import { longSizes } from '../sizes/long';
import { bodicePart } from './parts/bodice';
import { neckChoice, neckPart } from './parts/neck';
import { sleevePart } from './parts/sleeve';
import { slitPart } from './parts/slit';

/** A long, swinging shirt with sleeves, down past the hips. */
export const nightshirt = assemble(
  {
    id: 'nightshirt',
    bodies: ['upright'],
    opensAt: 'front',
    choices: {
      opening: { kind: 'one', of: ['auto', 'none', 'slit', 'front', 'back'], fallback: 'auto' },
      sleeve: { kind: 'one', of: ['long', 'short', 'puffed'], fallback: 'long' },
      armhole: { kind: 'one', of: ['auto', 'set-in', 'raglan'], fallback: 'auto' },
      neck: neckChoice,
      hem: { kind: 'one', of: ['turned', 'raw'], fallback: 'turned' },
    },
    auto: { opening: 'none', armhole: 'set-in' },
  },
  [
    bodicePart,
    {
      needs: (['underarm-to-waist', 'waist-to-hem', 'hip-girth'] as const).map((measure) => ({ measure })),
      sizes: [longSizes],
      fit: [{ place: 'hip', measure: 'hip-girth', garment: ({ sizes }) => sizes.hem ?? 0 }],
    },
    sleevePart,
    ...neckPart('front'),
    slitPart('front'),
  ],
);
