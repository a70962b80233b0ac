import { useWords } from '../../parts';
import type { Part } from './chosen';

type PartPicksProps = {
  readonly parts: readonly Part[];
  /** The parts that stay at home. */
  readonly left: ReadonlySet<Part>;
  readonly onLeft: (left: ReadonlySet<Part>) => void;
};

/** What goes along: a tick a part. */
export function PartPicks({ parts, left, onLeft }: PartPicksProps) {
  const { say } = useWords();
  const turn = (part: Part, along: boolean) =>
    onLeft(new Set([...parts].filter((each) => (each === part ? !along : left.has(each)))));
  return (
    <fieldset class="part-picks">
      <legend>{say('screen.share.parts')}</legend>
      {parts.map((part) => (
        <label key={part}>
          <input
            type="checkbox"
            checked={!left.has(part)}
            onChange={(event) => turn(part, event.currentTarget.checked)}
          />
          <span>
            {say(`card.part.${part}`)}
            {part === 'photo' && <small class="soft"> {say('screen.share.photo-file')}</small>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
