import { describe, expect, test } from 'vitest';
import type { Draft } from '../../app/drafting/draft-types';
import { garments } from '../../app/drafting/garments';
import { type Fault, gluedFaults } from '../holds/glued';
import { type Example, isKnown, toMend } from '../holds/glued/to-mend';
import { randomDraft } from '../holds/random-draft';
import { valuesOf } from '../measured/changes';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';
import { seeded } from '../toys/random';

const said = ({ code, where, told }: Fault) => `${code} ${where}: ${told}`;

const upright = garments.filter((garment) => garment.bodies.includes('upright'));

describe.each(upright.map((garment) => [garment.id, garment] as const))('%s, glued along its seams', (id, garment) => {
  const settings = Object.entries(garment.choices).flatMap(([name, choice]) =>
    valuesOf(choice).map((value) => ({ [name]: value })),
  );

  test.each(builds.map((build) => [build.name, buildCard(build)] as const))(
    '%s: is one surface with the openings it should have, flat points and finished edges',
    (_, card) => {
      const faults = [{}, ...settings].flatMap((choices) => {
        const draft = made(card, id, { choices });
        if (!draft) return [`${JSON.stringify(choices)}: refused`];
        return gluedFaults(draft)
          .filter((fault) => !isKnown(fault, draft))
          .map((fault) => `${JSON.stringify(choices)}: ${said(fault)}`);
      });
      expect(faults).toEqual([]);
    },
  );
});

test.each(toMend.map((row) => [row.code, row.where, row] as const))(
  '%s %s is still to be mended; strike it off when it is not',
  (code, where, { example, when }) => {
    const draft = drafted(example);
    const found = draft && gluedFaults(draft).some((fault) => fault.code === code && fault.where === where);
    expect(found && (when?.(draft.order.choices) ?? true)).toBe(true);
  },
);

function drafted(example: Example): Draft | null {
  if ('seed' in example) {
    const { outcome } = randomDraft(seeded(example.seed), false, example.garment);
    return outcome.ok ? outcome.draft : null;
  }
  const build = builds.find((each) => each.name === example.build);
  return build ? made(buildCard(build), example.garment, example) : null;
}
