import { takingOf } from '../../body';
import type { NumbersSheet } from '../../drafting/output';
import { type Diagram, diagram, marksFor } from '../../measuring';
import type { Making } from '../shared/making/making';

type Listed = Pick<Making, 'body' | 'steps' | 'also'> & {
  readonly toy: Pick<Making['toy'], 'name'>;
  readonly garment: Pick<Making['garment'], 'order'>;
};

/** What is asked for a garment as a sheet to write on: every number, whether taken already or not, in the order of the steps. */
export function sheetOf({ toy, garment, also, body, steps }: Listed): NumbersSheet {
  const { kind, traits, sizes } = body;
  return {
    toy: toy.name,
    garments: [garment, ...also.map((each) => each.garment)].map(({ order }) => order.garment),
    marks: marksFor(
      kind,
      steps.map(({ measure }) => measure),
    ),
    rows: steps.flatMap(({ measure, turn, view }) => {
      const drawn = diagram(kind, traits, sizes, measure);
      return drawn
        ? [{ measure, how: takingOf(kind, measure).how, turn: turn ? view : null, picture: pictureOf(drawn) }]
        : [];
    }),
  };
}

/** What a tape, a ruler and a pencil line are called on paper. */
const STUFF = { girth: 'tape', surface: 'tape', straight: 'ruler', wish: 'pencil' } as const;

/** A diagram as shapes one over the other, without words. */
function pictureOf({ figure, tape }: Diagram): NumbersSheet['rows'][number]['picture'] {
  const stuff = STUFF[tape.nature];
  const pencil = stuff === 'pencil';
  const shapes = (layers: readonly string[]) => figure.shapes.filter(({ layer }) => layers.includes(layer));
  const as = (look: string, paths: readonly string[]) => paths.map((path) => ({ look, path }));
  return {
    frame: figure.frame,
    shapes: [
      ...shapes(['toy', 'marks']),
      ...as('guide', tape.guides),
      ...as(
        pencil ? 'guide' : 'tape-hidden',
        tape.hidden.map(({ outline, middle }) => (pencil ? middle : outline)),
      ),
      ...as(
        stuff,
        tape.visible.map(({ outline, middle }) => (pencil ? middle : outline)),
      ),
      ...(pencil
        ? []
        : as(
            'tape-ticks',
            tape.visible.map(({ ticks }) => ticks),
          )),
      ...shapes(['over']),
      ...as('mark', [dotPath(tape), tape.arrow]),
    ],
  };
}

/** The share of the radius that a handle of a quarter circle reaches. */
const ROUND = 0.5523;

function dotPath({ start: { x, y }, dot: r }: Pick<Diagram['tape'], 'start' | 'dot'>): string {
  const h = ROUND * r;
  const curves = [
    [x + r, y + h, x + h, y + r, x, y + r],
    [x - h, y + r, x - r, y + h, x - r, y],
    [x - r, y - h, x - h, y - r, x, y - r],
    [x + h, y - r, x + r, y - h, x + r, y],
  ];
  return `M${x + r} ${y}${curves.map((each) => `C${each.join(' ')}`).join('')}Z`;
}
