import type { Mm } from '../../body';
import type { Brims, HatEars } from '../heads/choices';
import { easedGirth } from './ease';
import { maker } from './maker';
import type { Wearer } from './wearer';

/** A seam crosses each ear with a gore at the centre front (geometry). */
export const GORES = 6;
/** Closer than a bodice, whatever the fit: else it falls over the eyes. */
const EASE = 0.03;
const LEAST_EASE_MM = 6;
/** Over half the way over the head, mm. */
const OVER_MM = 3;
/** A cuff is so deep for the hat's girth, and never less than can be turned, mm. */
const CUFF = 0.075;
const LEAST_CUFF_MM = 12;
/** A brim is so wide for the hat's girth, within what can be turned and what holds itself up, mm; it falls a little: a whole ring would stand level. */
const BRIM = 0.12;
const BRIM_MM = { least: 14, most: 60 } as const;
const BRIM_FALLS = 0.7;
/** An ear comes through a slit this much longer than half of it, at least so far below the crown; below it so much is sewn, less where a cuff closes it, mm. */
const EAR_ROOM = 1.1;
const BELOW_CROWN_MM = 12;
const ABOVE_BRIM_MM = 10;
const ABOVE_CUFF_MM = 8;
const MOST_OF_SEAM = 0.75;
/** A head whose way over is less than this share of its girth could not be one. */
const SHALLOWEST = 1 / (2 * Math.PI);
const ROOM_OVER_FLAT = 1.12;

/** A hat by its gores: round the brim, down from the crown, the cuff, the ears' slits (0 without). */
export const hatSizes = maker(
  [],
  [
    'hatRound',
    'goreCount',
    'goreRound',
    'goreOver',
    'cuffDeep',
    'brimWide',
    'brimOuter',
    'earFrom',
    'earLong',
    'earMissing',
    'flatHead',
  ],
  (wearer: Wearer<HatEars & Brims>) => {
    const round = easedGirth(wearer.of('head-girth'), EASE, wearer.cloth, LEAST_EASE_MM, GORES);
    const wanted = wearer.of('over-head') / 2 + OVER_MM;
    const least = round * SHALLOWEST * ROOM_OVER_FLAT;
    const over = Math.max(wanted, least);
    const brimWide = Math.min(Math.max(round * BRIM, BRIM_MM.least), BRIM_MM.most);
    return {
      sizes: {
        hatRound: round,
        goreCount: GORES,
        goreRound: round,
        goreOver: over,
        cuffDeep: Math.max(round * CUFF, LEAST_CUFF_MM),
        brimWide,
        brimOuter: round / 2 + Math.PI * brimWide * BRIM_FALLS,
        flatHead: over - wanted,
        ...earsOf(wearer, over),
      },
    };
  },
);

function earsOf(wearer: Wearer<HatEars & Brims>, over: Mm): Record<'earFrom' | 'earLong' | 'earMissing', Mm> {
  const { hatEars } = wearer.choices;
  if (hatEars !== 'open' && hatEars !== 'down') return { earFrom: 0, earLong: 0, earMissing: 0 };
  const wanted = EAR_ROOM * Math.max(wearer.of('ear-base'), wearer.of('ear-girth') / 2);
  const below = wearer.choices.brim === 'turned' ? wearer.hem + ABOVE_BRIM_MM : ABOVE_CUFF_MM;
  const lowest = hatEars === 'down' ? over : over - Math.min(below, over / 4);
  const highest = Math.min(BELOW_CROWN_MM, over / 4);
  const long = Math.min(wanted, lowest - highest, over * (hatEars === 'down' ? 1 : MOST_OF_SEAM));
  const from = Math.min(Math.max(wearer.of('ear-inset'), highest), lowest - long);
  if (hatEars !== 'down') return { earFrom: from, earLong: long, earMissing: wanted - long };
  // Open to the brim, it is as long as is left below; where nothing closes it there, an ear of any width comes in from below.
  const missing = wearer.choices.brim === 'turned' ? 0 : wanted - long;
  return { earFrom: from, earLong: over - from, earMissing: missing };
}
