import type { Mm } from '../../body';
import type { Notch, Ref } from '../draft-types';
import { end, type Path, type Point, pathLength, pointAtLength, start } from '../geometry';

/** A place along one side of a seam. */
export type Mark = { readonly at: Point; readonly along: Mm };

/** One edge of a side of a seam as it is walked, and the notches of its piece. */
export type Walked = { readonly run: Path; readonly ref: Ref; readonly notches: readonly Notch[] };

/** Marks nearer than this are one, mm. */
const ONE_MM = 1.5;

/** The ends of a side, its notches and its joints, in order; no farther than `until`, mm from its start. */
export function marksAlong(edges: readonly Walked[], until = Number.POSITIVE_INFINITY): readonly Mark[] {
  let before = 0;
  const marks: Mark[] = [];
  for (const { run, ref, notches } of edges) {
    if (run.length === 0) continue;
    const length = pathLength(run);
    marks.push({ at: start(run), along: before });
    for (const { edge, at } of notches) {
      if (edge !== ref.edge) continue;
      const along = ref.back ? length - at : at;
      marks.push({ at: pointAtLength(run, along).point, along: before + along });
    }
    const over = before + length - until;
    marks.push(
      over > 0
        ? { at: pointAtLength(run, Math.max(length - over, 0)).point, along: until }
        : { at: end(run), along: before + length },
    );
    before += length;
  }
  return marks
    .filter(({ along }) => along <= until)
    .sort((a, b) => a.along - b.along)
    .filter((mark, index, all) => index === 0 || mark.along - (all[index - 1]?.along ?? 0) > ONE_MM);
}
