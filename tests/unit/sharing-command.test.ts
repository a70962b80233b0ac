import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'cards-'));
afterAll(() => rmSync(folder, { recursive: true }));

const card = (...given: string[]) => {
  const { status, stdout, stderr } = spawnSync('npm', ['run', '--silent', 'card', '--', ...given], {
    cwd: root,
    encoding: 'utf8',
  });
  return { status, out: stdout.trim(), told: stderr.trim() };
};
const fileOf = (text: string) => {
  const path = join(folder, 'card.json');
  writeFileSync(path, text);
  return path;
};
const bramble = readFileSync(new URL('../cards/1/bramble-inches.json', import.meta.url), 'utf8');
const link = readFileSync(new URL('../cards/1/bramble-inches.link', import.meta.url), 'utf8').trim();

describe('the card command', () => {
  it('prints the link of a card, and the card of a link', () => {
    expect(card(fileOf(bramble))).toEqual({ status: 0, out: link, told: '' });
    expect(card(link)).toEqual({ status: 0, out: bramble.trim(), told: '' });
  });

  it('says what a link cannot hold', () => {
    const wordy = { ...JSON.parse(bramble), note: 'x'.repeat(500) };
    expect(card(fileOf(JSON.stringify(wordy)))).toEqual({ status: 0, out: link, told: 'left-out note' });
  });

  it.each([
    ['a damaged link', () => link.slice(0, -2), /^link: damaged-code$/],
    ['a newer link', () => link.replace('#1', '#3'), /^link: newer-version version version=3 known=1$/],
    ['a link without a card', () => 'https://hemling.example/', /^link: not-a-code$/],
    ['no such file', () => join(folder, 'none.json'), /none\.json: unreadable-file$/],
    ['a folder', () => folder, /: not-a-file$/],
    [
      'a reading of zero',
      () => fileOf(bramble.replace(/\[431[.\d]*\]/, '[0]')),
      /: length-out-of-range readings\.head-girth\[0\] value=0$/,
    ],
    ['a file of 1 MB', () => fileOf(' '.repeat(1_000_000)), /: too-large limit=65536$/],
  ])('refuses %s in one line', (_, given, line) => {
    const { status, out, told } = card(given());
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(told).toMatch(line);
    expect(told.split('\n')).toHaveLength(1);
  });

  it('asks for exactly one card', () => expect(card().status).toBe(2));
});
