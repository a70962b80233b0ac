import { inTurn } from '../../body';
import { type Guide, type GuideStep, kindWords, noteWords, settingWords, termsAt, titleOf } from '../../drafting/guide';
import { Icon, useWords } from '../../parts';
import { useAwake } from '../shared/awake';
import type { Making } from '../shared/making/making';
import { OneStep } from '../shared/one-step/one-step';
import { usePlace } from '../shared/places';
import { go, to } from '../shared/route';
import { SpeakAct } from '../shared/speak-act';
import { useAttempt } from '../shared/trouble/attempt';
import { ScenePicture } from './scene-picture';
import { TermChips } from './terms/term-chips';
import { usePause } from './use-pause';
import type { Sewing } from './use-sewing';
import './step-page.css';

type StepPageProps = {
  readonly making: Making;
  readonly sewing: Sewing;
  readonly guide: Guide;
  readonly step: GuideStep;
  readonly at: number;
};

/** What lies where, what to sew, what to mind; then the next one. */
export function StepPage({ making, sewing, guide, step, at }: StepPageProps) {
  const { toy, garment } = making;
  const { say, hand } = useWords();
  const attempt = useAttempt();
  const telling = { say, unit: hand.unit, way: sewing.way };
  const title = titleOf(step, say);
  const how = kindWords(step, telling);
  const notes = step.notes.map((note) => noteWords(note, telling));
  const said = say('list.named', { name: title, what: how });
  const done = sewing.sewn.includes(step.id);
  const address = (id: string | undefined) => to('toy', toy.id, garment.id, 'sew', ...(id ? [id] : []));
  useAwake();
  usePause();
  usePlace(toy.id, garment.id, `sew/${step.id}`);
  const onward = () =>
    attempt(async () => {
      if (!done) await sewing.tick(step.id, true);
      go(address(guide.steps[at + 1]?.id));
    });
  return (
    <OneStep
      title={title}
      back={address(guide.steps[at - 1]?.id)}
      whose={<a href={to('toy', toy.id)}>{toy.name}</a>}
      detail={say(`garment.${garment.order.garment}.name`)}
      progress={{ done: at + 1, all: guide.steps.length }}
      end={
        <a class="quiet round" href={address(undefined)} aria-label={say('screen.sew.all-steps')}>
          <Icon name="cross" />
        </a>
      }
      picture={
        <>
          <ScenePicture scene={step.scene} text={said} />
          <SpeakAct text={inTurn([said, ...notes], say)} />
        </>
      }
      acts={
        <>
          {done && (
            <button type="button" class="quiet" onClick={() => attempt(() => sewing.tick(step.id, false))}>
              {say('screen.sew.not-yet')}
            </button>
          )}
          <button type="button" class="go" onClick={onward}>
            {say(done ? 'screen.next' : at + 1 < guide.steps.length ? 'screen.sew.sewn' : 'screen.sew.finished')}
          </button>
        </>
      }
    >
      <p>{how}</p>
      {notes.length > 0 && (
        <ul class="sew-notes">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      {sewing.draft && <p class="soft small">{settingWords(sewing.draft, telling)}</p>}
      <TermChips terms={termsAt(step, telling.way)} />
    </OneStep>
  );
}
