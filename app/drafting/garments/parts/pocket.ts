import type { Mm } from '../../../body';
import { pocket } from '../../blocks/pocket';
import type { Role } from '../../draft-types';
import { type Look, only, type Part, type PieceRow } from '../../rows/garment';
import type { Choices } from '../../sizes/wearer';
import { isOpen } from './bodice';

export const pocketChoice = { kind: 'yes', fallback: true } as const;

const hasPocket = (choices: Choices) => choices.pocket === true;
const isFrontOpen = isOpen('front');

/** A hand edge lets a paw in from this share of its girth (common practice, no source). */
const PAW_SHARE = 0.55;
/** Its bottom stays this much above what the hem turns up. */
const ABOVE_HEM_MM = 6;
/** Where the front opens, each half begins this far from the centre line: clear of the closure's fold-back. */
const BESIDE_MM = 14;
/** Nothing smaller is worth sewing on. */
const LEAST_MM = 20;

function row(open: boolean): PieceRow {
  return {
    name: 'pocket',
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    block: pocket,
    takes: (look) => ({
      pocketTop: look.length('front', 'pocket-top'),
      pocketBottom: look.length('front', 'pocket-bottom'),
      pocketSide: look.length('front', 'pocket-side'),
      pocketHandEdge: look.length('front', 'pocket-hand'),
    }),
    roles: (): Record<string, Role> => ({
      top: 'seam',
      hand: 'opening',
      side: 'seam',
      bottom: 'seam',
      centre: open ? 'seam' : 'fold',
    }),
    when: (choices) => isFrontOpen(choices) === open,
  };
}

const stitched = (choices: Choices) => ['top', 'side', 'bottom', ...(isFrontOpen(choices) ? ['centre'] : [])];

/** One wide pocket on the front, both hands from the sides; in two halves where the front opens. */
export const pocketPart: Part = only(hasPocket, {
  needs: [{ measure: 'paw-girth' }],
  sizes: [
    (wearer) => ({
      sizes: {
        pocket: 1,
        pocketHand: wearer.of('paw-girth') * PAW_SHARE,
        pocketFrom: wearer.hem + ABOVE_HEM_MM,
        pocketBeside: BESIDE_MM,
      },
    }),
  ],
  pieces: [row(false), row(true)],
  seams: [
    { name: 'pocket-hand', sewn: 2, kind: 'folded', first: [{ piece: 'pocket', edge: 'hand' }], second: [] },
    {
      name: 'pocket',
      sewn: 2,
      kind: 'laid',
      first: (choices) => stitched(choices).map((edge) => ({ piece: 'front', edge: `pocket-${edge}` })),
      second: (choices) => stitched(choices).map((edge) => ({ piece: 'pocket', edge })),
    },
  ],
  instead: [
    {
      choice: 'pocket',
      from: true,
      to: false,
      code: 'pocket-left-out',
      check: [],
      when: (look) => smallest(look) < LEAST_MM,
    },
  ],
  notes: [
    {
      code: 'pocket-for-looks',
      measures: ['paw-girth'],
      told: (look) => {
        const [hand, needs] = [look.length('pocket', 'hand'), look.sizes.pocketHand ?? 0];
        return hand < needs - 0.5 ? { hand, needs } : null;
      },
    },
  ],
});

/** The pocket's height or its width, whichever is less; a half counts for itself. */
function smallest(look: Look): Mm {
  const [top, bottom] = [look.length('pocket', 'top'), look.length('pocket', 'bottom')];
  const hand = Math.sqrt(Math.max(look.length('pocket', 'hand') ** 2 - (bottom - top) ** 2, 0));
  return Math.min(bottom, hand + look.length('pocket', 'side'));
}
