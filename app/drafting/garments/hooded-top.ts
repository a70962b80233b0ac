import { assemble } from '../rows/garment';
import { armholePart } from './parts/armhole';
import { bodicePart, halfNeckline } from './parts/bodice';
import { earsChoice, earsPart } from './parts/ears';
import { hoodPart } from './parts/hood';
import { pocketChoice, pocketPart } from './parts/pocket';
import { sleevePart } from './parts/sleeve';
import { slitPart } from './parts/slit';

/** A top with sleeves and a hood, for anything that sits or stands upright. */
export const hoodedTop = assemble(
  {
    id: 'hooded-top',
    bodies: ['upright'],
    opensAt: 'front',
    choices: {
      opening: { kind: 'one', of: ['auto', 'none', 'slit', 'front', 'back'], fallback: 'auto' },
      sleeve: { kind: 'one', of: ['long', 'short', 'none'], fallback: 'long' },
      armhole: { kind: 'one', of: ['auto', 'set-in', 'raglan'], fallback: 'auto' },
      hood: { kind: 'one', of: ['auto', 'two', 'three'], fallback: 'auto' },
      ears: earsChoice,
      pocket: pocketChoice,
      hem: { kind: 'one', of: ['turned', 'casing', 'raw'], fallback: 'turned' },
    },
    auto: { opening: 'none', armhole: 'set-in', hood: 'two' },
  },
  [bodicePart, sleevePart, hoodPart(halfNeckline), armholePart, slitPart('front'), pocketPart, earsPart],
);
