import { flare } from '../blocks/flare';
import { assemble } from '../rows/garment';
import { LEAST_LIMB_EASE_MM } from '../sizes/ease';
import type { SizeMaker } from '../sizes/wearer';
import { hemRole } from './parts/hem';

/** Between its two hems, a tube shows at least this much. */
const LEAST_SHOWN_MM = 10;
const ONE_SEAM = 1;
/** It widens by at most this much for each mm of its length. */
const STEEPEST = 0.9;

/** A tube up the lower arm, as much of it as is wished; both ends pass the paw. */
const tube: SizeMaker = (wearer) => {
  const share = Number(wearer.choices.covers);
  const [paw, arm] = (['paw-girth', 'upper-arm-girth'] as const).map((id) =>
    wearer.girth(id, ONE_SEAM, LEAST_LIMB_EASE_MM),
  );
  const [cuff = 0, upper = 0] = [paw, arm];
  const length = Math.max(wearer.of('arm-length') * share, 2 * wearer.hem + LEAST_SHOWN_MM);
  const wider = Math.min(Math.max((upper - cuff) * share, 0), STEEPEST * length);
  return { sizes: { cuff, tubeCuff: cuff / 2, tubeTop: (cuff + wider) / 2, tubeLength: length } };
};

/** A tube for each lower arm, hemmed at both ends. */
export const wristWarmers = assemble(
  {
    id: 'wrist-warmers',
    bodies: ['upright'],
    choices: {
      covers: { kind: 'share', min: 0.25, max: 0.7, fallback: 0.4 },
      hem: { kind: 'one', of: ['turned', 'raw'], fallback: 'turned' },
    },
    auto: {},
  },
  [
    {
      needs: (['paw-girth', 'upper-arm-girth', 'arm-length'] as const).map((measure) => ({ measure })),
      sizes: [tube],
      passages: [{ measure: 'paw-girth', through: 'cuff', gives: ({ cuff = 0 }) => cuff }],
      pieces: [
        {
          name: 'wrist-warmer',
          copies: 2,
          mirrored: false,
          onFold: true,
          block: flare,
          sizes: { flareTop: 'tubeTop', flareBottom: 'tubeCuff', flareHeight: 'tubeLength', flareOpen: 'notOpen' },
          roles: (choices) => ({ top: hemRole(choices), side: 'seam', bottom: hemRole(choices), centre: 'fold' }),
        },
      ],
      seams: [
        {
          name: 'wrist-warmer-side',
          sewn: 2,
          first: [{ piece: 'wrist-warmer', edge: 'side' }],
          second: [{ piece: 'wrist-warmer', edge: 'side' }],
        },
        ...(['top', 'bottom'] as const).map((edge) => ({
          name: `wrist-warmer-${edge}`,
          sewn: 2 as const,
          kind: 'folded' as const,
          first: [{ piece: 'wrist-warmer', edge, times: 2 }],
          second: [],
        })),
      ],
      fit: [{ place: 'cuff', measure: 'paw-girth', garment: (look) => 2 * look.length('wrist-warmer', 'bottom') }],
    },
  ],
);
