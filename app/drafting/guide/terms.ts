import type { Guide, GuideStep, Kind } from './guide-types';
import type { Way } from './time';

/** Words of the trade that a drawing and a sentence explain. */
const terms = [
  'right-sides',
  'allowance',
  'notch',
  'grain',
  'fold',
  'bias',
  'stay-stitch',
  'ease',
  'gather',
  'pleat',
  'dart',
  'binding',
  'facing',
  'hem',
  'casing',
  'tack',
  'snip',
  'overcast',
  'backstitch',
  'ladder-stitch',
] as const;
export type Term = (typeof terms)[number];

/** What is spoken of at a step, by what is done there. */
const byKind: Readonly<Record<Kind, readonly Term[]>> = {
  stay: ['stay-stitch', 'allowance'],
  snip: ['snip', 'allowance'],
  join: ['right-sides', 'notch', 'allowance'],
  ease: ['ease', 'right-sides', 'notch'],
  gather: ['gather', 'right-sides', 'notch'],
  stretch: ['right-sides', 'notch'],
  pleat: ['pleat', 'tack', 'right-sides'],
  bag: ['right-sides', 'allowance'],
  ring: ['right-sides', 'allowance'],
  bind: ['binding', 'bias', 'right-sides'],
  'bind-over': ['binding'],
  'bind-end': ['binding'],
  inside: ['ladder-stitch'],
  'turn-in': ['casing'],
  lap: [],
  gap: ['ladder-stitch'],
  'by-hand': ['ladder-stitch'],
  baste: ['tack', 'facing'],
  place: ['allowance', 'tack'],
  slit: ['right-sides', 'facing'],
  dart: ['dart', 'right-sides'],
  'dart-open': ['dart', 'right-sides', 'allowance'],
  hem: ['hem'],
  'raw-hem': ['hem'],
  closure: ['hem'],
  casing: ['casing'],
  turn: ['hem'],
};

/** What is spoken of too where it is sewn by hand: a machine stitches through. */
const byHand: Readonly<Partial<Record<Kind, Term>>> = { 'bind-over': 'ladder-stitch', hem: 'ladder-stitch' };

const byNote: Readonly<Record<string, Term>> = {
  snip: 'snip',
  overcast: 'overcast',
  understitch: 'facing',
  elastic: 'casing',
};

/** More chips than this would take a second line on a small phone. */
const MOST = 3;

export const termsAt = (step: Pick<GuideStep, 'kind' | 'notes'>, way: Way): readonly Term[] =>
  spokenOf(step, way).slice(0, MOST);

/** All words of the trade that a guide speaks of, in the order they are met. */
export function termsIn({ steps }: Pick<Guide, 'steps'>, way: Way): readonly Term[] {
  const met = new Set<Term>([...termsOnPaper, ...steps.flatMap((step) => spokenOf(step, way))]);
  return [...met];
}

function spokenOf({ kind, notes }: Pick<GuideStep, 'kind' | 'notes'>, way: Way): readonly Term[] {
  const noted = notes.flatMap(({ code }) => byNote[code] ?? []);
  const [first, ...others] = byKind[kind];
  const hand = way === 'hand' ? byHand[kind] : undefined;
  return [...new Set([first, ...noted, ...others, hand].flatMap((term) => term ?? []))];
}

/** What stands on paper and is asked about before the first step. */
export const termsOnPaper: readonly Term[] = ['grain', 'fold', 'notch', 'allowance', 'bias', 'right-sides'];
