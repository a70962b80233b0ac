import type { Mm } from '../../../body';
import type { RefTo } from '../../rows/names';
import type { SeamRow } from '../../rows/rows';
import { type Darts, dartsOf } from '../../sizes/dart';
import type { SideSize, TrunkSize } from '../../sizes/trunk';
import type { Side } from './top';

type Size = TrunkSize | SideSize;
type Seen = { readonly sizes: Parameters<typeof dartsOf>[0] };
type Names<E extends string> = {
  readonly choices: object;
  readonly size: Size;
  readonly edge: E;
};
type Line = 'dart-near' | 'dart-far' | 'outer-dart-near' | 'outer-dart-far';

/** What half a front or back is fed for its darts. */
export function dartFeed(side: Side) {
  const fed =
    (part: keyof Darts) =>
    ({ sizes }: Seen): Mm | null =>
      dartsOf(sizes)[side]?.[part] ?? null;
  return {
    dartCount: fed('count'),
    dartWidth: fed('width'),
    dartUp: fed('up'),
    dartDown: fed('down'),
  } as const;
}

/** Said where there are darts: what each takes in. */
export const darted = (['front', 'back'] as const).flatMap((side) =>
  ([1, 2] as const).map((count) => ({
    code: `${side}-darted${count > 1 ? '-twice' : ''}`,
    measures: ['body-girth', 'chest-girth'] as const,
    told: ({ sizes }: Seen) => {
      const darts = dartsOf(sizes)[side];
      return darts?.count === count ? { width: darts.width } : null;
    },
  })),
);

/** The two lines of each dart of a front and back, or of their linings, sewn to each other where there are any. */
export function dartSeams<P extends string>(
  named: (side: Side) => string,
  piece: (side: Side) => P,
): SeamRow<Names<`${P}.${Line}`>>[] {
  return (['front', 'back'] as const).flatMap((side) =>
    (['', 'outer-'] as const).map((which, index) => {
      const leg =
        (end: 'near' | 'far') =>
        (_: object, sizes: Seen['sizes']): RefTo<`${P}.${Line}`>[] =>
          (dartsOf(sizes)[side]?.count ?? 0) > index
            ? [
                {
                  piece: piece(side),
                  edge: `${which}dart-${end}`,
                } as unknown as RefTo<`${P}.${Line}`>,
              ]
            : [];
      return {
        name: `${named(side)}-${which}dart`,
        sewn: 2,
        kind: 'laid',
        first: leg('near'),
        second: leg('far'),
      };
    }),
  );
}
