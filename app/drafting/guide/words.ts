import type { Mm, Say, Unit } from '../../body';
import type { Draft } from '../draft-types';
import { ofCloth } from '../pieces/how-many';
import { type ClothHand, handOf } from './cloth-hand';
import type { CutRow, GuideStep, Note } from './guide-types';
import { isSelf, sidesOf } from './kind';
import type { Term } from './terms';
import type { Way } from './time';

/** Words for a garment's own guide: how `say` says them, in which unit, and whether a machine sews. */
export type Telling = { readonly say: Say; readonly unit: Unit; readonly way: Way };

/** Differences under this are not told: nobody pins them, mm. */
const TOLD_MM = 1.5;

/** What a step is about, as a heading. */
export function titleOf({ kind, seams }: GuideStep, say: Say): string {
  if (kind === 'stay' || kind === 'snip') return say(`guide.${kind}-title`);
  const names = seams.map(({ name }) => say(`seam.${name}`));
  const [first = '', ...others] = new Set(names);
  return say('list.row', { of: [first, ...others.map((name) => say('list.following', { name }))] });
}

/** What to do, in two or three sentences. */
export function kindWords(step: GuideStep, { say, unit }: Telling): string {
  const { kind, first, second, allowance, seams } = step;
  const named = (pieces: readonly string[]) =>
    say('list.all', { of: [...new Set(pieces)].map((piece) => say('list.quoted', { name: say(`piece.${piece}`) })) });
  const [longer, extra] = [seams.reduce((sum, each) => sum + each.secondLength, 0), extraOf(step)];
  const values = {
    first: named(first),
    second: named(second.length > 0 ? second : first),
    allowance,
    half: allowance / 2,
    extra,
    longer,
    times: seams[0]?.ratio ?? 1,
    unit,
  };
  if (kind === 'ease' && extra < TOLD_MM) return say('guide.how.join', values);
  if (kind === 'casing' && step.flat && step.shares) return say('guide.how.casing-shared', values);
  if (kind === 'casing' && step.flat) return say('guide.how.casing-flat', values);
  if (kind === 'bind' && extra >= TOLD_MM) return say('guide.how.bind-eased', values);
  if (step.folds) return say('guide.how.ring', values);
  const [folded, laid] = [seams.filter(isSelf), seams.filter((seam) => !isSelf(seam))].map(sidesOf);
  if (kind === 'join' && folded && folded.first.length > 0 && laid && laid.second.length > 0)
    return say('guide.how.join-on', {
      ...values,
      first: named(laid.first),
      second: named(laid.second),
      folded: named(folded.first),
    });
  const pair = second.length === 0 && (kind === 'join' || kind === 'bag');
  const halves = pair && new Set(first).size > 1;
  return say(pair ? `guide.how-pair.${kind}${halves ? '-halves' : ''}` : `guide.how.${kind}`, values);
}

/** How much longer the one side is than the other, mm, at one place. */
function extraOf({ seams }: GuideStep): Mm {
  return seams.reduce((sum, each) => sum + Math.max(0, each.secondLength - each.firstLength), 0);
}

export const noteWords = ({ code, values }: Note, { say, unit, way }: Telling): string =>
  say(`guide.note.${byWay.has(code) ? `${code}-${way}` : code}`, { ...values, unit });

/** Notes that differ by hand and by machine. */
const byWay: ReadonlySet<string> = new Set(['overcast', 'two-threads', 'firm-dart', 'raw-frays']);

/** How many of a piece to cut, and how. */
export function cutWords(row: CutRow, say: Say): string {
  const { piece, copies, mirrored, onFold } = row;
  const how = mirrored ? 'cut-mirrored' : onFold ? 'cut-on-fold' : 'cut';
  const cut = say(`guide.${how}`, { count: copies, half: copies / 2 });
  return say('list.named', { name: say(`piece.${piece}`), what: ofCloth(row, cut, say) });
}

/** A word of the trade and what it means, where there is nothing to tap: on paper. */
export const termWords = (term: Term, say: Say): string =>
  say('list.named', { name: say(`term.${term}.name`), what: say(`term.${term}.means`) });

/** Needle, stitch and thread for the cloth of a draft. */
export function settingWords({ order }: Pick<Draft, 'order'>, { say, way }: Telling): string {
  const hand: ClothHand = handOf(order.cloth);
  if (way === 'hand')
    return say('guide.set.hand', {
      needle: hand.handNeedle,
      stitch: hand.handStitch,
      stitches: say(`guide.stitch.${hand.gives ? 'backstitch-short' : 'backstitch'}`),
    });
  return say('guide.set.machine', {
    needle: hand.machineNeedle,
    point: say(`guide.point.${hand.point}`),
    stitch: hand.stitch,
    stitches: say(`guide.stitch.${hand.gives ? 'zigzag' : 'straight'}`),
  });
}
