import type { RefTo } from '../../rows/names';
import type { SeamRow } from '../../rows/rows';

/** A seam of a shell to the same edges of its lining, whose pieces are named after the shell's. */
export function twin<C extends object, E extends string>(
  name: string,
  edges: (choices: C) => readonly RefTo<E>[],
  more: Partial<Pick<SeamRow<TwinNames<C, E>>, 'sewn' | 'kind' | 'when' | 'from' | 'after'>> = {},
): SeamRow<TwinNames<C, E>> {
  type Refs = readonly RefTo<E | Lined<E>>[];
  return {
    name,
    sewn: 2,
    first: edges as (choices: C) => Refs,
    second: (choices) => edges(choices).map((ref) => ({ ...ref, piece: `${ref.piece}-lining` })) as unknown as Refs,
    cornered: true,
    ...more,
  };
}

/** `front.neckline` of a shell is `front-lining.neckline` of its lining. */
type Lined<E extends string> = E extends `${infer P}.${infer X}` ? `${P}-lining.${X}` : never;
type TwinNames<C extends object, E extends string> = {
  readonly choices: C;
  readonly size: never;
  readonly edge: E | Lined<E>;
};
