import type { Hems, Sleeves, Wrists } from '../../heads/choices';
import type { Look } from '../../rows/names';
import type { Instead } from '../../rows/rows';
import { LEAST_LIMB_EASE_MM } from '../../sizes/ease';
import { LEAST_INSET_MM, LEAST_SHOULDER_MM } from '../../sizes/shoulder';
import { hasSleeve, isInOne, isPuffed, isRaglan, setIn } from './sleeve-match';

type Names = {
  readonly choices: Sleeves & Hems & Wrists;
  readonly size: 'inset' | 'shoulder';
  readonly edge: never;
};

/** A tube so narrow is not sewn into an armhole: it is cut in one with its front and back (common practice, no source). */
const NARROWEST_SET_IN_MM = 30;

/** Round the arm with ease and over the paw, as it was measured and not yet fitted to an armhole. */
const isNarrow = (wearer: Look<Names>['wearer']) =>
  Math.max(wearer.girth('upper-arm-girth', 1, LEAST_LIMB_EASE_MM), wearer.of('paw-girth')) < NARROWEST_SET_IN_MM;

/** Where another sleeve suits the arm better, or is all that can be sewn. */
export const sleeveInstead: readonly Instead<Names>[] = [
  ...(['set-in', 'raglan'] as const).map((from) => ({
    choice: 'armhole' as const,
    from,
    to: 'in-one' as const,
    code: 'in-one-instead',
    check: ['upper-arm-girth'] as const,
    when: ({ choices, wearer }: Look<Names>) => hasSleeve(choices) && !isPuffed(choices) && isNarrow(wearer),
    onlyAuto: true as const,
  })),
  {
    // Cut in one its cuff lies aslant: no finished edge does.
    choice: 'wrist',
    from: 'ready',
    to: 'turned',
    code: 'wrist-turned-instead',
    check: [],
    when: ({ choices }) => isInOne(choices),
  },
  {
    choice: 'sleeve',
    from: 'puffed',
    to: 'short',
    code: 'short-instead',
    check: [],
    when: (look) => isRaglan(look.choices),
  },
  {
    choice: 'armhole',
    from: 'set-in',
    to: 'raglan',
    code: 'raglan-instead',
    check: ['shoulder-length', 'armhole-depth', 'upper-arm-girth'],
    when: (look, failed) => setIn(look.choices) && (failed === 'sleeve' || failed === 'arm-root'),
  },
  // It can be set into so small a shoulder, hard though it is to sew: where she asked for it, it is.
  {
    choice: 'armhole',
    from: 'set-in',
    to: 'raglan',
    code: 'raglan-instead',
    check: ['shoulder-length', 'armhole-depth', 'upper-arm-girth'],
    when: ({ choices, sizes }) =>
      setIn(choices) && (sizes.inset < LEAST_INSET_MM - 0.01 || sizes.shoulder < LEAST_SHOULDER_MM),
    onlyAuto: true,
  },
];
