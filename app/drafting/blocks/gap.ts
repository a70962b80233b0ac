import { type Path, pathLength, splitPath } from '../geometry';

/** Of an edge, a gap takes at most this share: what is left holds the corner. */
const MOST_OF_EDGE = 0.8;

/** An edge that ends at the fold, parted from the gap there that it is turned through; `gap` mm of it, where there is so much. */
export function gapAtEnd<E extends string>(name: E, path: Path, gap: number) {
  const length = pathLength(path);
  const [sewn, open] = splitPath(path, length - Math.min(gap, length * MOST_OF_EDGE));
  return { [name]: sewn, gap: open } as { readonly [Name in E | 'gap']: Path };
}
