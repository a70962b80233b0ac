import type { Mm } from '../../../body';
import { flare } from '../../blocks/flare';
import { pocket } from '../../blocks/pocket';
import { isOpen, type Opens, type PocketCut, type Pockets } from '../../heads/choices';
import type { Look } from '../../rows/names';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { usualAllowances } from '../../sizes/allowances';
import { PAST_CENTRE_MM } from '../../sizes/scale';
import type { Wearer } from '../../sizes/wearer';
import { forLooks, pocketForLooks, pocketLeftOut } from './pocket-rows';
import type { PocketPlace, Sides } from './top';

const isFrontOpen = isOpen('front');
const hasPocket = (choices: Pockets) => choices.pocket;

/** A hand edge lets a paw in from this share of its girth (common practice, no source). */
const PAW_SHARE = 0.55;
/** Its bottom stays this much above what the hem turns up. */
const ABOVE_HEM_MM = 6;
/** Where the front opens, each half begins this far from what is folded back behind the closure (common practice, no source). */
const BESIDE_FOLD_MM = 4;
/** Nothing smaller is worth sewing on. */
const LEAST_MM = 20;
/** Nor is one that lies as a strip: lower than this share of half its width (common practice, no source). */
const LOWEST_OF_HALF = 0.35;
/** Nor a half that is narrower than this at its top. */
const LEAST_HALF_TOP_MM = 15;

type Gives = { readonly size: never; readonly edge: EdgesOf<'pocket', typeof pocket> };
type Takes = {
  readonly choices: Opens & Pockets;
  readonly size: never;
  readonly edge: Extract<Sides, `front.pocket-${string}`>;
};
type Names = { readonly choices: Takes['choices']; readonly size: never; readonly edge: Takes['edge'] | Gives['edge'] };

/** Where a front has its pocket: told to the bodice, which draws the place. `lapped`: where it opens its edges lap. */
export function pocketPlace(choices: Pockets & PocketCut, wearer: Wearer, lapped = true): PocketPlace | null {
  if (!hasPocket(choices)) return null;
  const place = { hand: handOf(wearer), from: wearer.hem + ABOVE_HEM_MM, beside: besideOf(wearer, lapped) };
  return choices.pocketCut === 'patch' ? { ...place, patch: place.hand } : place;
}

/** Clear of the fold-back: past the centre line by as much as it is deeper than the front laps. */
function besideOf({ scale }: Wearer, lapped: boolean): Mm {
  return usualAllowances(scale).closure - (lapped ? PAST_CENTRE_MM[scale] : 0) + BESIDE_FOLD_MM;
}

const handOf = (wearer: Pick<Wearer, 'of'>): Mm => wearer.of('paw-girth') * PAW_SHARE;

const row = (open: boolean) =>
  piece<Names>()('pocket', pocket, {
    copies: open ? 2 : 1,
    mirrored: open,
    onFold: !open,
    sizes: {
      pocketTop: (look) => look.length('front.pocket-top'),
      pocketBottom: (look) => look.length('front.pocket-bottom'),
      pocketSide: (look) => look.length('front.pocket-side'),
      pocketHandEdge: (look) => look.length('front.pocket-hand'),
    },
    roles: () => ({ top: 'seam', hand: 'opening', side: 'seam', bottom: 'seam', centre: open ? 'seam' : 'fold' }),
    when: (choices) => isFrontOpen(choices) === open,
  });

const stitched = (choices: Opens) =>
  ['top', 'side', 'bottom', ...(isFrontOpen(choices) ? (['centre'] as const) : [])] as const;

/** One wide pocket on the front, both hands from the sides; in two halves where the front opens. */
const widePart = only(
  (choices: Pockets & PocketCut) => hasPocket(choices) && choices.pocketCut !== 'patch',
  part<Takes, Gives>({
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
        ...pocketLeftOut,
        when: (look) =>
          smallest(look) < LEAST_MM ||
          heightOf(look) < look.length('pocket.bottom') * LOWEST_OF_HALF ||
          (isFrontOpen(look.choices) && look.length('pocket.top') < LEAST_HALF_TOP_MM),
      },
    ],
    notes: [
      {
        ...pocketForLooks,
        told: (look) => forLooks(look.length('pocket.hand'), handOf(look.wearer)),
      },
    ],
  }),
);

/** The pocket's height or its width, whichever is less; a half counts for itself. */
const smallest = (look: Look<Names>): Mm => Math.min(look.length('pocket.bottom'), heightOf(look));

function heightOf({ length }: Look<Names>): Mm {
  const slant = length('pocket.bottom') - length('pocket.top');
  return Math.sqrt(Math.max(length('pocket.hand') ** 2 - slant ** 2, 0)) + length('pocket.side');
}

type Patch = { readonly size: never; readonly edge: EdgesOf<'patch-pocket', typeof flare> };
type PatchNames = {
  readonly choices: Takes['choices'];
  readonly size: never;
  readonly edge: Takes['edge'] | Patch['edge'];
};

/** A patch on either side, open above. */
const patchPart = only(
  (choices: Pockets & PocketCut) => hasPocket(choices) && choices.pocketCut === 'patch',
  part<Takes, Patch>({
    pieces: [
      piece<PatchNames>()('patch-pocket', flare, {
        copies: 2,
        mirrored: false,
        onFold: false,
        narrowHem: true,
        sizes: {
          flareTop: (look) => look.length('front.pocket-top'),
          flareBottom: (look) => look.length('front.pocket-bottom'),
          flareHeight: (look) => look.length('front.pocket-side'),
        },
        roles: () => ({ top: 'hem', side: 'seam', bottom: 'seam', centre: 'seam' }),
      }),
    ],
    seams: [
      { name: 'patch-top', sewn: 2, kind: 'folded', first: [{ piece: 'patch-pocket', edge: 'top' }], second: [] },
      {
        name: 'patch',
        sewn: 2,
        kind: 'laid',
        first: (['side', 'bottom', 'centre'] as const).map((edge) => ({ piece: 'front', edge: `pocket-${edge}` })),
        second: (['side', 'bottom', 'centre'] as const).map((edge) => ({ piece: 'patch-pocket', edge })),
      },
    ],
    instead: [
      {
        ...pocketLeftOut,
        when: ({ length }) => Math.min(length('patch-pocket.top'), length('patch-pocket.side')) < LEAST_MM,
      },
    ],
    notes: [
      {
        ...pocketForLooks,
        told: (look) => forLooks(look.length('patch-pocket.top'), handOf(look.wearer)),
      },
    ],
  }),
);

/** One wide pocket, or a patch on either side. */
export const pocketParts = [widePart, patchPart] as const;
