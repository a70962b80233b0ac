import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { fromSvg, pathLength, signedArea } from '../../app/drafting/geometry';
import { toJson } from '../../app/drafting/output';
import { demoDrafts } from '../toys/demo-drafts';
import { handMade } from '../toys/drafts';

const schema: object = JSON.parse(readFileSync('assets/schema/draft-1.json', 'utf8'));
const valid = new Ajv2020({ allErrors: true, strict: false }).compile(schema);
const faults = (value: unknown): readonly string[] =>
  valid(value) ? [] : (valid.errors ?? []).map((each) => each.instancePath);
const written = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

const drafts = [handMade(1), ...demoDrafts()];

test('a draft is written as its schema says', () => {
  for (const draft of drafts) expect(faults(written(toJson(draft)))).toEqual([]);
});

test.each([
  ['another format', { format: 'hemling-card' }, ''],
  ['a newer version', { version: 2 }, '/version'],
  ['no pieces', { pieces: [] }, '/pieces'],
  ['a toy without a name', { toy: undefined }, ''],
])('the schema refuses %s', (_, change, where) => {
  expect(faults(written({ ...toJson(handMade(1)), ...change })).some((path) => path.startsWith(where))).toBe(true);
});

test('the schema refuses relative paths, open rings and words for names', () => {
  const file = toJson(handMade(1));
  const [piece] = file.pieces;
  const refused = (change: object) => faults(written({ ...file, pieces: [{ ...piece, ...change }] }));
  expect(refused({ seamLine: 'm0 0l10 0l0 10Z' })).toEqual(['/pieces/0/seamLine']);
  expect(refused({ cutLine: 'M0 0L10 0L0 10' })).toEqual(['/pieces/0/cutLine']);
  expect(refused({ cuts: ['M0 0L10 0Z'] })).toEqual(['/pieces/0/cuts/0']);
  expect(refused({ name: 'Hood strip' })).toEqual(['/pieces/0/name']);
  expect(refused({ copies: 1.5 })).toEqual(['/pieces/0/copies']);
});

test('paths read back are as long as they say; rings run clockwise and edges follow them', () => {
  for (const piece of drafts.flatMap((draft) => toJson(draft).pieces)) {
    for (const edge of piece.edges) expect(Math.abs(pathLength(fromSvg(edge.path)) - edge.length)).toBeLessThan(0.002);
    expect(signedArea(fromSvg(piece.seamLine))).toBeGreaterThan(0);
    expect(signedArea(fromSvg(piece.cutLine))).toBeGreaterThan(0);
    piece.edges.forEach((edge, i) => {
      const next = fromSvg(piece.edges[(i + 1) % piece.edges.length]?.path ?? '');
      const last = fromSvg(edge.path).at(-1);
      expect(last?.to).toEqual(next[0]?.from);
    });
  }
});

test('every number has at most four decimals, and none is minus nothing', () => {
  for (const draft of drafts) {
    const text = JSON.stringify(toJson(draft));
    expect(text).not.toMatch(/\.\d{5,}|\de-|[^\d.]-0(?![.\d])/);
  }
});
