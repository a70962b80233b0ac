import type { Offered } from '../../drafting/catalogue';

export type Theme = { readonly id: string; readonly choices: readonly Offered[] };

/** What a garment is above all: asked before anything else. */
const FIRST: readonly string[] = [
  'collar',
  'coatNeck',
  'bodice',
  'skirt',
  'trousers',
  'pants',
  'sock',
  'heel',
  'tunicNeck',
  'wings',
];

/** What belongs together, in the order it is thought of; a choice that is in none comes last, with the finish. */
const THEMES: Readonly<Record<string, readonly string[]>> = {
  opening: ['dresser', 'opening', 'closes', 'closedBy', 'buttons', 'straps'],
  sleeves: ['sleeve', 'armhole', 'wrist', 'shorterSleeve', 'covers'],
  legs: ['legs', 'waist', 'gusset', 'tail', 'coatLegs', 'shorterLeg'],
  hood: ['hood', 'chin', 'hoodEdge', 'ears'],
  ears: ['hatEars'],
  neck: ['neck'],
};

/** What a garment asks: what is to be decided first, and the rest by theme. */
export function sorted(asked: readonly Offered[]): { first: readonly Offered[]; themes: readonly Theme[] } {
  const rest = asked.filter(({ name }) => !FIRST.includes(name));
  const themed = Object.entries(THEMES).map(([id, names]) => ({
    id,
    choices: rest.filter(({ name }) => names.includes(name)),
  }));
  const placed = themed.flatMap(({ choices }) => choices);
  const finish = { id: 'finish', choices: rest.filter((each) => !placed.includes(each)) };
  return {
    first: asked.filter(({ name }) => FIRST.includes(name)),
    themes: [...themed.filter(({ choices }) => choices.length > 0), finish],
  };
}
