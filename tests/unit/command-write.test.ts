import { spawnSync } from 'node:child_process';
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
import { beforeEach, describe, expect, onTestFinished, test, vi } from 'vitest';
import { writeAll } from '../../app/command/write-all';

const refuseRename = vi.hoisted(() => vi.fn(() => {}));
vi.mock('node:fs', async (original) => {
  const fs = await original<typeof import('node:fs')>();
  const renameSync: typeof fs.renameSync = (from, to) => {
    refuseRename();
    fs.renameSync(from, to);
  };
  return { ...fs, renameSync };
});

let folder: string;
beforeEach(() => {
  refuseRename.mockReset();
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

  test('is put back where nothing whole takes its place', () => {
    mkdirSync(join(folder, `.hemling-${gone}-before`));
    for (const name of NAMES) writeFileSync(join(folder, `.hemling-${gone}-before`, name), 'old');
    writeAll(folder, {});
    expect(held()).toEqual(setOf('old'));
  });

  test('is left alone while its process runs', () => {
    mkdirSync(join(folder, `.hemling-${process.ppid}`));
    writeAll(folder, setOf('new'));
    expect(readdirSync(folder)).toContain(`.hemling-${process.ppid}`);
  });
});

/** Puts a set of one letter in the place of another, and ends itself before the step given; says so if it got through. */
const MORTAL = `
  const { default: fs } = await import('node:fs');
  const { syncBuiltinESMExports } = await import('node:module');
  const [, module, folder, before] = process.argv;
  let steps = 0;
  for (const name of ['mkdirSync', 'openSync', 'renameSync', 'rmSync']) {
    const real = fs[name];
    fs[name] = (...given) => {
      if (steps++ === Number(before)) process.kill(process.pid, 'SIGKILL');
      return real(...given);
    };
  }
  syncBuiltinESMExports();
  const { writeAll } = await import(module);
  writeAll(folder, { one: 'new', two: 'new', three: 'new' });
  console.log('through');`;

test('cut off before any step, what is seen is of one set; the next call makes it whole', () => {
  const module = join(process.cwd(), 'app/command/write-all.ts');
  let through = false;
  for (let step = 0; !through; step++) {
    for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true });
    writeAll(folder, setOf('old'));
    const words = ['--import', 'tsx', '--input-type=module', '-e', MORTAL, module, folder, String(step)];
    through = spawnSync(process.execPath, words, { encoding: 'utf8' }).stdout === 'through\n';
    const seen = readdirSync(folder).filter((name) => !name.startsWith('.'));
    const sets = new Set(seen.map((name) => readFileSync(join(folder, name), 'utf8')));
    expect(sets.size, `step ${step}: ${[...sets]}`).toBeLessThanOrEqual(1);
    if (readdirSync(folder).length === seen.length) expect(seen).toHaveLength(3);
    writeAll(folder, {});
    expect([setOf('old'), setOf('new')], `step ${step}`).toContainEqual(held());
    if (step > 20) expect(held(), 'the writing never ended').toEqual({});
  }
});

describe('a file that cannot be moved', () => {
  test.each([1, 2, 3, 4, 5, 6, 7])('at rename %i leaves the old set', (at) => {
    writeAll(folder, setOf('old'));
    let renames = 0;
    refuseRename.mockImplementation(() => {
      if (++renames === at) throw new Error('refused');
    });
    expect(() => writeAll(folder, setOf('new'))).toThrow('refused');
    expect(held()).toEqual(setOf('old'));
  });
});
