import type { Role } from '../../draft-types';
import type { Choices } from '../../sizes/wearer';

/** How each way of finishing a hem is an edge. */
const roles: Readonly<Record<string, Role>> = { turned: 'hem', casing: 'casing', raw: 'edge' };

export function hemRole(choices: Choices): Role {
  return roles[String(choices.hem)] ?? 'hem';
}
