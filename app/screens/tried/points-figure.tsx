import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Body } from '../../body';
import type { Draft } from '../../drafting/draft-types';
import { dressed, dressedSpots } from '../../dressed';
import { FigurePicture, useWords } from '../../parts';
import { Folded } from '../shared/folded/folded';
import type { TriedPoint } from '../shared/trying/points';

/** Tall enough that no two points lie on each other. */
const FRAME = { width: 340, height: 300 } as const;

/** From the middle of one point to the next, in the frame's units. */
const LEAST_APART = 34;

type PointsFigureProps = {
  readonly body: Body;
  /** What was sewn; nothing while nothing is drawn. */
  readonly draft: Draft | null;
  readonly points: readonly TriedPoint[];
  readonly chosen: TriedPoint | null;
  readonly onChoose: (point: TriedPoint) => void;
  /** What is to be done, right below the toy. */
  readonly children?: ComponentChildren;
};

/**
 * The toy in what was sewn, from the front, with a point to press wherever the garment can be told of. Points on a small toy's picture lie
 * closer than a thumb is wide: each is there in words too.
 */
export function PointsFigure({ body, draft, points, chosen, onChoose, children }: PointsFigureProps) {
  const { say } = useWords();
  const places = useMemo(() => dressedSpots(body, draft, FRAME), [body, draft]);
  const figure = useMemo(() => dressed(body, draft, 'front', FRAME), [body, draft]);
  const laid = apart(
    points.flatMap((point) => {
      const found = places[point.spot];
      if (!found) return [];
      const middle = places.neckDrop?.x ?? FRAME.width / 2;
      return [{ point, at: point.atLeft ? { x: 2 * middle - found.x, y: found.y } : found }];
    }),
  );
  const others = points.filter(({ spot }) => !places[spot]);
  return (
    <fieldset class="tried-points">
      <legend class="unseen">{say('screen.tried.points')}</legend>
      <div class="tried-figure">
        <FigurePicture figure={figure} />
        {laid.map(({ point, at }) => (
          <button
            key={point.id}
            type="button"
            class="tried-point"
            aria-pressed={chosen === point}
            aria-label={say(`tried.${point.id}`)}
            style={{ left: `${(at.x / FRAME.width) * 100}%`, top: `${(at.y / FRAME.height) * 100}%` }}
            onClick={() => onChoose(point)}
          />
        ))}
      </div>
      {children}
      {others.length > 0 && <Named {...{ chosen, onChoose }} points={others} />}
      {points.length > 0 && (
        <Folded title={say('screen.in-words')}>
          <Named {...{ points, chosen, onChoose }} />
        </Folded>
      )}
    </fieldset>
  );
}

function Named({ points, chosen, onChoose }: Omit<PointsFigureProps, 'body' | 'draft' | 'children'>) {
  const { say } = useWords();
  return (
    <div class="tried-others">
      {points.map((point) => (
        <button
          key={point.id}
          type="button"
          class="plain"
          aria-pressed={chosen === point}
          onClick={() => onChoose(point)}
        >
          {say(`tried.${point.id}`)}
        </button>
      ))}
    </div>
  );
}

type Laid = { readonly point: TriedPoint; readonly at: { readonly x: number; readonly y: number } };

/** Points nearer than a finger can tell are moved down, one after the other. */
function apart(points: readonly Laid[]): readonly Laid[] {
  const laid: Laid[] = [];
  for (const each of points) {
    let { at } = each;
    const hits = () => laid.some((other) => Math.hypot(other.at.x - at.x, other.at.y - at.y) < LEAST_APART);
    for (let moved = 0; moved < FRAME.height && hits(); moved++) at = { x: at.x, y: at.y + 1 };
    laid.push({ ...each, at });
  }
  return laid;
}
