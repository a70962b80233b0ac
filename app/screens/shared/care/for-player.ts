import type { Order } from '../../../body';
import type { Head } from '../../../drafting/catalogue';
import type { Player } from '../../../storage';

/** What a toy of a child under three wears is made for small hands, until the maker says who dresses it. */
export function forPlayer(order: Order, row: Head, player: Player | undefined): Order {
  const asked = 'dresser' in row.choices && order.choices?.dresser === undefined;
  if (player !== 'young' || !asked) return order;
  return { ...order, choices: { ...order.choices, dresser: 'small-child' } };
}
