import { useId, useState } from 'preact/hooks';
import { type MeasureId, parseLength, takingOf } from '../../body';
import { Gap, Icon, Keypad, LengthField, useWords } from '../../parts';
import { saveReading, type Toy } from '../../storage';
import { InSight } from '../shared/in-sight';
import { passOverTaps } from '../shared/second-taps';
import { setUnit } from '../shared/set-unit';
import { useAttempt } from '../shared/trouble/attempt';

type MeasureAgainProps = {
  readonly toy: Toy;
  readonly measure: MeasureId;
  /** Where it is asked for; null where nothing that is being made asks for it: then it is typed right here. */
  readonly step: string | null;
};

/** One number taken anew; the one before stays in the history. */
export function MeasureAgain({ toy, measure, step }: MeasureAgainProps) {
  const { say } = useWords();
  const [open, setOpen] = useState(false);
  if (open) return <Anew toy={toy} measure={measure} onDone={() => setOpen(false)} />;
  if (step)
    return (
      <a class="plain" href={step}>
        <Icon name="pencil" />
        {say('screen.flag.again')}
      </a>
    );
  return (
    <button type="button" class="plain" onClick={() => setOpen(true)}>
      <Icon name="pencil" />
      {say('screen.flag.again')}
    </button>
  );
}

type AnewProps = Pick<MeasureAgainProps, 'toy' | 'measure'> & { readonly onDone: () => void };

function Anew({ toy, measure, onDone }: AnewProps) {
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const id = useId();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState('');
  const taking = takingOf(toy.kind, measure);
  const keep = async () => {
    const parsed = parseLength(text, hand);
    if (!parsed.ok) return setWrong(text.trim() === '' ? say('screen.toy.no-number') : say(parsed.code));
    const kept = await attempt(
      async () => void (await saveReading(toy.id, measure, parsed.mm, 'tape', { anew: true })),
    );
    if (!kept) return;
    passOverTaps();
    onDone();
  };
  return (
    <InSight class="measure-anew">
      <p id={`${id}-how`}>
        {say(taking.how)}
        <Gap />
        <span class="soft">{say(taking.mind)}</span>
      </p>
      <span id={`${id}-name`} class="unseen">
        {say(`measure.${measure}.name`)}
      </span>
      <LengthField
        text={text}
        onText={(typed) => {
          setText(typed);
          setWrong('');
        }}
        onEnter={keep}
        onUnit={(unit) => void attempt(() => setUnit(toy, unit))}
        labelledBy={`${id}-name`}
        describedBy={`${id}-how ${id}-wrong`}
        wrong={wrong !== ''}
      />
      <p id={`${id}-wrong`} class="wrong-words" role="alert">
        {wrong}
      </p>
      <Keypad text={text} onText={setText} />
      <div class="slip-acts">
        <button type="button" class="plain" onClick={keep}>
          {say('screen.toy.keep-number')}
        </button>
        <button type="button" class="quiet" onClick={onDone}>
          {say('screen.cancel')}
        </button>
      </div>
    </InSight>
  );
}
