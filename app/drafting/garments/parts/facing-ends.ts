import { isOpen } from '../../heads/choices';

/** Where a front or a back opens, its facing ends at the opening, folded in. */
export const facingEnds = (['front', 'back'] as const).map((side) => ({
  name: `facing-${side}-end`,
  sewn: 2 as const,
  kind: 'folded' as const,
  first: [{ piece: `${side}-facing`, edge: 'centre' } as const],
  second: [],
  when: isOpen(side),
}));
