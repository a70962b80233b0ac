import type { Order } from '../body';
import type { FullOrder } from './draft-types';
import { findGarment } from './garments';
import type { Choice } from './heads';
import type { Garment } from './rows/garment';
import { allowanceRoles } from './sizes/allowances';
import { CLOTH_LIMITS, cloths, USUAL_CLOTH } from './sizes/cloths';
import { fitIds, usualFit } from './sizes/ease';

/** Where an order cannot be read: a stable code and the place in it. */
export type OrderFault = { readonly code: string; readonly where: string };
export type OrderResult =
  | { readonly ok: true; readonly order: FullOrder; readonly garment: Garment }
  | { readonly ok: false; readonly fault: OrderFault };

export const USUAL_PAPER = 'a4';

/** Fills in every default of an order and refuses what is unknown, by place: garment, choice, fit, cloth, what it is worn over, allowance. */
export function fullOrder(order: Order, taken: string): OrderResult {
  const garment = findGarment(order.garment);
  if (!garment) return fault('unknown-garment', 'garment');
  const fit = order.fit ?? usualFit(order.choices);
  if (!(fitIds as readonly string[]).includes(fit)) return fault('unknown-fit', 'fit');
  const cloth = order.cloth ?? USUAL_CLOTH;
  if (!cloths.some((each) => each.id === cloth)) return fault('unknown-cloth', 'cloth');
  if (order.over !== undefined && !cloths.some((each) => each.id === order.over)) return fault('unknown-cloth', 'over');
  const { ownCloth } = order;
  for (const [number, { min, max }] of Object.entries(CLOTH_LIMITS)) {
    const given = ownCloth?.[number as keyof typeof CLOTH_LIMITS] ?? min;
    if (!(given >= min && given <= max)) return fault('bad-cloth', `ownCloth.${number}`);
  }
  for (const [role, length] of Object.entries(order.allowances ?? {})) {
    const known = (allowanceRoles as readonly string[]).includes(role) && role !== 'fold';
    if (!known) return fault('unknown-allowance', `allowances.${role}`);
    if (!Number.isFinite(length) || length < 0 || length > MOST_ALLOWANCE_MM)
      return fault('bad-allowance', `allowances.${role}`);
  }
  const asked = order.choices ?? {};
  const choices: Record<string, string | boolean | number> = {};
  for (const [name, choice] of Object.entries(garment.choices)) choices[name] = choice.fallback;
  for (const [name, value] of Object.entries(asked)) {
    const choice = Object.hasOwn(garment.choices, name) ? garment.choices[name] : undefined;
    if (!choice) return fault('unknown-choice', `choices.${name}`);
    if (!allows(choice, value)) return fault('unknown-value', `choices.${name}`);
    choices[name] = value;
  }
  return {
    ok: true,
    garment,
    order: {
      garment: garment.id,
      choices,
      fit,
      cloth,
      ...(order.over !== undefined && { over: order.over }),
      ...(ownCloth ? { ownCloth } : {}),
      allowances: order.allowances ?? {},
      paper: order.paper ?? USUAL_PAPER,
      date: order.date ?? taken,
    },
  };
}

/** No seam or hem needs more. */
const MOST_ALLOWANCE_MM = 60;

function allows(choice: Choice, value: string | boolean | number): boolean {
  if (choice.kind === 'one') return typeof value === 'string' && choice.of.includes(value);
  if (choice.kind === 'yes') return typeof value === 'boolean';
  return typeof value === 'number' && Number.isFinite(value) && value >= choice.min && value <= choice.max;
}

function fault(code: string, where: string): OrderResult {
  return { ok: false, fault: { code, where } };
}
