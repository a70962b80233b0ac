import { type Mm, unitFace } from '../../../body';
import { sayFirst, shownLength, useWords } from '../../../parts';
import { LengthTable } from '../length-table';
import type { Chosen, Since } from './since';
import { isSame } from './since';
import './since-list.css';

type SinceListProps = {
  readonly since: Since;
  /** What stands over the numbers as they were: a day, or another toy's name. */
  readonly before: string;
};

/** What is another way than it was: the finished sizes, before and now, and under them why. */
export function SinceList({ since, before }: SinceListProps) {
  const { say, hand } = useWords();
  const length = (mm: Mm) => shownLength(mm, hand, true);
  const { sizes, measures, choices, engine } = since;
  return (
    <div class="since">
      {sizes.length === 0 ? (
        <p>{say(isSame(since) ? 'screen.since.same' : 'screen.since.same-sizes')}</p>
      ) : (
        <LengthTable
          label={say('screen.since.sizes')}
          heads={[say('screen.since.finished', { unit: unitFace(hand) }), before, say('screen.since.now')]}
          rows={sizes.map((size) => ({ key: size.name, name: say(size.name), lengths: [size.before, size.now] }))}
        />
      )}
      <ul class="soft small">
        {measures.map((each) => (
          <li key={each.name}>
            {say('screen.since.measured', {
              name: say(`measure.${each.name}.name`),
              before: length(each.before),
              now: length(each.now),
            })}
          </li>
        ))}
        {choices.map((each) => (
          <li key={each.name}>
            {say('screen.since.chosen', {
              name: say(`${each.name}.name`),
              before: chosenWords(each.name, each.before),
              now: chosenWords(each.name, each.now),
            })}
          </li>
        ))}
        {engine && <li>{say('screen.since.engine', engine)}</li>}
      </ul>
    </div>
  );

  function chosenWords(name: string, value: Chosen): string {
    return sayFirst(say, [`${name}.${value}`, `screen.choices.${value}`, String(value)]);
  }
}
