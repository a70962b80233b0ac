import { flare } from '../blocks/flare';
import { assemble } from '../rows/garment';
import { scarfSizes } from '../sizes/cape';
import { hemRole } from './parts/hem';

const edges = ['top', 'side', 'bottom'] as const;

/** A straight scarf, cut along the cloth with its middle on the fold. Short enough not to tangle: see the care notes. */
export const scarf = assemble(
  {
    id: 'scarf',
    bodies: ['upright', 'four-legged', 'round'],
    choices: { hem: { kind: 'one', of: ['turned', 'raw'], fallback: 'turned' } },
    auto: {},
  },
  [
    {
      needs: [{ measure: 'scarf-length' }],
      sizes: [scarfSizes],
      pieces: [
        {
          name: 'scarf',
          copies: 1,
          mirrored: false,
          onFold: true,
          block: flare,
          sizes: { flareTop: 'scarfHalf', flareBottom: 'scarfHalf', flareHeight: 'scarfLong', flareOpen: 'notOpen' },
          roles: (choices) => ({
            ...Object.fromEntries(edges.map((edge) => [edge, hemRole(choices)])),
            centre: 'fold',
          }),
        },
      ],
      seams: edges.map((edge) => ({
        name: `scarf-${edge}`,
        sewn: 2,
        kind: 'folded',
        first: [{ piece: 'scarf', edge }],
        second: [],
      })),
    },
  ],
);
