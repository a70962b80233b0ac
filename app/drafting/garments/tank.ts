import { assemble } from '../rows/garment';
import { tankSizes } from '../sizes/tank';
import { armholePart } from './parts/armhole';
import { bodicePart } from './parts/bodice';
import { neckChoice, neckPart } from './parts/neck';
import { slitPart } from './parts/slit';

/** A top without sleeves, cut wide at the neck; neck and armholes are bound, faced or collared. */
export const tank = assemble(
  {
    id: 'tank',
    bodies: ['upright'],
    opensAt: 'back',
    choices: {
      opening: { kind: 'one', of: ['auto', 'none', 'slit', 'front', 'back'], fallback: 'auto' },
      neck: neckChoice,
      hem: { kind: 'one', of: ['turned', 'casing', 'raw'], fallback: 'turned' },
    },
    auto: { opening: 'none' },
  },
  [bodicePart, { sizes: [tankSizes] }, ...neckPart('back'), armholePart, slitPart('back')],
);
