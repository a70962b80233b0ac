import { type PencilPiece, type PencilStep, pencilSteps } from '../../../drafting/pencil';
import './drawn-so-far.css';

/** What a digit takes of the drawing, in dots across: the widest letters we draw with, and the height of a line. */
const DIGIT_WIDE = 1;
const DIGIT_HIGH = 1.8;

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
  const numberAt = (number: number) => outward(at(number), { x: width / 2, y: height / 2 }, 1.7 * size);
  const numbered = new Set(whole ? legible([...seen], numberAt, size) : []);
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
          const isNow = now?.does === 'mark' && now.mark.number === number;
          return (
            <g key={number}>
              <circle
                class={isNow ? 'pencil-point now' : 'pencil-point'}
                cx={x}
                cy={y}
                r={isNow ? size : size * 0.55}
              />
              {numbered.has(number) && <PointNumber number={number} size={size} at={numberAt(number)} />}
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

type Spot = { readonly x: number; readonly y: number };

function PointNumber({ number, size, at }: { readonly number: number; readonly size: number; readonly at: Spot }) {
  return (
    <text class="pencil-number" x={at.x} y={at.y} font-size={1.5 * size} stroke-width={size / 3}>
      {number}
    </text>
  );
}

/** Those numbers, in turn, that lie over none shown before: along a curve points may lie closer than their numbers are wide. */
function legible(numbers: readonly number[], at: (number: number) => Spot, size: number): readonly number[] {
  const shown: number[] = [];
  for (const number of numbers) {
    const { x, y } = at(number);
    const clear = shown.every((other) => {
      const there = at(other);
      const digits = (String(number).length + String(other).length) / 2;
      return Math.abs(there.x - x) >= DIGIT_WIDE * size * digits || Math.abs(there.y - y) >= DIGIT_HIGH * size;
    });
    if (clear) shown.push(number);
  }
  return shown;
}

/** So far beyond a spot, as seen from the middle. */
function outward({ x, y }: Spot, middle: Spot, far: number): Spot {
  const away = Math.hypot(x - middle.x, y - middle.y) || 1;
  return { x: x + ((x - middle.x) / away) * far, y: y + ((y - middle.y) / away) * far };
}

type At = (number: number) => { readonly x: number; readonly y: number };

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
