import type { Join, Mark, PencilLine, PencilPiece } from './plan';

/** One thing to do with ruler and pencil: mark a point, or join points; `ends` where a line is then whole. */
export type PencilStep =
  | { readonly does: 'mark'; readonly mark: Mark; readonly line: PencilLine }
  | { readonly does: 'join'; readonly join: Join; readonly line: PencilLine; readonly ends: boolean };

/** A piece in the order it is drawn: the points of each join as far as they are not there yet, then the join. */
export function pencilSteps({ marks, lines }: PencilPiece): readonly PencilStep[] {
  const marked = new Set<number>();
  return lines.flatMap((line) =>
    line.joins.flatMap((join, at): readonly PencilStep[] => {
      const fresh = marks.filter(({ number }) => join.through.includes(number) && !marked.has(number));
      for (const { number } of fresh) marked.add(number);
      return [
        ...fresh.map((mark) => ({ does: 'mark', mark, line }) as const),
        { does: 'join', join, line, ends: at === line.joins.length - 1 },
      ];
    }),
  );
}
