import { useMemo, useState } from 'preact/hooks';
import type { Known, MeasureId } from '../../body';
import { Header, useHeading, useWords } from '../../parts';
import type { Toy } from '../../storage';
import { to } from '../shared/route';
import { Loupe } from './loupe';
import { isCoarse, type MarkIndex, nextWaiting, type Spot, setMark, verdictOf, waitingMarks } from './marks';
import { Nudges } from './nudges';
import { Stage } from './stage';
import { Told } from './told';
import './sight.css';

type SightProps = {
  readonly picture: HTMLCanvasElement;
  readonly measure: MeasureId;
  readonly toy: Toy;
  readonly back: string;
  readonly onUse: (known: Known) => void;
  readonly onOther: () => void;
};

/** The photo with six marks on it, a loupe over the one in hand, and what they amount to. */
export function Sight({ picture, measure, toy, back, onUse, onOther }: SightProps) {
  const { say } = useWords();
  const [marks, setMarks] = useState(() => waitingMarks(picture));
  const [held, setHeld] = useState<MarkIndex>(0);
  const verdict = useMemo(() => verdictOf(marks, picture), [marks, picture]);
  const heading = useHeading(say('photo.title'));
  const set = (which: MarkIndex, spot: Spot, miss?: number) => {
    setHeld(which);
    setMarks((now) => setMark(now, which, spot, picture, miss));
  };
  const nudge = (which: MarkIndex, { x, y }: Spot) => {
    const { spot } = marks[which];
    set(which, { x: Math.round(spot.x) + x, y: Math.round(spot.y) + y });
  };
  return (
    <div class="sight">
      <Header back={back} whose={<a href={to('toy', toy.id)}>{toy.name}</a>} detail={say(`measure.${measure}.name`)} />
      <main class="sight-main">
        <h1 class="unseen" tabIndex={-1} ref={heading}>
          {say('photo.title')}
        </h1>
        <Stage
          picture={picture}
          marks={marks}
          held={held}
          next={nextWaiting(marks)}
          onHold={setHeld}
          onSet={set}
          onNudge={nudge}
        />
        <div class="sight-panel">
          <Loupe picture={picture} spot={marks[held].spot} idle={marks[held].miss === null} />
          <Told verdict={verdict} coarse={isCoarse(marks)} />
          <Nudges name={say(`photo.mark-${held + 1}`)} onNudge={(by) => nudge(held, by)} />
          <p class="sight-mind">{say(verdict.is === 'seen' ? 'photo.bulge-short' : 'photo.finely')}</p>
        </div>
      </main>
      <footer class="sight-acts">
        <button type="button" class="quiet" onClick={onOther}>
          {say('photo.other')}
        </button>
        <button
          type="button"
          class="go"
          disabled={verdict.is !== 'seen'}
          onClick={() => verdict.is === 'seen' && onUse(verdict.known)}
        >
          {say('photo.use')}
        </button>
      </footer>
    </div>
  );
}
