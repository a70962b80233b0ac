/**
 * What there is to measure: `plan --table` prints, for each body and garment with its usual choices, how many steps
 * there are (the short way's too, and the minutes they may take; taped, wished, hard to take on some toys and so never
 * required), how often the toy is turned, what is worked out or guessed instead of asked, what is asked twice, and what the draft uses unasked (both always 0).
 * `plan GARMENT… [--body KIND]` prints the steps one by one, for several garments together. Exit 0; 2 with one line on
 * stderr where a garment or body is not known.
 */
import { type Body, type BodyKind, bodyKinds, findMeasure, usualTraits } from '../body';
import { draft, fullOrder } from '../drafting/draft';
import { active, findGarment, type Garment, garments } from '../drafting/garments';
import { asking, bodyFrom, demoCards, isWish, plan, type Step } from '../measuring';
import { EXIT, type Exit } from './call';
import { command } from './command';
import { complain, print } from './terminal';

const COLUMNS = [
  'steps',
  'short',
  'minutes',
  'short-minutes',
  'tape',
  'wish',
  'optional',
  'turns',
  'worked-out',
  'guessed',
  'twice',
  'unasked',
] as const;

/** A tape laid, read and typed; a turn of the toy; the page of wishes: what they take, seconds (from memory, no source). */
const TAPE_SECONDS = 30;
const TURN_SECONDS = 5;
const WISHES_SECONDS = 40;

await command(
  {
    name: 'plan',
    usage: ['--table', 'GARMENT … [--body KIND] [--short]'],
    options: { table: null, body: 'KIND', short: null },
    words: [1, garments.length],
    exits: [EXIT.done, EXIT.unreadable, EXIT.ours],
  },
  ({ words, values, on }) => (on('table') ? printTable() : printSteps(words, values.body, on('short'))),
);

function printTable(): Exit {
  print(`${'body'.padEnd(13)}${'garment'.padEnd(18)}${COLUMNS.map((name) => name.padStart(11)).join('')}`);
  for (const kind of bodyKinds)
    for (const garment of garments.filter((each) => each.bodies.includes(kind))) {
      const counts = COLUMNS.map((name) => String(countsOf(garment, kind)[name]).padStart(11)).join('');
      print(`${kind.padEnd(13)}${garment.id.padEnd(18)}${counts}`);
    }
  return EXIT.done;
}

function countsOf(garment: Garment, kind: BodyKind): Record<(typeof COLUMNS)[number], number> {
  const { asked: wanted, guessed } = asking(unmeasured(kind), needsOf(garment));
  const { steps, turns, worksOut } = plan(wanted, unmeasured(kind));
  const short = plan(asking(unmeasured(kind), needsOf(garment), 'short').asked, unmeasured(kind));
  const asked = steps.map(({ measure }) => measure);
  const rows = asked.flatMap((id) => findMeasure(id) ?? []);
  const wish = rows.filter(({ nature }) => nature === 'wish').length;
  return {
    steps: screensOf(steps),
    short: screensOf(short.steps),
    minutes: minutesOf(steps),
    'short-minutes': minutesOf(short.steps),
    tape: steps.length - wish,
    wish,
    guessed: guessed.length,
    optional: rows.filter(({ optional }) => optional).length,
    turns,
    'worked-out': worksOut.length,
    twice: asked.length - new Set(asked).size,
    unasked: demoCards
      .map((card) => bodyFrom(card))
      .filter((body) => body.kind === kind)
      .filter((body) => !draftsFrom(garment, body, new Set([...asked, ...worksOut, ...guessed]))).length,
  };
}

/** A screen for each measure, and one for all wishes. */
function screensOf(steps: readonly Step[]): number {
  return tapedIn(steps) + (tapedIn(steps) < steps.length ? 1 : 0);
}

function tapedIn(steps: readonly Step[]): number {
  return steps.filter(({ measure }) => !isWish(measure)).length;
}

function minutesOf(steps: readonly Step[]): number {
  const turns = steps.filter(({ turn }) => turn).length;
  const wishes = tapedIn(steps) < steps.length ? WISHES_SECONDS : 0;
  return Math.round((tapedIn(steps) * TAPE_SECONDS + turns * TURN_SECONDS + wishes) / 6) / 10;
}

/** What the garment needs with the choices it has when nobody chooses. */
function needsOf(garment: Garment): Garment['needs'] {
  const full = fullOrder({ garment: garment.id }, '');
  return active(garment.needs, full.ok ? full.order.choices : {});
}

/** Whether the garment is drafted as well when nothing else than what was asked is known of the toy. */
function draftsFrom(garment: Garment, body: Body, asked: ReadonlySet<string>): boolean {
  const full = fullOrder({ garment: garment.id }, '2026-01-01');
  const sizes = Object.fromEntries(Object.entries(body.sizes).filter(([id]) => asked.has(id)));
  try {
    return full.ok && draft({ ...body, sizes }, full.order, garment, '').ok === draft(body, full.order, garment, '').ok;
  } catch {
    return false;
  }
}

function unmeasured(kind: BodyKind): Body {
  return { kind, traits: usualTraits, sizes: {}, corrections: {} };
}

function printSteps(ids: readonly string[], asked: string | undefined, short: boolean): Exit {
  const chosen = ids.flatMap((id) => findGarment(id) ?? []);
  const kind = bodyKinds.find((each) => each === (asked ?? chosen[0]?.bodies[0]));
  if (chosen.length < ids.length || !kind) {
    const unknown = ids.find((id) => !findGarment(id));
    complain(unknown === undefined ? `--body: unknown-body ${asked}` : `garment: unknown-garment ${unknown}`);
    return EXIT.unreadable;
  }
  const { asked: wanted } = asking(unmeasured(kind), chosen.flatMap(needsOf), short ? 'short' : 'whole');
  const { steps, worksOut } = plan(wanted, unmeasured(kind));
  for (const [n, { measure, view, turn }] of steps.entries()) {
    const nature = findMeasure(measure)?.nature ?? '';
    print(`${String(n + 1).padStart(3)}  ${measure.padEnd(20)}${nature.padEnd(10)}${view}${turn ? '  turn' : ''}`);
  }
  for (const id of worksOut) print(`  =  ${id}`);
  return EXIT.done;
}
