import { expect, test } from 'vitest';
import { bodyKinds, measureIds, rules, traitValues } from '../../app/body';
import { layers } from '../../app/drafting/cloth/layers';
import type { Outcome } from '../../app/drafting/draft';
import { notionKinds } from '../../app/drafting/draft-types';
import { allowanceRoles, cloths, fitIds, garments } from '../../app/drafting/garments';
import { kinds } from '../../app/drafting/guide/guide-types';
import { levels } from '../../app/drafting/heads/head';
import { papers } from '../../app/drafting/sheets';
import { places } from '../../app/screens/shared/places';
import english from '../../locales/en.json';
import { randomDraft } from '../holds/random-draft';
import { seeded } from '../toys/seeded';

/** Words by dotted name; a plural's forms count as the name itself. */
const codes = new Set(namesIn(english).map((name) => name.replace(/_(zero|one|two|few|many|other)$/, '')));

function namesIn(words: object, before = ''): string[] {
  return Object.entries(words).flatMap(([name, value]) =>
    typeof value === 'object' ? namesIn(value, `${before}${name}.`) : [before + name],
  );
}

/** What each table's rows need to be spoken of. Adding a row to a table makes its words wanted here. */
const wanted: Record<string, readonly string[]> = {
  measures: measureIds.flatMap((id) => [`measure.${id}.name`, `measure.${id}.how`]),
  bodies: bodyKinds.flatMap((kind) => [`body.${kind}.name`, `body.${kind}.note`]),
  traits: Object.entries(traitValues).flatMap(([trait, values]) => [
    `trait.${trait}.name`,
    ...values.map((value) => `trait.${trait}.${value}`),
  ]),
  rules: rules.map(({ code }) => `flag.${code}`),
  garments: garments.flatMap(({ id }) => [`garment.${id}.name`, `garment.${id}.note`, `flag.wears-${id}`]),
  'where a maker was': places.map((place) => `screen.place.${place}`),
  levels: levels.map((level) => `level.${level}`),
  pieces: garments.flatMap(({ pieces }) => pieces.map(({ name }) => `piece.${name}`)),
  seams: garments.flatMap(({ seams }) => seams.map(({ name }) => `seam.${name}`)),
  'sewing steps': kinds.map((kind) => `guide.how.${kind}`),
  'what seams are matched by': garments.flatMap(({ match, unsuited, instead }) => [
    ...match.flatMap(({ what, rest, turn }) => [
      `because.${what}`,
      ...(rest === 'accept' || rest === 'leave' ? [] : [`flag.${what}-cannot-match`]),
      ...(rest === 'gather' ? [`adjustment.${what}-gathered`] : []),
      ...turn.flatMap(({ code }) => (code ? [`adjustment.${code}`] : [])),
    ]),
    ...unsuited.flatMap(({ choice, code }) => (code ? [`adjustment.${code}`, `because.${choice}`] : [])),
    ...instead.flatMap(({ choice, code, because = choice }) => [`adjustment.${code}`, `because.${because}`]),
  ]),
  notes: garments.flatMap(({ notes }) => notes.map(({ code }) => `flag.${code}`)),
  places: garments.flatMap(({ fit, passages }) =>
    [...fit.map(({ place }) => place), ...passages.map(({ through }) => through)].map((place) => `place.${place}`),
  ),
  'what must pass': garments.flatMap(({ passages }) => passages.map(({ measure }) => `passes.${measure}`)),
  notions: [
    ...notionKinds.map((kind) => `notion.${kind}`),
    ...layers.map((layer) => `layer.${layer}`),
    ...garments.flatMap(({ notions }) =>
      notions.map(({ kind, place }) => `${kind === 'filling' ? 'piece' : 'seam'}.${place}`),
    ),
  ],
  choices: garments.flatMap(({ choices }) =>
    Object.entries(choices).flatMap(([id, choice]) => [
      `choice.${id}.name`,
      ...(choice.kind === 'one' ? choice.of.map((value) => `choice.${id}.${value}`) : []),
    ]),
  ),
  allowances: allowanceRoles.filter((role) => role !== 'fold').map((role) => `label.allowance.${role}`),
  fits: ['fit.name', ...fitIds.map((id) => `fit.${id}`)],
  cloths: ['cloth.name', ...cloths.map(({ id }) => `cloth.${id}`)],
  papers: Object.keys(papers).map((id) => `paper.${id}`),
  'what drafts say': [...new Set(randomOutcomes().flatMap(codesOf))],
};

test.each(Object.entries(wanted))('%s have words', (_, table) => {
  expect(table.length).toBeGreaterThan(0);
  expect(table.filter((code) => !codes.has(code))).toEqual([]);
});

/** Three hundred random drafts and refusals: enough to meet every code again and again. */
function randomOutcomes(): Outcome[] {
  const random = seeded(1);
  return Array.from({ length: 300 }, (_, turn) => randomDraft(random, turn % 2 === 0).outcome);
}

function codesOf(outcome: Outcome): string[] {
  if (!outcome.ok) return outcome.flags.map(({ code }) => `flag.${code}`);
  const { pieces, fit, openings, adjustments, flags } = outcome.draft;
  return [
    ...pieces.flatMap(({ lines }) =>
      lines.filter(({ path }) => path.length === 1).map(({ name }) => `line.${name.replace(/-\d+$/, '')}`),
    ),
    ...fit.flatMap(({ place, why }) => [`place.${place}`, ...(why ? [`why.${why}`] : [])]),
    ...openings.flatMap(({ through, closure }) => [`place.${through}`, `closure.${closure}`]),
    ...adjustments.flatMap(({ code, because }) => [`adjustment.${code}`, `because.${because}`]),
    ...flags.map(({ code }) => `flag.${code}`),
  ];
}
