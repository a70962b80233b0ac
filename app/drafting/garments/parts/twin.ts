import type { Ref } from '../../draft-types';
import type { SeamRow } from '../../rows/garment';
import type { Choices } from '../../sizes/wearer';

/** A seam of a shell to the same edges of its lining, whose pieces are named after the shell's. */
export function twin(
  name: string,
  edges: (choices: Choices) => readonly Ref[],
  more: Partial<Pick<SeamRow, 'sewn' | 'kind' | 'when'>> = {},
): SeamRow {
  return {
    name,
    sewn: 2,
    first: edges,
    second: (choices) => edges(choices).map((ref) => ({ ...ref, piece: `${ref.piece}-lining` })),
    cornered: true,
    ...more,
  };
}
