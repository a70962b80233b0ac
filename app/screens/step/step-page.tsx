import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type Flag, findMeasure, type MeasureId, takingOf } from '../../body';
import { Gap, Header, Icon, Keypad, LengthField, TapeLine, useHeading, useWords } from '../../parts';
import { useEntry } from '../shared/entry/entry';
import { useLost } from '../shared/entry/lost';
import { afterTape, doubtsNow, type Making, nextStep } from '../shared/making/making';
import { makingWords } from '../shared/making/outfit';
import { putRight, type Remedy } from '../shared/making/remedy';
import { StepsLeft } from '../shared/making/steps-left';
import { usePlace } from '../shared/places';
import { go, to } from '../shared/route';
import { setUnit } from '../shared/set-unit';
import { useAttempt } from '../shared/trouble/attempt';
import { Doubt } from './doubt';
import { StatusLine } from './status-line';
import { StepActs } from './step-acts';
import { StepFigure } from './step-figure';
import { suggestionFrom } from './suggestion';
import type { Then } from './then';
import { useTypingAnywhere } from './typing-anywhere';
import './step.css';
import './step-windows.css';

type StepPageProps = { readonly making: Making; readonly measure: MeasureId; readonly then: Then };

/** A measuring step: where the tape goes, what to mind, the number, and the way on. */
export function StepPage({ making, measure, then }: StepPageProps) {
  const { toy, garment, steps, readings, screens } = making;
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const taken = readings[measure] ?? [];
  const name = say(`measure.${measure}.name`);
  const taking = takingOf(toy.kind, measure);
  const entry = useEntry({
    toyId: toy.id,
    garmentId: garment.id,
    measureId: measure,
    readings: taken,
    hand,
    onLost: useLost(making, measure),
  });
  const [asked, setAsked] = useState<readonly Flag[]>([]);
  const [missing, setMissing] = useState(false);
  const [refused, setRefused] = useState(0);
  const field = useRef<HTMLInputElement>(null);
  const toField = useRef(false);
  const heading = useHeading(name);
  usePlace(toy.id, garment.id, `measure/${measure}`);

  const at = steps.findIndex((step) => step.measure === measure);
  const following = nextStep(making, measure);
  const address = (step: MeasureId) => to('toy', toy.id, garment.id, 'measure', step);
  const suggestion = suggestionFrom(steps[at], taken.length, hand.unit);
  const leave = () =>
    go(then?.address ?? (following ? address(following) : to('toy', toy.id, garment.id, afterTape(making))));

  /** The field reads what is wrong when it is come to; where she is in it already, it is said, each time anew. */
  const refuse = () => {
    setRefused(document.activeElement === field.current ? refused + 1 : 0);
    field.current?.focus();
  };
  const onward = async () => {
    const empty = entry.text.trim() === '';
    if (empty && suggestion === null && !entry.adding) {
      setMissing(true);
      return refuse();
    }
    const kept = empty && suggestion !== null ? await entry.put(suggestion) : await entry.keep();
    if (!kept) return refuse();
    await attempt(async () => {
      // A doubt that led here is settled where it was raised, or she would go round in circles.
      const doubts = (await doubtsNow(making, measure)).filter(
        ({ measures }) => !measures.some((id) => id === then?.measure),
      );
      if (doubts.length > 0) setAsked(doubts);
      else leave();
    });
  };
  const type = (text: string) => {
    setMissing(false);
    setAsked([]);
    entry.type(text);
  };
  const passDoubt = () => {
    const [, ...others] = asked;
    setAsked(others);
    if (others.length === 0) leave();
  };
  const again = (more: boolean) => {
    setAsked([]);
    void entry.clear(more);
    toField.current = true;
  };
  useLayoutEffect(() => {
    if (toField.current) field.current?.focus();
    toField.current = false;
  });
  const remedy = (chosen: Remedy) =>
    attempt(async () => {
      await putRight(toy.id, chosen);
      setAsked([]);
      const here = chosen.meant.find((each) => each.measure === measure);
      if (here) entry.show(here.mm);
    });
  const before = steps[at - 1]?.measure;
  const [doubt] = asked;
  const anew = (digit: string) => {
    again(doubt?.code === 'readings-apart');
    type(digit);
  };
  useTypingAnywhere(field, doubt?.measures[0] === measure ? anew : null);

  const header = (
    <>
      <Header
        back={then?.address ?? (before ? address(before) : to('toy', toy.id, garment.id, 'marks'))}
        whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
        detail={makingWords(say, making)}
        end={
          <>
            <StepsLeft making={making} measure={measure} />
            <a class="quiet round" href={to('toy', toy.id)} aria-label={say('screen.step.leave')}>
              <Icon name="cross" />
            </a>
          </>
        }
      />
      <TapeLine done={Math.min(at + 1, screens)} all={screens} />
    </>
  );
  if (doubt)
    return (
      <Doubt
        making={making}
        measure={measure}
        flag={doubt}
        onRemedy={remedy}
        onAgain={again}
        onPass={passDoubt}
        header={header}
      />
    );
  return (
    <div class="step">
      {header}
      <main class="step-main">
        <div class="step-words">
          <h1 id="step-name" tabIndex={-1} ref={heading}>
            {name}
          </h1>
          <p class="unseen">{say('screen.progress', { step: Math.min(at + 1, screens), all: screens })}</p>
          <p id="step-how">
            {say(taking.how)}
            <Gap />
            <span class="step-mind">{say(taking.mind)}</span>
          </p>
        </div>
        <StepFigure making={making} measure={measure} />
        <div class="step-hand">
          <LengthField
            field={field}
            text={entry.text}
            kept={entry.kept}
            onText={type}
            onEnter={onward}
            onUnit={(unit) => {
              entry.rewrite({ ...hand, unit });
              void attempt(() => setUnit(toy, unit));
            }}
            labelledBy="step-name"
            describedBy="step-how step-status"
            suggestion={suggestion}
            wrong={missing || entry.state.is === 'wrong'}
          />
          <StatusLine
            making={making}
            measure={measure}
            entry={entry}
            missing={missing}
            refused={refused}
            suggestion={suggestion}
          />
          <Keypad text={entry.text} kept={entry.kept} onText={type} />
        </div>
      </main>
      <StepActs
        onSkip={leave}
        onAgain={() => again(true)}
        onNext={onward}
        canRepeat={taken.length > 0 || entry.text.trim() !== ''}
        wish={findMeasure(measure)?.nature === 'wish'}
        then={then}
        following={following}
        after={afterTape(making)}
      />
    </div>
  );
}
