/**
 * What there is to measure: `plan --table` prints, for each body and garment with its usual choices, how many steps
 * there are (taped, wished, hard to take on some toys and so never required), how often the toy is turned, what is
 * worked out instead of asked, what is asked twice, and what the draft uses unasked (both always 0).
 * `plan GARMENT… [--body KIND]` prints the steps one by one, for several garments together. Exit 0; 2 with one line on
 * stderr where a garment or body is not known.
 */
import { type Body, type BodyKind, bodyKinds, findMeasure, type MeasureId, usualTraits } from '../body';
import { draft, fullOrder } from '../drafting/draft';
import { active, findGarment, type Garment, garments } from '../drafting/garments';
import { bodyFrom, demoCards, plan } from '../measuring';
import { EXIT, type Exit } from './call';
import { command } from './command';
import { complain, print } from './terminal';

const COLUMNS = ['steps', 'tape', 'wish', 'optional', 'turns', 'worked-out', 'twice', 'unasked'] as const;

await command(
  {
    name: 'plan',
    usage: ['--table', 'GARMENT … [--body KIND]'],
    options: { table: null, body: 'KIND' },
    words: [1, garments.length],
    exits: [EXIT.done, EXIT.unreadable, EXIT.ours],
  },
  ({ words, values, on }) => (on('table') ? printTable() : printSteps(words, values.body)),
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
  const needs = needsOf(garment);
  const { steps, turns, worksOut } = plan(needs, unmeasured(kind));
  const asked = steps.map(({ measure }) => measure);
  const rows = asked.flatMap((id) => findMeasure(id) ?? []);
  const wish = rows.filter(({ nature }) => nature === 'wish').length;
  return {
    steps: steps.length,
    tape: steps.length - wish,
    wish,
    optional: rows.filter(({ optional }) => optional).length,
    turns,
    'worked-out': worksOut.length,
    twice: asked.length - new Set(asked).size,
    unasked: demoCards
      .map((card) => bodyFrom(card))
      .filter((body) => body.kind === kind)
      .filter((body) => !draftsFrom(garment, body, new Set([...asked, ...worksOut]))).length,
  };
}

/** What the garment needs with the choices it has when nobody chooses. */
function needsOf(garment: Garment): readonly MeasureId[] {
  const full = fullOrder({ garment: garment.id }, '');
  return active(garment.needs, full.ok ? full.order.choices : {}).map(({ measure }) => measure);
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

function printSteps(ids: readonly string[], asked: string | undefined): Exit {
  const chosen = ids.flatMap((id) => findGarment(id) ?? []);
  const kind = bodyKinds.find((each) => each === (asked ?? chosen[0]?.bodies[0]));
  if (chosen.length < ids.length || !kind) {
    const unknown = ids.find((id) => !findGarment(id));
    complain(unknown === undefined ? `--body: unknown-body ${asked}` : `garment: unknown-garment ${unknown}`);
    return EXIT.unreadable;
  }
  const { steps, worksOut } = plan(chosen.flatMap(needsOf), unmeasured(kind));
  for (const [n, { measure, view, turn }] of steps.entries()) {
    const nature = findMeasure(measure)?.nature ?? '';
    print(`${String(n + 1).padStart(3)}  ${measure.padEnd(20)}${nature.padEnd(10)}${view}${turn ? '  turn' : ''}`);
  }
  for (const id of worksOut) print(`  =  ${id}`);
  return EXIT.done;
}
