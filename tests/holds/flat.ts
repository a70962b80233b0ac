import type { Draft, Ref, Seam } from '../../app/drafting/draft-types';

/**
 * A joined seam that has become a ring before it is sewn, though it could have been sewn while it lay flat: another seam joins the
 * two edges beside its ends (a sleeve's underarm, the armhole's side), was sewn earlier, and was not needed for it, for it does not
 * run across that seam.
 */
export function sewnRound(draft: Draft): readonly string[] {
  const order = draft.sewing.flatMap(({ seams }) => seams);
  const at = (seam: Seam) => order.indexOf(seam.name);
  return draft.seams.filter(joins).flatMap((late) =>
    [late.first, late.second].flatMap((side) => {
      const ends = endsOf(draft, side);
      const early = draft.seams.find(
        (seam) =>
          joins(seam) && seam !== late && at(seam) < at(late) && pairs(seam, ends) && !isAcross(draft, seam, side),
      );
      return early ? [`${late.name} is sewn in the round, after ${early.name}`] : [];
    }),
  );
}

const joins = ({ join }: Seam) => join !== 'folded' && join !== 'laid';
const keyOf = ({ piece, edge }: Ref) => `${piece}.${edge}`;

/** The edges beside both ends of a side, as it is walked. */
function endsOf(draft: Draft, side: readonly Ref[]): readonly [string, string] {
  const [head, tail] = [side[0], side.at(-1)];
  return [head ? beside(draft, head, 'start') : '', tail ? beside(draft, tail, 'end') : ''];
}

function beside({ pieces }: Draft, { piece, edge, back }: Ref, end: 'start' | 'end'): string {
  const names = pieces.find(({ name }) => name === piece)?.edges.map(({ name }) => name) ?? [];
  const step = (end === 'start') !== Boolean(back) ? names.length - 1 : 1;
  return `${piece}.${names[(names.indexOf(edge) + step) % names.length]}`;
}

function pairs({ first, second }: Seam, [one, two]: readonly [string, string]): boolean {
  const [a, b] = [first.map(keyOf), second.map(keyOf)];
  return one !== two && ((a.includes(one) && b.includes(two)) || (a.includes(two) && b.includes(one)));
}

/** Joins two edges that meet where the side passes from one piece to the next: it is needed first. */
function isAcross(draft: Draft, seam: Seam, side: readonly Ref[]): boolean {
  return side.slice(1).some((ref, index) => {
    const before = side[index];
    return before !== undefined && pairs(seam, [beside(draft, before, 'end'), beside(draft, ref, 'start')]);
  });
}
