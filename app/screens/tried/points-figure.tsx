import type { Body } from '../../body';
import { figure, spots } from '../../measuring';
import { FigurePicture, useWords } from '../../parts';
import type { TriedPoint } from '../shared/trying/points';

/** Tall enough that no two points lie on each other. */
const FRAME = { width: 340, height: 300 } as const;

type PointsFigureProps = {
  readonly body: Body;
  readonly points: readonly TriedPoint[];
  readonly chosen: TriedPoint | null;
  readonly onChoose: (point: TriedPoint) => void;
};

/** The toy from the front, with a point to press wherever the garment can be told of. */
export function PointsFigure({ body, points, chosen, onChoose }: PointsFigureProps) {
  const { say } = useWords();
  const places = spots(body.kind, body.traits, body.sizes, 'front', FRAME);
  return (
    <fieldset class="tried-figure">
      <legend class="unseen">{say('screen.tried.points')}</legend>
      <FigurePicture figure={figure(body.kind, body.traits, body.sizes, 'front', FRAME)} />
      {points.map((point, index) => {
        const at = places[point.spot] ?? { x: FRAME.width - 20, y: 20 + 30 * index };
        return (
          <button
            key={point.id}
            type="button"
            class="tried-point"
            aria-pressed={chosen === point}
            aria-label={say(`tried.${point.id}`)}
            style={{
              insetInlineStart: 'auto',
              left: `${(at.x / FRAME.width) * 100}%`,
              top: `${(at.y / FRAME.height) * 100}%`,
            }}
            onClick={() => onChoose(point)}
          />
        );
      })}
    </fieldset>
  );
}
