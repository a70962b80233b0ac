import type { MeasureId, Mm } from '../../body';
import { settle } from '../../measuring';
import { Gap, shownLength, spoken, useWords } from '../../parts';
import { useAwake } from '../shared/awake';
import type { Entry } from '../shared/entry/entry';
import { saveUnsaved } from '../shared/entry/unsaved';
import type { Making } from '../shared/making/making';
import { troubleWords } from '../shared/trouble/attempt';
import { heardOf, useReadBack } from './read-back';

type StatusLineProps = {
  readonly making: Making;
  readonly measure: MeasureId;
  readonly entry: Entry;
  readonly missing: boolean;
  /** How often what is typed was refused while the field had the focus, which then says no more by itself. */
  readonly refused: number;
  readonly suggestion: Mm | null;
};

/** One line under the number: what is wrong with it, whether it is saved, how far readings are apart. */
export function StatusLine({ making, measure, entry, missing, refused, suggestion }: StatusLineProps) {
  const words = useWords();
  const { say, hand } = words;
  const { state } = entry;
  const heard = heardOf(entry, words);
  useReadBack(heard);
  const quiet = useQuietWords({ making, measure, entry, suggestion });
  const before = settle((making.readings[measure] ?? []).map((reading) => reading.mm));
  const empty = before ? say('screen.step.cleared', { before: before.value }) : say('screen.step.empty');
  const wrong = missing ? empty : state.is === 'wrong' ? say(state.code) : null;
  const several = (making.readings[measure] ?? []).length > 1;
  return (
    <div class="step-status" id="step-status">
      <Heard heard={heard} more={several ? quiet : null} />
      <p key={refused} class="wrong-words" role={refused > 0 ? 'alert' : undefined}>
        {wrong}
      </p>
      {state.is === 'failed' ? (
        <p class="step-failed" role="alert">
          {troubleWords(say, state.error.code)}
          <Gap />
          {say('screen.step.still-here')}
          <Gap />
          <button type="button" class="quiet" onClick={() => saveUnsaved(making, measure, state.typed, { say, hand })}>
            {say('screen.step.as-file')}
          </button>
        </p>
      ) : (
        <p class={state.is === 'saved' ? 'saved' : ''}>{wrong || !quiet ? null : <span key={quiet}>{quiet}</span>}</p>
      )}
    </div>
  );
}

/** The number once it is kept, and how far readings are apart, for whoever hears the screen. */
function Heard({ heard, more }: { readonly heard: string; readonly more: string | null }) {
  const { say, hand } = useWords();
  return (
    <p class="unseen" role="status">
      {heard === '' ? '' : more === null ? heard : say('list.after', { one: heard, two: spoken(more, hand, say) })}
    </p>
  );
}

/** What there is to say while nothing is wrong. */
function useQuietWords({
  making,
  measure,
  entry,
  suggestion,
}: Pick<StatusLineProps, 'making' | 'measure' | 'entry' | 'suggestion'>): string | null {
  const { say, hand } = useWords();
  const awake = useAwake();
  const readings = (making.readings[measure] ?? []).map((reading) => reading.mm);
  const settled = settle(readings);
  if (entry.state.is === 'saving') return say('screen.step.saving');
  if (settled && readings.length > 1) {
    const values = { count: readings.length, mean: settled.value, spread: settled.spread };
    return say(settled.ask ? 'screen.step.third' : 'screen.step.mean', values);
  }
  if (entry.state.is === 'saved') return say('screen.step.saved');
  if (entry.adding && settled) return say('screen.step.adding', { first: shownLength(settled.value, hand) });
  if (suggestion !== null) return say('screen.step.suggested', { wish: suggestion });
  if (settled) return say('screen.step.taken');
  // Once is enough: at every step it would be heard again.
  const first = Object.keys(making.readings).length === 0;
  return awake === false && first ? say('screen.step.asleep') : null;
}
