import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { summary } from '../../app/command/summary';
import { demoCards } from '../../app/measuring';
import { createSay } from '../../app/words';
import { draftProgram } from '../measured/draft-program';

const program = await draftProgram();

const folder = mkdtempSync(join(tmpdir(), 'hemling-attack-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const [card] = demoCards;
if (!card) throw new RangeError('no demo toy');
const order = { card, garment: 'hooded-top' };
const path = (name: string) => join(folder, name);
const orderFile = (name: string, content: unknown) => {
  writeFileSync(path(name), typeof content === 'string' ? content : JSON.stringify(content));
  return path(name);
};
const usual = orderFile('usual.json', order);

/** @param before shell words that are run first, in the same process */
function draft(words: readonly string[], before = ':') {
  const command = `${before}; exec "$0" ${program} "$@"`;
  const ran = spawnSync('sh', ['-c', command, process.execPath, ...words], { encoding: 'utf8', timeout: 30_000 });
  return { exit: ran.status, said: ran.stderr.trim(), printed: ran.stdout };
}

describe('an order file that is none', () => {
  const fifo = path('fifo');
  spawnSync('mkfifo', [fifo]);
  const large = orderFile('large.json', '');
  truncateSync(large, 100 * 1024 * 1024);
  test.each([
    ['a pipe nobody writes to', fifo, 'not-a-file'],
    ['a device without end', '/dev/zero', 'not-a-file'],
    ['a device without content', '/dev/null', 'not-a-file'],
    ['a folder', folder, 'not-a-file'],
    ['an empty file', orderFile('empty.json', ''), 'empty-file'],
    ['100 MB', large, 'too-large'],
    ['no file', path('none.json'), 'unreadable-file'],
  ])('%s is refused in one line', (_, file, code) => {
    expect(draft([file, '--out', path('none')])).toEqual({ exit: 2, said: `${file}: ${code}`, printed: '' });
    expect(existsSync(path('none'))).toBe(false);
  });
});

describe('an order piped in', () => {
  const from = (source: string, out: string) => draft(['-', '--out', out], `exec < ${source}`);

  test('is read like one from a file', () => {
    const out = path('piped');
    expect(from(usual, out)).toEqual({ exit: 0, said: '', printed: '' });
    expect(draft([usual, '--out', path('named')]).exit).toBe(0);
    expect(readFileSync(join(out, 'draft.json'))).toEqual(readFileSync(join(path('named'), 'draft.json')));
  });

  test('late and in two parts is waited for', () => {
    const half = Math.floor(readFileSync(usual).length / 2);
    const late = `(head -c ${half} ${usual}; sleep 0.5; tail -c +${half + 1} ${usual})`;
    const command = `${late} | ${process.execPath} ${program} - --out ${path('late')}`;
    expect(spawnSync('sh', ['-c', command]).status).toBe(0);
  });

  test('without end is refused at the limit', () => {
    expect(from('/dev/zero', path('none'))).toEqual({ exit: 2, said: '-: too-large', printed: '' });
  });

  test('that is empty is refused', () => {
    expect(from('/dev/null', path('none'))).toEqual({ exit: 2, said: '-: empty-file', printed: '' });
  });
});

describe('a full disk', () => {
  test('leaves no folder, or the old set', () => {
    const out = path('full');
    // No file may grow over 20 blocks of 512 bytes or 1 KiB: a PDF is larger.
    expect(draft([usual, '--out', out], 'ulimit -f 20')).toEqual({ exit: 2, said: '--out: cannot-write', printed: '' });
    expect(existsSync(out)).toBe(false);
    expect(draft([usual, '--out', out]).exit).toBe(0);
    const held = () => readdirSync(out).map((name) => [name, readFileSync(join(out, name), 'latin1')]);
    const before = held();
    expect(before).toHaveLength(6);
    const other = orderFile('other.json', { ...order, garment: 'tee' });
    expect(draft([other, '--out', out], 'ulimit -f 20').exit).toBe(2);
    expect(held()).toEqual(before);
  });

  test('a link in the folder is not followed out of it', () => {
    const out = path('linked');
    const outside = orderFile('outside', 'mine');
    expect(draft([usual, '--out', out]).exit).toBe(0);
    rmSync(join(out, 'pattern.pdf'));
    symlinkSync(outside, join(out, 'pattern.pdf'));
    expect(draft([usual, '--out', out]).exit).toBe(0);
    expect(readFileSync(outside, 'utf8')).toBe('mine');
    expect(readFileSync(join(out, 'pattern.pdf'), 'latin1')).toMatch(/^%PDF/u);
  });
});

describe('what steers a terminal', () => {
  const STEERING = /(?!\n)[\p{Cc}\u202A-\u202E\u2066-\u2069]/u;
  test.each([
    ['a file’s name', ['\u001b[2J\u009b31m\u202e.json', '--out', 'x']],
    ['an option', ['--\u001b]0;title\u0007', 'x']],
  ])('in %s does not reach it', (_, words) => {
    const { exit, said } = draft(words);
    expect(exit).toBe(2);
    expect(said).toContain('\uFFFD');
    expect(said).not.toMatch(STEERING);
  });

  test('in a choice does not reach it', () => {
    const { exit, said } = draft([
      orderFile('choice.json', { ...order, choices: { '\u001b[31m\u009b': 'x' } }),
      '--out',
      'x',
    ]);
    expect(exit).toBe(2);
    expect(said).not.toMatch(STEERING);
  });
});

test('too few readings are refused in one line that lists what to measure', () => {
  const { exit, said } = draft([
    orderFile('few.json', { ...order, card: { ...card, readings: {} } }),
    '--out',
    path('few'),
  ]);
  expect(exit).toBe(1);
  expect(said.split('\n')).toHaveLength(1);
  expect(said).toMatch(/^impossible cannot-estimate Measure these first: .*\bchest-girth, .*\bhead-girth\b/u);
  expect(existsSync(path('few'))).toBe(false);
});

describe('what was written', () => {
  test('is told on a terminal, in two lines', () => {
    const command = `${process.execPath} ${program} ${usual} --out ${path('told')}`;
    const { status, stdout } = spawnSync('script', ['-qec', command, '/dev/null'], { encoding: 'utf8' });
    const lines = stdout.trim().split(/\r?\n/u);
    expect([status, lines.length]).toEqual([0, 2]);
    expect(lines[0]).toMatch(
      /^\d+ pieces, \d+ pages?: pattern\.pdf, pencil-plan\.pdf, sewing\.pdf, pattern\.html, pieces\.svg and draft\.json are in /u,
    );
    expect(lines[1]).toMatch(/^Adjusted: The /u);
  });

  test('is not told to a pipe', () => {
    expect(draft([usual, '--out', path('silent')])).toEqual({ exit: 0, said: '', printed: '' });
  });

  test('without an adjustment is one line', async () => {
    const lines = summary({ pieces: [], adjustments: [] }, { pages: [] }, 'there', await createSay('en'), 'cm');
    expect(lines).toEqual([
      '0 pieces, 0 pages: pattern.pdf, pencil-plan.pdf, sewing.pdf, pattern.html, pieces.svg and draft.json are in there.',
    ]);
  });
});
