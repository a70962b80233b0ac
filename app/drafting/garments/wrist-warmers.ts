import { flare } from '../blocks/flare';
import type { Hems } from '../heads/choices';
import { wristWarmersHead } from '../heads/wrist-warmers';
import { assemble } from '../rows/garment';
import { part } from '../rows/part';
import { type EdgesOf, piece } from '../rows/piece-row';
import { LEAST_LIMB_EASE_MM } from '../sizes/ease';
import { maker, type SizesOf } from '../sizes/maker';
import type { Wearer } from '../sizes/wearer';
import { hemRole } from './parts/hem';

/** Between its two hems, a tube shows at least this much. */
const LEAST_SHOWN_MM = 10;
const ONE_SEAM = 1;
/** It widens by at most this much for each mm of its length. */
const STEEPEST = 0.9;

type Covers = { readonly covers: number };

/** A tube up the lower arm, as much of it as is wished; both ends pass the paw. */
const tube = maker([], ['cuff', 'tubeCuff', 'tubeTop', 'tubeLength'], (wearer: Wearer<Covers>) => {
  const share = wearer.choices.covers;
  const cuff = wearer.girth('paw-girth', ONE_SEAM, LEAST_LIMB_EASE_MM);
  const upper = wearer.girth('upper-arm-girth', ONE_SEAM, LEAST_LIMB_EASE_MM);
  const length = Math.max(wearer.of('arm-length') * share, 2 * wearer.hem + LEAST_SHOWN_MM);
  const wider = Math.min(Math.max((upper - cuff) * share, 0), STEEPEST * length);
  return { sizes: { cuff, tubeCuff: cuff / 2, tubeTop: (cuff + wider) / 2, tubeLength: length } };
});

type Gives = { readonly size: SizesOf<typeof tube>; readonly edge: EdgesOf<'wrist-warmer', typeof flare> };
type Names = Gives & { readonly choices: Covers & Hems };

export const wristWarmers = assemble(wristWarmersHead, [
  part<{ choices: Covers & Hems; size: never; edge: never }, Gives>({
    sizes: [tube],
    passages: [{ measure: 'paw-girth', through: 'cuff', gives: ({ cuff }) => cuff }],
    pieces: [
      piece<Names>()('wrist-warmer', flare, {
        copies: 2,
        mirrored: false,
        onFold: true,
        narrowHem: true,
        sizes: { flareTop: 'tubeTop', flareBottom: 'tubeCuff', flareHeight: 'tubeLength' },
        roles: (choices) => ({ top: hemRole(choices), side: 'seam', bottom: hemRole(choices), centre: 'fold' }),
      }),
    ],
    seams: [
      {
        name: 'wrist-warmer-side',
        sewn: 2,
        // So short a tube is hemmed while it lies flat.
        after: () => ['wrist-warmer-top', 'wrist-warmer-bottom'],
        first: [{ piece: 'wrist-warmer', edge: 'side' }],
        second: [{ piece: 'wrist-warmer', edge: 'side' }],
      },
      ...(['top', 'bottom'] as const).map((edge) => ({
        name: `wrist-warmer-${edge}`,
        sewn: 2 as const,
        kind: 'folded' as const,
        first: [{ piece: 'wrist-warmer', edge, times: 2 } as const],
        second: [],
      })),
    ],
    fit: [{ place: 'cuff', measure: 'paw-girth', garment: (look) => 2 * look.length('wrist-warmer.bottom') }],
  }),
]);
