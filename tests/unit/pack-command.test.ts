import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'hemling-pack-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Six right-angled halves of a square of 40, which can lie as three squares, and two bars. */
const instance = {
  strip_height: 60,
  items: [
    {
      demand: 6,
      allowed_orientations: [0, 180],
      shape: {
        data: [
          [0, 0],
          [40, 0],
          [0, 40],
          [0, 0],
        ],
      },
    },
    {
      demand: 2,
      allowed_orientations: [0],
      shape: {
        data: [
          [0, 0],
          [60, 0],
          [60, 18],
          [0, 18],
          [0, 0],
        ],
      },
    },
  ],
};

const pack = (...words: string[]) => {
  const file = join(folder, 'instance.json');
  writeFileSync(file, JSON.stringify(instance));
  const ran = spawnSync(process.execPath, ['--import', 'tsx', 'app/command/pack.ts', file, ...words], {
    encoding: 'utf8',
  });
  return { exit: ran.status, said: ran.stderr, printed: ran.stdout };
};

test('a strip is packed for so many seconds, or so many steps, as its seed has it', () => {
  const timed = pack('--seconds', '0.2', '--seed', '3');
  expect(timed).toMatchObject({ exit: 0, said: '' });
  const density = Number(/density ([\d.]+) %/.exec(timed.printed)?.[1]);
  expect(density).toBeGreaterThan(60);
  expect(density).toBeLessThanOrEqual(100);
  expect(Number(/first ([\d.]+) %/.exec(timed.printed)?.[1])).toBeLessThanOrEqual(density);
  const counted = [1, 2].map(() => pack('--steps', '20000', '--seed', '3').printed.replaceAll(/time \S+ s/g, ''));
  expect(counted[0]).toMatch(/^density /);
  expect(counted[1]).toBe(counted[0]);
});
