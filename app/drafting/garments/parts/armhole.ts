import type { RefTo } from '../../rows/names';
import { only } from '../../rows/part';
import { bindingPart } from './binding';
import type { Armholes } from './sleeve-match';
import type { Top } from './top';

/** Armholes without a sleeve are bound, too hollow to turn; or lined. */
export const armholePart = <C extends object>({ arm, lined }: Top<C>) =>
  only(
    (choices: C) => arm(choices) === 'bare' && !lined(choices),
    bindingPart('armhole-binding', {
      edge: (): RefTo<Armholes>[] => [
        { piece: 'front', edge: 'armhole', back: true },
        { piece: 'back', edge: 'armhole' },
      ],
      closed: () => true,
      ends: () => 'front',
      rings: 2,
      hollow: () => true,
    }),
  );
