/**
 * Packs the pieces of an instance on a strip of fixed width, as short as it can in the given time, and prints density,
 * length and time: `pack instance.json [--seconds N | --steps N] [--seed N]`. The format is that of the public instances
 * for irregular strip packing: `items` with `demand`, `allowed_orientations` (degrees; all quarter turns where left out)
 * and `shape.data` (a closed polygon), and `strip_height`. The seconds are processor time, and only end the search: what
 * is found by then hangs on the seed alone. Exit 0; 2 with one line on stderr where the file cannot be read.
 */
import * as v from 'valibot';
import { packStrip, type Strip, shapeOf, stockOf } from '../drafting/packing';
import { type Asked, EXIT, type Exit } from './call';
import { command } from './command';
import { readFile } from './read-file';
import { complain, print } from './terminal';
import { parsed, unreadable } from './unreadable';

const LARGEST_BYTES = 4_000_000;
const MOST_PIECES = 2000;

/** Outlines are simplified by up to this share of the strip's width. */
const SLACK_SHARE = 0.003;
/** Nothing is kept between the pieces: some of the instances can only fill the width to the last bit. */
const APART = 0;

/** Looks at the time once in so many places weighed: asking for it takes longer than weighing some. */
const LOOK_EVERY = 4000;

const NUMBER = v.pipe(v.number(), v.finite());
const RING = v.pipe(v.array(v.tuple([NUMBER, NUMBER])), v.minLength(3));
const ITEM = v.object({
  demand: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(MOST_PIECES)),
  allowed_orientations: v.optional(v.array(NUMBER), [0, 90, 180, 270]),
  shape: v.object({ data: RING }),
});
const INSTANCE = v.object({
  strip_height: v.pipe(NUMBER, v.gtValue(0)),
  items: v.array(ITEM),
});
type Instance = v.InferOutput<typeof INSTANCE>;

await command(
  {
    name: 'pack',
    usage: ['instance.json [--seconds N | --steps N] [--seed N]'],
    options: { seconds: 'N', steps: 'N', seed: 'N' },
    words: [1, 1],
    exits: [EXIT.done, EXIT.refused, EXIT.unreadable, EXIT.ours],
  },
  pack,
);

function pack({ words: [path = ''], values }: Asked): Exit {
  const [seconds, steps, seed] = [values.seconds ?? '2', values.steps ?? 'Infinity', values.seed ?? '1'].map(Number);
  if (seconds === undefined || !(seconds > 0)) return unreadable('--seconds', 'not-a-number');
  if (steps === undefined || !(steps > 0)) return unreadable('--steps', 'not-a-number');
  if (seed === undefined || !Number.isInteger(seed)) return unreadable('--seed', 'not-a-number');
  const file = readFile(path, LARGEST_BYTES);
  if (!file.ok) return unreadable(path, file.code);
  const instance = v.safeParse(INSTANCE, parsed(file.text));
  if (!instance.success) return unreadable(path, v.getDotPath(instance.issues[0]) ?? 'not-an-instance');
  const started = process.cpuUsage().user;
  const took = (): number => (process.cpuUsage().user - started) / 1e6;
  const isLate = values.steps === undefined ? clock(() => took() >= seconds) : () => false;
  let firstTook = Number.NaN;
  const { strip, first, used, area } = search(instance.output, seed, (weighed) => {
    if (Number.isNaN(firstTook)) firstTook = took();
    return weighed >= steps || isLate(weighed);
  });
  if (!strip) {
    complain(`refused ${path}: too-wide`);
    return EXIT.refused;
  }
  const density = (length: number): string =>
    `${((100 * area) / (length * instance.output.strip_height)).toFixed(2)} %`;
  print(
    `density ${density(strip.length)}  length ${strip.length.toFixed(4)}  time ${took().toFixed(2)} s  steps ${used}`,
  );
  print(`first ${density(first)}  time ${firstTook.toFixed(2)} s`);
  return EXIT.done;
}

function clock(isLate: () => boolean): (weighed: number) => boolean {
  let next = 0;
  return (weighed) => {
    if (weighed < next) return false;
    next = weighed + LOOK_EVERY;
    return isLate();
  };
}

type Search = {
  readonly strip: Strip | undefined;
  readonly first: number;
  readonly used: number;
  readonly area: number;
};

function search({ items, strip_height: width }: Instance, seed: number, isOver: (steps: number) => boolean): Search {
  const kinds = items.flatMap(({ demand, allowed_orientations: turns, shape: { data } }) => {
    const shapes = turns.map((degrees) => shapeOf([turned(data, degrees)], SLACK_SHARE * width));
    return [{ demand, shapes }];
  });
  const shapes = kinds.flatMap((kind) => kind.shapes);
  const pieces = kinds.flatMap((kind) => {
    const turns = kind.shapes.map((shape) => shapes.indexOf(shape));
    return Array.from({ length: kind.demand }, () => ({ turns }));
  });
  const area = kinds.reduce((sum, kind) => sum + kind.demand * (kind.shapes[0]?.area ?? 0), 0);
  let [strip, first, used]: [Strip | undefined, number, number] = [undefined, Number.NaN, 0];
  for (const { best, steps } of packStrip({ stock: stockOf(shapes, APART), pieces }, width, seed)) {
    if (!strip) first = best.length;
    [strip, used] = [best, steps];
    if (isOver(steps)) break;
  }
  return { strip, first, used, area };
}

/** A closed polygon turned; quarter turns stay exact. */
function turned(ring: readonly (readonly [number, number])[], degrees: number): readonly { x: number; y: number }[] {
  const radians = (degrees * Math.PI) / 180;
  const isQuarter = degrees % 90 === 0;
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)].map((share) => (isQuarter ? Math.round(share) : share));
  const [c = 1, s = 0] = [cos, sin];
  const [first, last] = [ring[0], ring[ring.length - 1]];
  const open = first && last && first[0] === last[0] && first[1] === last[1] ? ring.slice(0, -1) : ring;
  return open.map(([x, y]) => ({ x: x * c - y * s, y: x * s + y * c }));
}
