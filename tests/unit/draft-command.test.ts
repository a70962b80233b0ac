import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ENGINE } from '../../app/drafting/draft';
import { demoCards } from '../../app/measuring';
import { draftProgram } from '../measured/draft-program';

const program = await draftProgram();

const folder = mkdtempSync(join(tmpdir(), 'hemling-draft-'));
const [card] = demoCards;
if (!card) throw new RangeError('no demo toy');
const order = { card, garment: 'hooded-top' };

afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(content: unknown, ...words: string[]) {
  const file = join(folder, 'order.json');
  writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content));
  return command(file, ...words);
}

function command(...words: string[]) {
  const ran = spawnSync(process.execPath, [program, ...words], { encoding: 'utf8' });
  return { exit: ran.status, said: ran.stderr.trim().split('\n'), printed: ran.stdout };
}

const withReadings = (readings: Record<string, readonly number[]>) => ({
  ...order,
  card: { ...card, readings: { ...card.readings, ...readings } },
});

describe('an order that can be drafted', () => {
  const out = join(folder, 'paper');
  beforeAll(() => {
    expect(run(order, '--out', out, '--paper', 'letter', '--units', 'cm').exit).toBe(0);
  }, 60_000);

  test('is written as a PDF, an SVG and a draft that names its engine', () => {
    expect(readFileSync(join(out, 'pattern.pdf'), 'latin1')).toMatch(/^%PDF-1\./u);
    expect(readFileSync(join(out, 'pieces.svg'), 'utf8')).toMatch(/^<svg /u);
    const draft = JSON.parse(readFileSync(join(out, 'draft.json'), 'utf8'));
    expect([draft.format, draft.version, draft.engine]).toEqual(['hemling-draft', 1, ENGINE]);
    expect(draft.order.paper).toBe('letter');
  });

  test('is written again to the same bytes', () => {
    const again = join(folder, 'again');
    run(order, '--out', again, '--paper', 'letter', '--units', 'cm');
    for (const name of ['pattern.pdf', 'pencil-plan.pdf', 'sewing.pdf', 'pattern.html', 'pieces.svg', 'draft.json']) {
      expect(readFileSync(join(again, name)).equals(readFileSync(join(out, name))), name).toBe(true);
    }
  });
});

test('the engine has the version of the package', () => {
  expect(ENGINE).toBe(JSON.parse(readFileSync('package.json', 'utf8')).version);
});

test('--list names what an order may name', () => {
  const { exit, printed } = command('--list');
  expect(exit).toBe(0);
  const list = JSON.parse(printed);
  expect(list.garments[0]).toMatchObject({ id: 'hooded-top', choices: { sleeve: { kind: 'one' } } });
  expect(Object.keys(list)).toEqual(expect.arrayContaining(['bodies', 'measures', 'cloths', 'papers']));
});

describe('what cannot be drafted leaves nothing behind', () => {
  const out = join(folder, 'nothing');
  const length = card.readings['body-length']?.[0] ?? 0;
  test.each([
    [1, 'an armhole as long as the body', withReadings({ 'armhole-depth': [length] }), 'impossible armhole-takes-side'],
    [
      1,
      'a body it does not suit',
      { ...order, card: { ...card, toy: { ...card.toy, body: 'four-legged' } } },
      'impossible body-not-suited',
    ],
    [2, 'zero', withReadings({ 'chest-girth': [0] }), 'card.readings.chest-girth[0]: length-out-of-range'],
    [
      2,
      'a negative length',
      withReadings({ 'chest-girth': [-4] }),
      'card.readings.chest-girth[0]: length-out-of-range',
    ],
    [2, 'no number', JSON.stringify(order).replace(/"chest-girth":\[[^\]]*\]/u, '"chest-girth":[NaN]'), 'not-json'],
    [2, 'a card of version 2', { ...order, card: { ...card, version: 2 } }, 'card.version: newer-version'],
    [2, 'an unknown choice', { ...order, choices: { wings: 'two' } }, 'choices.wings: unknown-choice'],
    [2, 'an unknown value', { ...order, choices: { hood: 'four' } }, 'choices.hood: unknown-value'],
    [2, 'an unknown garment', { ...order, garment: 'sock' }, 'garment: unknown-garment'],
    [2, 'no JSON', '{"card":', 'not-json'],
    [2, 'a date that is none', { ...order, date: 'yesterday' }, 'date: bad-order'],
    [2, 'two megabytes of air', `${JSON.stringify(order)}${' '.repeat(2_000_000)}`, 'too-large'],
  ])('exit %i: %s', (exit, _, content, said) => {
    const ran = run(content, '--out', out);
    expect(ran.exit).toBe(exit);
    expect(ran.said[0]).toContain(said);
    if (exit === 2) expect(ran.said).toHaveLength(1);
    expect(existsSync(out)).toBe(false);
  });

  test.each([
    ['--colour', 'red'],
    ['--units', 'ells'],
    ['--locale', 'xx'],
    ['--paper', 'b9'],
  ])('exit 2: %s %s', (option, value) => {
    const ran = run(order, '--out', out, option, value);
    expect([ran.exit, ran.said.length, existsSync(out)]).toEqual([2, 1, false]);
  });
});
