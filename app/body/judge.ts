import type { Body } from './body';
import type { Order } from './card';
import type { Flag } from './flag';
import { flagsOf } from './flags-of';
import type { RuleContext } from './rule';
import { scaleOf } from './scale';
import { turnedUp } from './turned-up';

/**
 * The one judgement of a body's numbers, whoever asks: screens, command and drafting. The order says how much is turned
 * up; `measures` is what its garment needs (all of them where left out), `readings` repeated ones to compare.
 */
export function judge(
  body: Body,
  order: Partial<Order>,
  heard: Pick<RuleContext, 'measures' | 'readings'> = {},
): readonly Flag[] {
  return flagsOf(body, { ...heard, hemAllowance: turnedUp(order, scaleOf(body)) });
}
