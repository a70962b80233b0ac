import type { Order } from '../../body';
import type { Head } from '../../drafting/catalogue';
import { Picks, useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';

/** By the cloth it is of: nobody measures how thick a shirt is. */
const beneath = ['nothing', 'jersey', 'sweatshirt-fleece'] as const;
/** Only what closes round the body is worn over something. */
const ROUND: readonly string[] = ['chest-girth', 'body-girth', 'over-arms-girth', 'waist-girth'];

type OverPicksProps = {
  readonly row: Pick<Head, 'needs'>;
  readonly order: Order;
  readonly onChange: (over: string | undefined) => void;
};

/** What the garment is worn over: it then has room for both. */
export function OverPicks({ row, order, onChange }: OverPicksProps) {
  const { say } = useWords();
  if (!row.needs.some(({ measure }) => ROUND.includes(measure))) return null;
  const chosen = beneath.find((each) => each === order.over) ?? 'nothing';
  return (
    <Folded title={say('over.name')} stands={say(`over.${chosen}`)}>
      <div class="theme">
        <Picks
          legend={say('over.name')}
          quietLegend
          chosen={chosen}
          onPick={(value) => onChange(value === 'nothing' ? undefined : value)}
          picks={beneath.map((value) => ({ value, words: say(`over.${value}`) }))}
        />
        <p class="soft small">{say('over.what')}</p>
      </div>
    </Folded>
  );
}
