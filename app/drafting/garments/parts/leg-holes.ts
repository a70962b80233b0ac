import { flare } from '../../blocks/flare';
import type { Hems } from '../../heads/choices';
import type { Look, RefTo } from '../../rows/names';
import { only, part } from '../../rows/part';
import { type EdgesOf, piece } from '../../rows/piece-row';
import { type BarrelGives, type Coats, legHole } from './barrel';
import { bindingPart } from './binding';
import { hemRole } from './hem';

/** A sleeve shows at least so much beside its hem, mm: shorter it is bound instead. */
const LEAST_SHOWN_MM = 12;

type Choices = Coats & Hems;
type Takes = { readonly choices: Choices; readonly size: BarrelGives['size']; readonly edge: BarrelGives['edge'] };
type Gives = { readonly size: never; readonly edge: EdgesOf<'leg-sleeve', typeof flare> };

/** Once round a hole, from behind the leg over its inside. */
const round = (): RefTo<'coat-belly.leg' | 'coat-back.leg'>[] => [
  { piece: 'coat-belly', edge: 'leg', back: true },
  { piece: 'coat-back', edge: 'leg' },
];

const sleeves = part<Takes, Gives>({
  pieces: [
    piece<Takes>()('leg-sleeve', flare, {
      copies: 2,
      mirrored: false,
      onFold: true,
      sizes: {
        flareTop: (look) => legHole(look) / 2,
        flareBottom: (look) => legHole(look) / 2,
        flareHeight: ({ wearer }) => Math.max(wearer.of('front-leg-length'), wearer.hem + LEAST_SHOWN_MM),
      },
      roles: (choices) => ({ top: 'seam', side: 'seam', bottom: hemRole(choices), centre: 'fold' }),
    }),
  ],
  seams: [
    {
      name: 'leg-sleeve-seam',
      sewn: 2,
      first: [{ piece: 'leg-sleeve', edge: 'side' }],
      second: [{ piece: 'leg-sleeve', edge: 'side' }],
    },
    {
      name: 'leg-sleeve-hem',
      sewn: 2,
      kind: 'folded',
      first: [{ piece: 'leg-sleeve', edge: 'bottom', times: 2 }],
      second: [],
    },
    {
      name: 'leg-sleeve-edge',
      sewn: 2,
      first: round,
      second: [{ piece: 'leg-sleeve', edge: 'top', times: 2 }],
      cornered: true,
    },
  ],
});

/** A hole is hemmed no wider than this, mm: a curved hem that went farther would not lie flat. */
const MOST_HEM_MM = 6;

/** A hem round a hole is folded away from it, on to a longer way: only cloth that stretches so far follows, or one whose hems are cut off. */
function stretchesOver(look: Look<Takes>): boolean {
  const { wearer } = look;
  const [radius, deep] = [legHole(look) / (2 * Math.PI), Math.min(wearer.hem, MOST_HEM_MM)];
  return (radius + deep) / (radius - deep) - 1 <= wearer.cloth.stretch;
}

const turned = part<Takes>({
  seams: [{ name: 'leg-hole-hem', sewn: 2, kind: 'folded', first: round, second: [] }],
  instead: [
    {
      choice: 'coatLegs',
      from: 'turned',
      to: 'bound',
      code: 'leg-holes-bound',
      because: 'hollow-edge',
      check: [],
      when: (look) => !stretchesOver(look),
    },
  ],
});

/** Holes for the front legs: bound, turned where the cloth stretches far enough, or with a sleeve each. */
export const legHoleParts = [
  only(
    ({ coatLegs }: Choices) => coatLegs === 'bound',
    bindingPart('leg-binding', { edge: round, closed: () => true, ends: () => 'front', rings: 2, hollow: () => true }),
  ),
  only(({ coatLegs }: Choices) => coatLegs === 'turned', turned),
  only(({ coatLegs }: Choices) => coatLegs === 'sleeves', sleeves),
] as const;
