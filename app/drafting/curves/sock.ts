import type { Mm } from '../../body';
import { arc, type Path, point, polyline, transformPath } from '../geometry';

/** Half a sock beside its fold, mm: see the block `sock`. */
export type SockFrame = {
  readonly sockTop: Mm;
  readonly sockFoot: Mm;
  readonly sockEven: Mm;
  readonly sockHigh: Mm;
  readonly sockLong: Mm;
  readonly sockToe: Mm;
};

/** The one seam of a sock, from its top down behind the leg, along the sole and round the toes, x right of the fold, y down. */
export function sockSeam({ sockTop, sockFoot, sockEven, sockHigh, sockLong, sockToe }: SockFrame): Path {
  const straight = sockLong - sockToe;
  const narrows = sockTop > sockFoot ? [point(sockTop, sockEven), point(sockFoot, sockHigh)] : [];
  const down = polyline([point(sockTop, 0), ...narrows, point(sockFoot, straight)]);
  const toes = transformPath(arc(point(0, 0), 1, 0, Math.PI / 2), ({ x, y }) =>
    point(x * sockFoot, straight + y * sockToe),
  );
  return [...down, ...toes];
}
