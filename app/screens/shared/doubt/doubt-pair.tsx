import { useMemo } from 'preact/hooks';
import type { Flag, Mm } from '../../../body';
import { compared } from '../../../measuring';
import { shownLength, TapedFigure, useWords } from '../../../parts';
import { inTypedUnit } from '../making/flag-words';
import type { Making } from '../making/making';
import { roughly } from '../making/roughly';
import { type Doubted, doubtedOf, type Side } from './doubted';
import './doubt-pair.css';

/** Half of a small phone's width, and what is left there above the words. */
const FRAME = { width: 170, height: 240 };

type DoubtPairProps = { readonly making: Making; readonly flag: Flag };

/** The toy as the doubted number would have it, and beside it as the likely one would; the numbers under each. */
export function DoubtPair({ making, flag }: DoubtPairProps) {
  const { kind, traits } = making.body;
  const doubted = useMemo(() => doubtedOf(making, flag), [making, flag]);
  const drawn = useMemo(() => {
    if (!doubted) return [];
    const sides = [doubted.typed, ...(doubted.likely ? [doubted.likely] : [])];
    return compared(
      kind,
      traits,
      doubted.measure,
      sides.map(({ numbers }) => numbers),
      FRAME,
    );
  }, [kind, traits, doubted]);
  const [wrong, likely] = drawn;
  if (!doubted || !wrong) return null;
  return (
    <div class="doubt-pair">
      <figure class="doubt-side">
        <TapedFigure diagram={wrong} />
        <Caption doubted={doubted} side={doubted.typed} likely={false} />
      </figure>
      {likely && doubted.likely && (
        <figure class="doubt-side">
          <TapedFigure diagram={likely} />
          <Caption doubted={doubted} side={doubted.likely} likely />
        </figure>
      )}
    </div>
  );
}

type CaptionProps = { readonly doubted: Doubted; readonly side: Side; readonly likely: boolean };

function Caption({ doubted: { kind, sure, typed }, side: { lengths }, likely }: CaptionProps) {
  const { say, hand } = useWords();
  // Beside what was typed in inches stand inches.
  const beside = inTypedUnit(typed.lengths[0]?.mm, hand);
  const exact = !likely || sure || kind === 'readings';
  const shown = (mm: Mm) =>
    exact
      ? shownLength(mm, likely && sure ? hand : inTypedUnit(mm, hand))
      : say('screen.doubt.about', { length: shownLength(roughly(mm, beside), beside) });
  const [first] = lengths;
  const what = kind === 'readings' ? (likely ? 'second' : 'first') : likely ? (sure ? 'likely' : 'usual') : 'typed';
  return (
    <figcaption>
      {kind === 'swapped'
        ? lengths.map(({ measure, mm }) => (
            <span key={measure} class="doubt-two">
              {say(`measure.${measure}.name`)} <b>{shown(mm)}</b>
            </span>
          ))
        : first && <b class="doubt-number">{shown(first.mm)}</b>}
      <span class="soft">{say(`screen.doubt.${what}`)}</span>
    </figcaption>
  );
}
