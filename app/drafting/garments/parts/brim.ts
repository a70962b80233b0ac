import { flare } from '../../blocks/flare';
import { part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { aroundEars, brimmed, brims, type HatChoices, type HatGives, halfBrim, halfRound, isParted } from './hat-edge';

type Takes = { readonly choices: HatChoices; readonly size: HatGives['size']; readonly edge: HatGives['edge'] };
type Gives = { readonly size: never; readonly edge: EdgesOf<'brim' | 'brim-under', typeof flare> };
type Names = {
  readonly choices: HatChoices;
  readonly size: Takes['size'];
  readonly edge: Takes['edge'] | Gives['edge'];
};

/** Two layers of cloth under this thickness do not hold a brim up, mm (common practice, no source). */
const HOLDS_FROM_MM = 1;

/** One of a brim's two layers, half of it beside its fold in front. */
const layer = (name: 'brim' | 'brim-under') =>
  piece<Names>()(name, flare, {
    copies: 1,
    mirrored: false,
    onFold: true,
    sizes: {
      flareTop: halfRound,
      flareBottom: ({ sizes }) => sizes.brimOuter,
      flareHeight: ({ sizes }) => sizes.brimWide,
    },
    roles: () => ({ top: 'seam', side: 'seam', bottom: 'seam', centre: 'fold' }),
    when: brimmed,
  });

/** A brim of two layers all round a hat. */
export const brimPart = part<Takes, Gives>({
  pieces: [layer('brim'), layer('brim-under')],
  seams: [
    // Its layers are joined outside and turned before either meets the hat.
    ...(['brim', 'brim-under'] as const).map((name) => ({
      name: `${name}-end`,
      sewn: 1 as const,
      first: [{ piece: name, edge: 'side' as const }],
      second: [{ piece: name, edge: 'side' as const }],
      when: brimmed,
    })),
    {
      name: 'brim-round',
      sewn: 2,
      first: [{ piece: 'brim', edge: 'bottom' }],
      second: [{ piece: 'brim-under', edge: 'bottom' }],
      when: brimmed,
    },
    {
      name: 'brim-hat',
      sewn: 1,
      after: (choices) => [...aroundEars(choices), 'brim-round'],
      first: brims,
      second: [{ piece: 'brim', edge: 'top', times: 2 }],
      cornered: true,
      when: (choices) => brimmed(choices) && !isParted(choices),
    },
    {
      name: 'brim-hat',
      sewn: 2,
      after: (choices) => [...aroundEars(choices), 'brim-round'],
      first: halfBrim,
      second: [{ piece: 'brim', edge: 'top' }],
      cornered: true,
      when: (choices) => brimmed(choices) && isParted(choices),
    },
    {
      name: 'brim-inside',
      sewn: 2,
      kind: 'laid',
      first: [{ piece: 'brim', edge: 'top' }],
      second: [{ piece: 'brim-under', edge: 'top' }],
      when: brimmed,
    },
  ],
  notes: [
    {
      code: 'brim-limp',
      measures: [],
      told: ({ wearer }) => (wearer.cloth.thickness < HOLDS_FROM_MM ? { thickness: wearer.cloth.thickness } : null),
      when: brimmed,
    },
  ],
});
