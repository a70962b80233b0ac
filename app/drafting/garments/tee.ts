import { assemble } from '../rows/garment';
import { bodicePart } from './parts/bodice';
import { neckChoice, neckPart } from './parts/neck';
import { sleevePart } from './parts/sleeve';
import { slitPart } from './parts/slit';

/** A plain top with sleeves; opens behind when the head does not pass. */
export const tee = assemble(
  {
    id: 'tee',
    bodies: ['upright'],
    opensAt: 'back',
    choices: {
      opening: { kind: 'one', of: ['auto', 'none', 'slit', 'front', 'back'], fallback: 'auto' },
      sleeve: { kind: 'one', of: ['short', 'long', 'puffed'], fallback: 'short' },
      armhole: { kind: 'one', of: ['auto', 'set-in', 'raglan'], fallback: 'auto' },
      neck: neckChoice,
      hem: { kind: 'one', of: ['turned', 'casing', 'raw'], fallback: 'turned' },
    },
    auto: { opening: 'none', armhole: 'set-in' },
  },
  [bodicePart, sleevePart, ...neckPart('back'), slitPart('back')],
);
