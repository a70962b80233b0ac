/**
 * Do the tests notice? Breaks the code on purpose, one place at a time, in a copy, and runs the fewest tests that should
 * turn red: `npm run mutants -- [--only PART OF A ROOM, A NAME OR ITS TESTS] [--from N] [--parallel N]`. One line a break; exit 1 if
 * one lived. Before anything is broken the tests must be green, or no break says anything.
 */
import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { EXIT, type Exit } from '../../app/command/call';
import { command } from '../../app/command/command';
import { complain, print } from '../../app/command/terminal';
import { locate, type RoomBreak } from './break';
import { breaks } from './index';

await command(
  {
    name: 'mutants',
    usage: ['[--only WORDS] [--from N] [--parallel N]'],
    options: { only: 'WORDS', from: 'N', parallel: 'N' },
    words: [0, 0],
    exits: [EXIT.done, EXIT.refused, EXIT.unreadable, EXIT.ours],
  },
  ({ values: { only = '', from = '1', parallel = '2' } }) => breakAll(only, Number(from), Number(parallel)),
);

async function breakAll(only: string, from: number, parallel: number): Promise<Exit> {
  const chosen = breaks
    .map((each, at) => ({ each, number: at + 1 }))
    .filter(({ each, number }) => number >= from && `${each.room} ${each.what} ${each.tests}`.includes(only));
  if (chosen.length === 0) {
    complain(`mutants: nothing to break is called ${only}`);
    return EXIT.unreadable;
  }
  const copies = Array.from({ length: Math.max(1, parallel) }, copyOfAll);
  process.once('exit', () => {
    for (const copy of copies) rmSync(copy, { recursive: true, force: true });
  });
  for (const { each } of chosen) locate(process.cwd(), each);

  const [first = ''] = copies;
  const needed = [...new Set(chosen.map(({ each }) => each.tests))];
  const clean = await run(first, needed);
  if (clean.red) throw new Error(`the tests are red before anything is broken:\n${clean.said}`);

  const left = [...chosen];
  const lived: string[] = [];
  await Promise.all(
    copies.map(async (copy) => {
      for (let next = left.shift(); next; next = left.shift()) {
        const noticed = await notices(copy, next.each);
        if (!noticed) lived.push(next.each.what);
        print(
          `${noticed ? 'noticed' : 'LIVED  '} ${String(next.number).padStart(3)} ${next.each.room}: ${next.each.what}`,
        );
      }
    }),
  );
  print(`${chosen.length - lived.length} noticed, ${lived.length} lived`);
  return lived.length > 0 ? EXIT.refused : EXIT.done;
}

/** Breaks one place in a copy, runs its tests, and mends it. */
async function notices(copy: string, one: RoomBreak): Promise<boolean> {
  const { file, broken } = locate(copy, one);
  const whole = readFileSync(file, 'utf8');
  if (broken === whole) throw new Error(`${one.what}: nothing is broken`);
  writeFileSync(file, broken);
  try {
    const { red, said } = await run(copy, [one.tests]);
    // A break must be noticed by what a test expects, not because the code can no longer be read.
    if (/Transform failed|PARSE_ERROR|SyntaxError/.test(said)) throw new Error(`${one.what} does not parse:\n${said}`);
    return red;
  } finally {
    writeFileSync(file, whole);
  }
}

/** The tests whose paths begin so; browser tests get a fresh build first. */
async function run(copy: string, tests: readonly string[]): Promise<{ red: boolean; said: string }> {
  if (tests.some((each) => each.startsWith('browser'))) {
    const built = await node(copy, ['.config/build.mjs']);
    if (built.red) throw new Error(built.said);
  }
  const ran = await node(copy, [
    ...['node_modules/vitest/vitest.mjs', 'run', '--config', '.config/vitest.config.ts', '--bail', '1'],
    ...tests.map((each) => `tests/${each}`),
  ]);
  if (/No test files found/.test(ran.said)) throw new Error(`no tests are called ${tests.join(' or ')}`);
  return ran;
}

function node(cwd: string, args: readonly string[]): Promise<{ red: boolean; said: string }> {
  return new Promise((done) => {
    const child = spawn(process.execPath, args, { cwd, env: { ...process.env, NO_COLOR: '1' } });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (text) => (said += text));
    child.once('close', (status) => done({ red: status !== 0, said }));
  });
}

/** Everything but what is built or installed; the packages are shared. */
function copyOfAll(): string {
  const copy = mkdtempSync(join(tmpdir(), 'hemling-mutant-'));
  for (const part of readdirSync('.'))
    if (!['.git', 'node_modules', 'dist'].includes(part)) cpSync(part, join(copy, part), { recursive: true });
  symlinkSync(join(process.cwd(), 'node_modules'), join(copy, 'node_modules'));
  return copy;
}
