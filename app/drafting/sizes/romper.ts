import type { LegCount, Tails } from '../heads/choices';
import { maker } from './maker';
import type { Wearer } from './wearer';

/** Over the shoulder and between the legs it is so much longer than the body: what bends needs most (common practice, no source). */
const LOOP_EASE = { sits: 1.06, stands: 1.03 } as const;
/** The seat opens no farther than the hips ask: at least so much, of the seam behind at most this share, and clear of a tail, mm. */
const LEAST_OPEN_MM = 15;
const MOST_OPEN = 0.5;
const ABOVE_TAIL_MM = 8;
/** A slit's end must not be the tightest place, mm. */
const ROOM_MM = 10;

/** Bodice and legs together: long enough from shoulder to shoulder between the legs, and how far the seat opens behind. */
export const romperSizes = maker(
  ['frontLength', 'backLength', 'sideLevel', 'crotchSeam', 'legRise', 'legRaised', 'tailAbove', 'hem'],
  ['frontLength', 'backLength', 'sideLevel', 'legOpen', 'loop'],
  (wearer: Wearer<LegCount & Tails>, sizes) => {
    const { frontLength, backLength, sideLevel, crotchSeam, legRise, legRaised, tailAbove, hem } = sizes;
    const loop = frontLength + backLength + crotchSeam;
    const wanted = wearer.choices.legs === 'tube' ? loop : wearer.of('body-loop') * LOOP_EASE[wearer.traits.posture];
    const longer = Math.max(wanted - loop, 0) / 2;
    const asked = (wearer.of('hip-girth') - hem) / 2 + ROOM_MM;
    const most = wearer.choices.tail === 'open' ? tailAbove - ABOVE_TAIL_MM : (legRise + legRaised) * MOST_OPEN;
    const opens = Math.min(Math.max(asked, LEAST_OPEN_MM), most);
    return {
      sizes: {
        frontLength: frontLength + longer,
        backLength: backLength + longer,
        sideLevel: sideLevel + longer,
        // It runs on to a tail that comes in from above.
        legOpen: wearer.choices.tail === 'waist' ? tailAbove : opens,
        loop: loop + 2 * longer,
      },
      adjustments:
        longer > 0.5
          ? [{ code: 'body-lengthened', by: longer, because: 'loop', check: ['body-loop', 'underarm-to-waist'] }]
          : [],
    };
  },
);
