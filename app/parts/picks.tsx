import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import './picks.css';

export type Pick<V extends string> = {
  readonly value: V;
  readonly words: string;
  readonly picture?: ComponentChildren;
  readonly note?: string;
};

type PicksProps<V extends string> = {
  readonly legend: string;
  readonly picks: readonly Pick<V>[];
  readonly chosen: V;
  readonly onPick: (value: V) => void;
  readonly quietLegend?: boolean;
  readonly large?: boolean;
};

/** One of several, each a picture and a word. What is chosen is stitched round, so that it shows without colour. */
export function Picks<V extends string>(props: PicksProps<V>) {
  const name = useId();
  return (
    <fieldset class={props.large ? 'picks large' : 'picks'}>
      <legend class={props.quietLegend ? 'unseen' : ''}>{props.legend}</legend>
      <div class="picks-row">
        {props.picks.map((pick) => (
          <label class="pick" key={pick.value}>
            <input
              type="radio"
              name={name}
              value={pick.value}
              checked={pick.value === props.chosen}
              onChange={() => props.onPick(pick.value)}
            />
            {pick.picture && <span class="pick-picture">{pick.picture}</span>}
            <span class="pick-words">
              {pick.words}
              {pick.note && <span class="pick-note">{pick.note}</span>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
