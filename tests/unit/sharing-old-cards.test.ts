import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decodeCode, encodeCard, readCard } from '../../app/sharing';
import { frozenMeasures, OTHER_TYPICAL } from '../../app/sharing/code/frozen-measures';

/**
 * Cards and links of version 1 as they left the first app that wrote them. Files are added, never changed: whoever
 * printed one must be able to read it for ever.
 */
const folder = new URL('../cards/1/', import.meta.url);
const textOf = (file: string) => readFileSync(new URL(file, folder), 'utf8');
const names = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => file.slice(0, -5));

describe('cards of version 1', () => {
  it('are all there', () => expect(names.length).toBeGreaterThanOrEqual(8));

  it.each(names)('%s: its file and its link are read, and say the same', (name) => {
    const file = readCard(textOf(`${name}.json`));
    const link = decodeCode(textOf(`${name}.link`));
    if (!file.ok || !link.ok) expect.unreachable(JSON.stringify([file, link]));
    expect(link.card).toEqual({ ...file.card, readings: expect.anything() });
    expect([...link.skipped].sort()).toEqual([...file.skipped].sort());
    expect(Object.keys(link.card.readings).sort()).toEqual(Object.keys(file.card.readings).sort());
    const byMeasure: Readonly<Record<string, readonly number[]>> = file.card.readings;
    for (const [id, row] of Object.entries(link.card.readings))
      for (const [at, length] of row.entries())
        expect(Math.abs(length - (byMeasure[id]?.[at] ?? 0)), id).toBeLessThanOrEqual(0.25);
  });

  it.each(names)('%s: is still written as the same link', (name) => {
    const { fragment } = encodeCard(JSON.parse(textOf(`${name}.json`)));
    expect(`https://hemling.example/${fragment}\n`).toBe(textOf(`${name}.link`));
  });
});

describe('the list of measures in a code', () => {
  it('begins as it did in the first app, and what was added since is read past by that app', () => {
    const first = textOf('frozen-measures.txt').trim().split('\n');
    const now = frozenMeasures.map(([id, typical]) => `${id} ${typical}`);
    expect(now.slice(0, first.length)).toEqual(first);
    for (const [, typical] of frozenMeasures.slice(first.length)) expect(typical).toBe(OTHER_TYPICAL);
  });
});
