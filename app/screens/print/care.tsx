import { longestTie } from '../../body';
import { useWords } from '../../parts';

const cautions = ['child', 'ties', 'tools', 'heat', 'hook'] as const;

/** The usual cautions, short, deferring to local rules. */
export function Care() {
  const { say, hand } = useWords();
  return (
    <section class="care">
      <h2>{say('screen.care.title')}</h2>
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>{say(`screen.care.${caution}`, { longest: longestTie(hand.unit) })}</li>
        ))}
      </ul>
      <p class="soft small">{say('screen.care.rules')}</p>
    </section>
  );
}
