import { longestTie } from '../../../body';
import { useWords } from '../../../parts';
import type { Player, Toy } from '../../../storage';
import './care.css';

/** What is said of clothes by whose hands they are for; a toy nobody was named for is taken for a small child's. */
const cautions: Readonly<Record<Player, readonly string[]>> = {
  young: ['child', 'ties', 'tools', 'heat', 'hook'],
  older: ['older', 'ties', 'tools', 'heat', 'hook'],
  grown: ['given', 'tools', 'heat', 'hook'],
};
/** And while it is chosen how it is made: what lies about on the table comes later. */
const whileChoosing: readonly string[] = ['child', 'older', 'given', 'ties', 'hook'];

type CareListProps = { readonly toy: Pick<Toy, 'plays'>; readonly choosing?: boolean };

/** The usual cautions, short, deferring to local rules. */
export function CareList({ toy, choosing = false }: CareListProps) {
  const { say, hand } = useWords();
  const all = cautions[toy.plays ?? 'young'];
  const shown = choosing ? all.filter((caution) => whileChoosing.includes(caution)) : all;
  return (
    <>
      <ul>
        {shown.map((caution) => (
          <li key={caution}>{say(`screen.care.${caution}`, { longest: longestTie(hand.unit) })}</li>
        ))}
      </ul>
      <p class="soft small">{say('screen.care.rules')}</p>
    </>
  );
}

/** The cautions under a title of their own. */
export function Care({ toy }: Pick<CareListProps, 'toy'>) {
  const { say } = useWords();
  return (
    <section class="care">
      <h2>{say('screen.care.title')}</h2>
      <CareList toy={toy} />
    </section>
  );
}
