import { type PencilPiece, type PencilStep, pencilSteps } from '../../../drafting/pencil';
import './drawn-so-far.css';
import { numberPlaces, type Spot } from './number-places';

type DrawnSoFarProps = {
  readonly plan: PencilPiece;
  /** Steps that are done, the present one among them; Infinity for the whole piece. */
  readonly until: number;
  readonly text: string;
};

/** What lies on the paper by now, seen as the paper lies: points, lines, and the rulers to the present point. */
export function DrawnSoFar({ plan, until, text }: DrawnSoFarProps) {
  const { width, height, marks } = plan;
  const steps = pencilSteps(plan);
  const done = steps.slice(0, until + 1);
  const whole = !Number.isFinite(until);
  const now = whole ? undefined : done.at(-1);
  const seen = new Set(done.flatMap((step) => (step.does === 'mark' ? [step.mark.number] : [])));
  const size = Math.max(width, height) / 46;
  const round = whole ? 3 * size : 2;
  const at = (number: number) => {
    const { x, y } = marks[number - 1] ?? { x: 0, y: 0 };
    return { x, y: height - y };
  };
  const spots = marks.map(({ number }) => at(number));
  const lines = steps.flatMap((step) => (step.does === 'join' ? [step.join.through.map(at)] : []));
  const places = whole ? numberPlaces(spots, lines, { x: width / 2, y: height / 2 }, size) : null;
  return (
    <svg
      class="pencil-paper"
      viewBox={`${-round} ${-round} ${width + 2 * round} ${height + 2 * round}`}
      role="img"
      aria-label={text}
    >
      <rect class="pencil-sheet" width={width} height={height} />
      {now?.does === 'mark' && (
        <path
          class="pencil-ruler"
          d={`M0 ${at(now.mark.number).y}H${now.mark.x}M${now.mark.x} ${height}V${at(now.mark.number).y}`}
        />
      )}
      {done.map((step) => step.does === 'join' && <path class={joinClass(step, now)} d={pathOf(step, at)} />)}
      {marks
        .filter(({ number }) => seen.has(number))
        .map(({ number }) => {
          const { x, y } = at(number);
          const place = places?.get(number);
          const isNow = now?.does === 'mark' && now.mark.number === number;
          return (
            <g key={number}>
              <circle
                class={isNow ? 'pencil-point now' : 'pencil-point'}
                cx={x}
                cy={y}
                r={isNow ? size : size * 0.55}
              />
              {place && <PointNumber number={number} size={size} at={place} />}
            </g>
          );
        })}
    </svg>
  );
}

const joinClass = (step: PencilStep, now: PencilStep | undefined) =>
  step === now
    ? 'pencil-line now'
    : step.line.role === 'grain' || step.line.role === 'inside'
      ? 'pencil-line thin'
      : 'pencil-line';

function PointNumber({ number, size, at }: { readonly number: number; readonly size: number; readonly at: Spot }) {
  return (
    <text class="pencil-number" x={at.x} y={at.y} font-size={1.5 * size} stroke-width={size / 3}>
      {number}
    </text>
  );
}

type At = (number: number) => Spot;

/** A ruler's line, or a curve through its points: each piece of it is directed by the points before and after. */
function pathOf(step: Extract<PencilStep, { does: 'join' }>, at: At): string {
  const points = step.join.through.map(at);
  const [first] = points;
  if (!first) return '';
  const parts = points.slice(1).map((to, index) => {
    if (step.join.kind === 'straight') return `L${to.x} ${to.y}`;
    const from = points[index] ?? to;
    const before = points[index - 1] ?? from;
    const after = points[index + 2] ?? to;
    const out = { x: from.x + (to.x - before.x) / 6, y: from.y + (to.y - before.y) / 6 };
    const into = { x: to.x - (after.x - from.x) / 6, y: to.y - (after.y - from.y) / 6 };
    return `C${out.x} ${out.y} ${into.x} ${into.y} ${to.x} ${to.y}`;
  });
  return `M${first.x} ${first.y}${parts.join('')}`;
}
