import type { Mm } from '../../body';
import type { HatEars } from '../heads/choices';
import { GATHERS_UP_TO_MM } from './cloths';
import { maker } from './maker';
import type { Wearer } from './wearer';

/** It reaches this much of the head's girth below the hat's line on either side, and lies so loosely over the head, mm. */
const BELOW = 0.09;
const OVER_MM = 6;
/** From the face back it is so deep for the head's girth; never less than can be hemmed and sewn, mm. */
const DEEP = 0.23;
const LEAST_DEEP_MM = 24;
/** So full it is gathered to its back: less where cloth is thick (common practice, no source). */
const FULL = { thin: 1.4, thick: 1.15 } as const;
/** The back is straight for this share of its half width, then round: that much and a quarter circle is its edge. */
const UP_SHARE = 0.6;
/** A ring over the head and under the chin, of the head's girth; what the bonnet leaves of it the straps go round. */
const ROUND_CHIN = 0.95;
const STRAP = { least: 25, most: 0.3, lap: 12 } as const;
/** A strap for its head, hemmed on both sides. */
const STRAP_SHARE = 0.03;
const NARROWEST_STRAP_MM = 8;
const WIDEST_STRAP_MM = 18;
/** An ear comes through a slit this much longer than half of it; so much is left whole at the top and above the strap, mm. */
const EAR_ROOM = 1.1;
const LEFT_MM = 10;

/** A bonnet: over the head as far as a hat's line, down to the neck, from the face back, its back, its straps, and the ears' slits (0 without). */
export const bonnetSizes = maker(
  [],
  [
    'bonnetOver',
    'bonnetHalf',
    'bonnetDeep',
    'bonnetBack',
    'bonnetUp',
    'strapWidth',
    'strapLength',
    'earFrom',
    'earLong',
    'earMissing',
  ],
  (wearer: Wearer<HatEars>) => {
    const [girth, over] = [wearer.of('head-girth'), wearer.of('over-head')];
    const half = (over + OVER_MM) / 2 + girth * BELOW;
    const deep = Math.max(girth * DEEP, LEAST_DEEP_MM);
    const full = wearer.cloth.thickness > GATHERS_UP_TO_MM ? FULL.thick : FULL.thin;
    const back = half / full / (Math.PI / 2 + UP_SHARE);
    const gap = Math.max(girth * ROUND_CHIN - 2 * half, 0) / 2;
    const strap = Math.min(Math.max(gap + STRAP.lap, STRAP.least), Math.max(girth * STRAP.most, STRAP.least));
    const width = Math.min(Math.max(girth * STRAP_SHARE, NARROWEST_STRAP_MM), WIDEST_STRAP_MM);
    return {
      sizes: {
        bonnetOver: over + OVER_MM,
        bonnetHalf: half,
        bonnetDeep: deep,
        bonnetBack: back,
        bonnetUp: back * UP_SHARE,
        strapWidth: width,
        strapLength: strap,
        ...earsOf(wearer, half),
      },
    };
  },
);

function earsOf(wearer: Wearer<HatEars>, half: Mm): Record<'earFrom' | 'earLong' | 'earMissing', Mm> {
  if (wearer.choices.hatEars !== 'open') return { earFrom: 0, earLong: 0, earMissing: 0 };
  const wanted = EAR_ROOM * Math.max(wearer.of('ear-base'), wearer.of('ear-girth') / 2);
  const [highest, lowest] = [Math.min(LEFT_MM, half / 5), half * 0.8];
  const earLong = Math.min(wanted, lowest - highest);
  const earFrom = Math.min(Math.max(wearer.of('ear-inset'), highest), lowest - earLong);
  return { earFrom, earLong, earMissing: wanted - earLong };
}
