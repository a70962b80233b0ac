import type { Role } from '../../draft-types';
import type { Hems } from '../../heads/choices';

/** How each way of finishing a hem is an edge. */
const roles: Readonly<Record<Hems['hem'], Role>> = { turned: 'hem', casing: 'casing', raw: 'edge' };

export function hemRole({ hem }: Hems): Role {
  return roles[hem];
}
