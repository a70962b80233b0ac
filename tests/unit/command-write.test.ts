import { spawn, spawnSync } from 'node:child_process';
import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, onTestFinished, test } from 'vitest';
import { writeAll } from '../../app/command/write-all';
import { seeded } from '../toys/seeded';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'hemling-write-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
});

const NAMES = ['one', 'two', 'three'];
const setOf = (content: string) => Object.fromEntries(NAMES.map((name) => [name, content]));
const held = () =>
  Object.fromEntries(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'utf8')]));

test('a set takes the place of the last one, and leaves what is not of it', () => {
  writeFileSync(join(folder, 'mine'), 'mine');
  writeAll(folder, setOf('old'));
  writeAll(folder, setOf('new'));
  expect(held()).toEqual({ ...setOf('new'), mine: 'mine' });
});

test('a folder is made, and taken away again when nothing could be written', () => {
  writeAll(join(folder, 'a/b'), setOf('new'));
  expect(readdirSync(join(folder, 'a/b')).sort()).toEqual([...NAMES].sort());
  expect(() => writeAll(join(folder, 'c/d'), { ...setOf('new'), 'no/such/folder': '' })).toThrow();
  expect(existsSync(join(folder, 'c'))).toBe(false);
});

test('what cannot all be written leaves the old set', () => {
  writeAll(folder, setOf('old'));
  expect(() => writeAll(folder, { ...setOf('new'), 'no/such/folder': '' })).toThrow();
  expect(held()).toEqual(setOf('old'));
  mkdirSync(join(folder, 'four'));
  expect(() => writeAll(folder, { ...setOf('new'), four: '' })).toThrow();
  expect(NAMES.map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual(['old', 'old', 'old']);
  expect(readdirSync(folder).length).toBe(4);
});

test('a link is replaced, not followed', () => {
  const outside = join(folder, 'outside');
  writeFileSync(outside, 'mine');
  const within = join(folder, 'within');
  mkdirSync(within);
  symlinkSync(outside, join(within, 'one'));
  symlinkSync(join(folder, 'nowhere'), join(within, 'two'));
  writeAll(within, setOf('new'));
  expect(readFileSync(outside, 'utf8')).toBe('mine');
  expect(existsSync(join(folder, 'nowhere'))).toBe(false);
  expect(lstatSync(join(within, 'one')).isFile()).toBe(true);
});

describe('what a process left behind that is gone', () => {
  const gone = spawnSync(process.execPath, ['-e', '']).pid;

  test('is thrown away where it was not whole', () => {
    writeAll(folder, setOf('old'));
    mkdirSync(join(folder, `.hemling-${gone}`));
    writeFileSync(join(folder, `.hemling-${gone}`, 'one'), 'half');
    writeAll(folder, {});
    expect(held()).toEqual(setOf('old'));
  });

  test('is put in its place where it was', () => {
    writeAll(folder, setOf('new'));
    mkdirSync(join(folder, `.hemling-${gone}-whole`));
    for (const name of ['two', 'three']) writeFileSync(join(folder, `.hemling-${gone}-whole`, name), 'newer');
    writeAll(folder, {});
    expect(held()).toEqual({ one: 'new', two: 'newer', three: 'newer' });
  });

  test('is left alone while its process runs', () => {
    mkdirSync(join(folder, `.hemling-${process.ppid}`));
    writeAll(folder, setOf('new'));
    expect(readdirSync(folder)).toContain(`.hemling-${process.ppid}`);
  });
});

/** Writes sets of a megabyte without end, each of one letter; killed from outside. */
const WRITER = `
  const { writeAll } = await import(process.argv[1]);
  console.log('ready');
  for (let n = 0; ; n = (n + 1) % 26) {
    const content = String.fromCharCode(97 + n).repeat(350_000);
    writeAll(process.argv[2], { one: content, two: content, three: content });
  }`;

test('killed at random while writing, the folder holds one whole set after the next call', {
  timeout: 120_000,
}, async () => {
  const random = seeded(11);
  for (let kill = 0; kill < 20; kill++) {
    const module = join(process.cwd(), 'app/command/write-all.ts');
    const writer = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', WRITER, module, folder]);
    await new Promise((resolve) => writer.stdout.once('data', resolve));
    await new Promise((resolve) => setTimeout(resolve, random() * 60));
    const ended = new Promise((resolve) => writer.once('exit', resolve));
    writer.kill('SIGKILL');
    await ended;
    writeAll(folder, {});
    const contents = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8'));
    expect([0, 3]).toContain(contents.length);
    expect(new Set(contents.map((content) => content[0])).size).toBeLessThanOrEqual(1);
    for (const content of contents) expect(content.length).toBe(350_000);
  }
});
