import type { Role } from '../../draft-types';
import type { Hems, Wrists } from '../../heads/choices';

/** How each way of finishing a hem is an edge. */
const roles: Readonly<Record<Hems['hem'], Role>> = {
  turned: 'hem',
  casing: 'casing',
  rib: 'seam',
  ready: 'finished',
  raw: 'edge',
};

export function hemRole({ hem }: Hems): Role {
  return roles[hem];
}

/** A sleeve is turned, unless the hem is left as it is cut. */
export function wristRole({ hem, wrist }: Hems & Wrists): Role {
  if (wrist === 'elastic') return 'casing';
  if (wrist === 'rib') return 'seam';
  if (wrist === 'ready') return 'finished';
  return hem === 'raw' ? 'edge' : 'hem';
}

/** A round narrower than this is hard to turn under a machine: it is hemmed while it lies flat (common practice, no source). */
export const HEMMED_FLAT_UNDER_MM = 160;

/** Laid on a finished edge, a hem is neither turned nor sewn to anything. */
export const isReady = ({ hem }: Hems): boolean => hem === 'ready';

/** Said where an edge is laid on a finished one. */
export const readyNote = { code: 'lay-on-finished', measures: [], told: () => ({}) } as const;
