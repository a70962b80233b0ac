import type { Mm } from '../../../body';
import type { RefTo } from '../../rows/names';
import type { SeamRow } from '../../rows/rows';
import { type Dart, frontDart } from '../../sizes/dart';
import type { SideSize, TrunkSize } from '../../sizes/trunk';

type Size = TrunkSize | SideSize;
type Seen = { readonly sizes: Parameters<typeof frontDart>[0] };
type Names<E extends string> = { readonly choices: object; readonly size: Size; readonly edge: E };

const fed =
  (part: keyof Dart) =>
  ({ sizes }: Seen): Mm | null =>
    frontDart(sizes)?.[part] ?? null;

/** What a front is fed for its dart. */
export const dartFeed = { dartWidth: fed('width'), dartUp: fed('up'), dartDown: fed('down') } as const;

/** Said where a front has darts, and how much each takes in. */
export const darted = {
  code: 'front-darted',
  measures: ['body-girth', 'chest-girth'],
  told: ({ sizes }: Seen) => {
    const dart = frontDart(sizes);
    return dart && { width: dart.width };
  },
} as const;

/** The two lines of a front's darts, or of its lining's, sewn to each other where there are any. */
export function dartSeam<E extends string>(name: string, near: RefTo<E>, far: RefTo<E>): SeamRow<Names<E>> {
  const leg = (ref: RefTo<E>) => (_: object, sizes: Seen['sizes']) => (frontDart(sizes) ? [ref] : []);
  return { name, sewn: 2, kind: 'laid', first: leg(near), second: leg(far) };
}
