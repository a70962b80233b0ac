import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const scripts: Record<string, string> = JSON.parse(readFileSync('package.json', 'utf8')).scripts;
/** Every command that is a program of ours, not a tool's. */
const commands = Object.entries(scripts).filter(([, script]) => script.startsWith('node --import tsx '));
const run = (script: string, ...words: string[]) => {
  const [node = '', ...args] = script.split(' ');
  const { status, stdout, stderr } = spawnSync(node, [...args, ...words], { encoding: 'utf8' });
  return { exit: status, out: stdout, said: stderr };
};

test('there are commands', () => expect(commands.length).toBeGreaterThanOrEqual(7));

describe.each(commands)('%s', (name, script) => {
  test('--help names its usage, its options and its exit codes', () => {
    const { exit, out, said } = run(script, '--help');
    expect({ exit, said }).toEqual({ exit: 0, said: '' });
    expect(out).toContain(`npm run --silent ${name} --`);
    expect(out).toMatch(/^ {2}--help {2,}\S/mu);
    expect(out).toMatch(/^ {2}0 {2,}\S/mu);
    expect(out).toMatch(/^ {2}2 {2,}\S/mu);
    expect(out, 'a code without words').not.toContain(`command.${name}`);
    // What the usage line offers is explained below it.
    for (const [option] of out.matchAll(/--(?!help|silent)[a-z]+/gu)) expect(out).toMatch(`  ${option}`);
  });
});

// Every command reads its words by one reader: three of them stand for all.
test.each(['draft', 'card', 'fuzz'])('%s: an unknown option is one line, exit 2', (name) =>
  refuses(name, scripts[name] ?? '', '--colour', 'red'),
);

test('an unknown letter is one line, exit 2', () => refuses('plan', scripts.plan ?? '', '-x'));
test('too many words are one line, exit 2', () =>
  refuses('plan', scripts.plan ?? '', ...Array.from({ length: 40 }, () => 'word')));

function refuses(name: string, script: string, ...words: string[]): void {
  const { exit, out, said } = run(script, ...words);
  expect({ exit, out, lines: said.trim().split('\n').length }).toEqual({ exit: 2, out: '', lines: 1 });
  expect(said).toMatch(new RegExp(`^${name}: `));
  expect(said).not.toContain('command.');
}

test('an option without its value is named', () => {
  for (const words of [
    ['order.json', '--out'],
    ['--out', '--list'],
    ['--out=', 'order.json'],
  ])
    expect(run(scripts.draft ?? '', ...words)).toEqual({ exit: 2, out: '', said: 'draft: --out needs a value\n' });
  expect(run(scripts.draft ?? '', '--list=yes').said).toBe('draft: --list takes no value\n');
});
