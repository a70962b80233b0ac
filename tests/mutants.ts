/**
 * Does the suite notice? Breaks the geometry and the drafting on purpose, one place at a time, in a copy, and runs the
 * tests that should turn red: `node --import tsx tests/mutants.ts [--only N]`. Prints a line a breach; exit 1 if one lived.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';

type Mutant = { readonly what: string; readonly file: string; readonly from: string; readonly to: string };

const drafting = 'app/drafting';
const mutants: readonly Mutant[] = [
  { what: 'a sign: offsets to the inside', file: `${drafting}/geometry/parallel.ts`, from: 'left(', to: 'right(' },
  { what: 'a factor: arcs with the wrong handle', file: `${drafting}/geometry/arc.ts`, from: '(4 / 3)', to: '(5 / 3)' },
  {
    what: 'a quarter circle handle off',
    file: `${drafting}/geometry/smooth.ts`,
    from: '(4 / 3) * (Math.SQRT2 - 1)',
    to: '(3 / 2) * (Math.SQRT2 - 1)',
  },
  {
    what: 'a lost allowance: seams',
    file: `${drafting}/pieces/piece.ts`,
    from: 'allowance: edgeAllowance(role, path, allowances)',
    to: "allowance: role === 'seam' ? 0 : edgeAllowance(role, path, allowances)",
  },
  {
    what: 'swapped edges: the hood sewn on by its face edge',
    file: `${drafting}/garments/parts/hood.ts`,
    from: "{ piece: 'hood', edge: 'neck', back: true }",
    to: "{ piece: 'hood', edge: 'face', back: true }",
  },
  {
    what: 'a side not as long as its partner',
    file: `${drafting}/blocks/side.ts`,
    from: 'Math.max(sideLevel - armholeDepth, 1) + sideGather',
    to: 'Math.max(sideLevel - armholeDepth, 1) * (1 + tummyHalf / 4000) + sideGather',
  },
  {
    what: 'a cap not square to its underarm',
    file: `${drafting}/blocks/sleeve.ts`,
    from: 'const leave = point(taper.y, taper.x);',
    to: 'const leave = point(1, -0.3);',
  },
  {
    what: 'an armhole not square to its shoulder',
    file: `${drafting}/blocks/bodice.ts`,
    from: 'const down = point(-Math.sin(slope), Math.cos(slope));',
    to: 'const down = point(0.2, 1);',
  },
  {
    what: 'ease taken off instead of put on',
    file: `${drafting}/sizes/ease.ts`,
    from: 'return girth + Math.max(girth * share, least)',
    to: 'return girth - Math.max(girth * share, least)',
  },
  {
    what: 'the matcher stops before the seam matches',
    file: `${drafting}/settling/match.ts`,
    from: 'if (!solved.ok) continue;',
    to: 'if (solved.ok) continue;',
  },
  {
    what: 'a ring sector that turns too far',
    file: `${drafting}/blocks/flare.ts`,
    from: 'const angle = (low - wide) / height;',
    to: 'const angle = (1.1 * (low - wide)) / height;',
  },
  {
    what: 'a neckline that forgets to close round the neck',
    file: `${drafting}/sizes/neck.ts`,
    from: 'closed(half) - girth',
    to: 'closed(half) - 0.8 * girth',
  },
  {
    what: 'Brent that gives up at its bracket',
    file: `${drafting}/geometry/solve.ts`,
    from: 'if (Math.abs(fb) <= tolerance) return',
    to: 'if (Math.abs(fb) <= 40 * tolerance + 0.3) return',
  },
  {
    what: 'lengths of lines a thousandth long',
    file: `${drafting}/geometry/length.ts`,
    from: 'distance(curve.from, curve.to) * end',
    to: 'distance(curve.from, curve.to) * end * 1.001',
  },
  {
    what: 'notches counted from the wrong end',
    file: `${drafting}/seams/notches.ts`,
    from: 'span.ref.back ? length - walked : walked',
    to: 'walked',
  },
];

/** Nothing changed: what must stay green, or no breach below says anything. */
const unbroken: Mutant = { what: 'nothing', file: 'package.json', from: '', to: '' };

const { values } = parseArgs({ options: { only: { type: 'string' } } });
if (noticed(unbroken)) throw new Error('the tests are red before anything is broken');
const chosen = values.only ? mutants.slice(Number(values.only), Number(values.only) + 1) : mutants;
const lived = chosen.filter((mutant) => !noticed(mutant));
console.log(`${chosen.length - lived.length} noticed, ${lived.length} lived`);
process.exitCode = lived.length > 0 ? 1 : 0;

function noticed({ what, file, from, to }: Mutant): boolean {
  const copy = mkdtempSync(join(tmpdir(), 'hemling-mutant-'));
  try {
    for (const part of ['app', 'assets', 'locales', 'tests', '.config', 'package.json', 'tsconfig.json'])
      cpSync(part, join(copy, part), { recursive: true });
    symlinkSync(join(process.cwd(), 'node_modules'), join(copy, 'node_modules'));
    const path = join(copy, file);
    const before = readFileSync(path, 'utf8');
    const after = before.replace(from, to);
    if (after === before && from !== '') throw new Error(`nothing to break in ${file}: ${from}`);
    writeFileSync(path, after);
    const tests = ['tests/reference', 'tests/properties/geometry', 'tests/properties/drafts'];
    const run = spawnSync(
      'node_modules/.bin/vitest',
      [
        'run',
        '--config',
        '.config/vitest.config.ts',
        '--bail',
        '1',
        '--project',
        'unit',
        '--project',
        'properties',
        ...tests,
      ],
      { cwd: copy, encoding: 'utf8' },
    );
    console.log(`${run.status === 0 ? 'LIVED  ' : 'noticed'} ${what} (${file})`);
    return run.status !== 0;
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
}
