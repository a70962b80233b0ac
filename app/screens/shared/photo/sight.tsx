import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Header, useHeading } from '../../../parts';
import { Loupe } from './loupe';
import { type Marks, nextWaiting, type Sort, type Spot, setMark } from './marks';
import { Nudges } from './nudges';
import { Stage } from './stage';
import './sight.css';

/** Whose screen it is, and the way back from it. */
export type Heads = {
  readonly back: string;
  readonly whose: ComponentChildren;
  readonly detail: ComponentChildren;
};

type SightProps = Heads & {
  readonly title: string;
  readonly picture: HTMLCanvasElement;
  readonly marks: Marks;
  readonly sorts: readonly Sort[];
  readonly onMarks: (change: (marks: Marks) => Marks) => void;
  /** What is drawn between the marks. */
  readonly lines: ComponentChildren;
  /** What the marks amount to. */
  readonly told: ComponentChildren;
  readonly mind: string;
  readonly acts: ComponentChildren;
};

/** A photo with marks on it, a loupe over the one in hand, arrows to move it, and what they amount to. */
export function Sight({ title, picture, marks, sorts, onMarks, lines, told, mind, acts, ...header }: SightProps) {
  const [taken, setTaken] = useState(0);
  const held = Math.min(taken, marks.length - 1);
  const mark = marks[held];
  const heading = useHeading(title);
  const set = (which: number, spot: Spot, miss?: number) => {
    setTaken(which);
    onMarks((now) => setMark(now, which, spot, picture, miss));
  };
  const nudge = (which: number, { x, y }: Spot) => {
    const spot = marks[which]?.spot;
    if (spot) set(which, { x: Math.round(spot.x) + x, y: Math.round(spot.y) + y });
  };
  return (
    <div class="sight">
      <Header {...header} />
      <main class="sight-main">
        <h1 class="unseen" tabIndex={-1} ref={heading}>
          {title}
        </h1>
        <Stage
          picture={picture}
          marks={marks}
          sorts={sorts}
          held={held}
          next={nextWaiting(marks)}
          onHold={setTaken}
          onSet={set}
          onNudge={nudge}
        >
          {lines}
        </Stage>
        <div class="sight-panel">
          {mark && <Loupe picture={picture} spot={mark.spot} idle={mark.miss === null} />}
          <div class="sight-told">{told}</div>
          <Nudges name={sorts[held]?.name ?? ''} onNudge={(by) => nudge(held, by)} />
          <p class="sight-mind">{mind}</p>
        </div>
      </main>
      <footer class="sight-acts">{acts}</footer>
    </div>
  );
}
