import type { Order, Scale } from '../../body';
import { usualAllowances } from '../../drafting/catalogue';
import { useWords } from '../../parts';
import { AmountField } from '../shared/making/amount-field';

/** What a maker sets herself, and how far it may go, mm: beyond this a small piece has no room for it. */
const offered = { seam: [3, 20], hem: [3, 40], neckline: [3, 15] } as const;

type AllowanceFieldsProps = {
  readonly order: Order;
  readonly scale: Scale;
  readonly onChange: (more: Partial<Order>) => void;
};

/** Seam allowances: good as they are for most, so folded away. */
export function AllowanceFields({ order, scale, onChange }: AllowanceFieldsProps) {
  const { say } = useWords();
  return (
    <details class="folded-fields">
      <summary>{say('screen.allowance.name')}</summary>
      <p class="soft small">{say('screen.choices.allowances')}</p>
      {Object.entries(offered).map(([role, [min, max]]) => (
        <AmountField
          key={role}
          legend={say(`screen.allowance.${role}`)}
          kind={{ kind: 'length', min, max, fallback: min }}
          value={order.allowances?.[role] ?? usualAllowances(scale)[role as keyof typeof offered]}
          onChange={(value) => onChange({ allowances: { ...order.allowances, [role]: value } })}
        />
      ))}
    </details>
  );
}
