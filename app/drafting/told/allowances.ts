import type { Say, Unit } from '../../body';
import type { Piece, Role } from '../draft-types';
import type { Form } from '../sheets';

/** A space no line is broken at: a number stays with its unit. */
const NO_BREAK = '\u00a0';

/** Roles whose allowance is worth naming, in the order named. */
const named: readonly Role[] = ['seam', 'hem', 'neckline', 'opening', 'closure', 'casing', 'edge'];

/** Every allowance, drawn or to be added, by role; the widest where edges of one role differ. */
export function allowancesOf(piece: Piece, form: Form, units: Unit, say: Say): string {
  const parts = named.flatMap((role) => {
    const widths = piece.edges.filter((edge) => edge.role === role).map((edge) => edge.allowance);
    const length = Math.max(0, ...widths);
    return length > 0 ? [say(`label.allowance.${role}`, { length, unit: units })] : [];
  });
  const unbroken = parts.map((part) => part.replaceAll(' ', NO_BREAK));
  if (parts.length === 0) return say('label.nothing-added');
  return say(form === 'cut' ? 'label.included' : `label.add-${form}`, { allowances: unbroken });
}
