import 'fake-indexeddb/auto';
import { afterAll, expect, test } from 'vitest';
import * as store from '../../app/storage';
import { type Random, seeded } from '../toys/seeded';
import { fillStore, longest } from '../unit/storage-samples';

const MUTANTS = Number(process.env.MUTANTS ?? 4_000);
/** No single file may keep the app waiting longer. */
const LIMIT_MS = 5_000;

/** What a hostile or careless hand might put in the place of a value. */
const insertions = [
  'null',
  '1e400',
  '-1',
  '""',
  '[]',
  '{}',
  '"\\u0000\\u202e"',
  '{"__proto__":{"bad":1}}',
  '"__proto__":{"bad":1},',
  '"constructor":{"prototype":{"bad":1}},',
  `"${longest}"`,
  '['.repeat(40),
  '"<script>alert(1)</script>"',
  '}',
  '\\',
  '"',
];

afterAll(() => store.forgetEverything());

test(`${MUTANTS} mutated backups are refused with a code or read, and change nothing that is kept`, async () => {
  const { backupFile, exportAll, importAll, previewImport, readBackup } = await store.loadBackup();
  await fillStore(3);
  const text = await backupFile(await exportAll()).text();
  const before = await store.listToys();
  const untouched = await readBackup(text);
  const random = seeded(20261121);
  const outcomes = { refused: 0, read: 0, slowest: 0 };
  for (let each = 0; each < MUTANTS; each++) {
    const mutant = mutate(text, random);
    const began = performance.now();
    const result = await readBackup(each % 2 === 0 ? mutant : new Blob([mutant]));
    outcomes.slowest = Math.max(outcomes.slowest, performance.now() - began);
    outcomes[result.ok ? 'read' : 'refused'] += 1;
    if (!result.ok) {
      expect(result.code).toMatch(/^backup-/);
      continue;
    }
    const told = result.backup.changed || result.backup.unreadable > 0;
    if (!told) expect(result).toEqual(untouched);
    await previewImport(result.backup);
    if (each % 20 === 0) await restored(() => importAll(result.backup, each % 40 === 0 ? 'merge' : 'replace'));
  }
  expect(await store.listToys()).toEqual(before);
  expect(({} as { bad?: number }).bad).toBeUndefined();
  expect(outcomes.slowest).toBeLessThan(LIMIT_MS);
  expect(Math.min(outcomes.refused, outcomes.read)).toBeGreaterThan(MUTANTS / 20);

  /** What could be read can be restored and lived with; then all is put back. */
  async function restored(restore: () => Promise<void>): Promise<void> {
    await restore();
    for (const toy of await store.listToys()) {
      await store.cardOf(toy.id, 'cm');
      await store.photoOf(toy.id);
    }
    await store.whereWasI();
    if (untouched.ok) await importAll(untouched.backup, 'replace');
    expect(await store.listToys()).toEqual(before);
  }
});

function mutate(text: string, random: Random): string {
  let mutant = text;
  for (let times = 1 + Math.floor(random() * 3); times > 0; times--) {
    const at = Math.floor(random() * mutant.length);
    const to = Math.min(mutant.length, at + 1 + Math.floor(random() * 40));
    const kind = Math.floor(random() * 6);
    if (kind === 0 && random() < 0.2) mutant = mutant.slice(0, at);
    else if (kind === 1) mutant = mutant.slice(0, at) + flipped(mutant, at, random) + mutant.slice(at + 1);
    else if (kind === 2) mutant = mutant.slice(0, at) + mutant.slice(to);
    else if (kind === 3) mutant = mutant.slice(0, to) + mutant.slice(at);
    else if (kind === 4) mutant = valueReplaced(mutant, at, random);
    else
      mutant = mutant.replace(/\d+/g, (digits) => (random() < 0.02 ? `${digits}${Math.floor(random() * 10)}` : digits));
  }
  return mutant;
}

const flipped = (text: string, at: number, random: Random) =>
  String.fromCharCode(text.charCodeAt(at) ^ (1 << Math.floor(random() * 7)));

/** Puts something hostile where the next value stands, mostly so that the JSON stays whole. */
function valueReplaced(text: string, at: number, random: Random): string {
  const insertion = insertions[Math.floor(random() * insertions.length)] ?? 'null';
  const start = text.indexOf(':', at) + 1;
  const end = start + Math.max(0, text.slice(start).search(/[,}\]\n]/));
  return text.slice(0, start) + insertion + text.slice(end);
}
