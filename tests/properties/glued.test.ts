import { describe, expect, test } from 'vitest';
import { garments } from '../../app/drafting/garments';
import { type Fault, gluedFaults } from '../holds/glued';
import { guideFaults } from '../holds/guide';
import { valuesOf } from '../measured/changes';
import { made } from '../measured/made';
import { buildCard, builds } from '../toys/builds';

const said = ({ code, where, told }: Fault) => `${code} ${where}: ${told}`;

const upright = garments.filter((garment) => garment.bodies.includes('upright'));

describe.each(upright.map((garment) => [garment.id, garment] as const))('%s, glued along its seams', (id, garment) => {
  const settings = Object.entries(garment.choices).flatMap(([name, choice]) =>
    // Its fallback is the garment as it comes.
    valuesOf(choice)
      .filter((value) => value !== choice.fallback)
      .map((value) => ({ [name]: value })),
  );

  test.each(builds.map((build) => [build.name, buildCard(build)] as const))(
    '%s: is one surface with the openings it should have, flat points and finished edges, and can be sewn step by step',
    (_, card) => {
      const faults = [{}, ...settings].flatMap((choices) => {
        const draft = made(card, id, { choices });
        if (!draft) return [`${JSON.stringify(choices)}: refused`];
        return [...gluedFaults(draft).map(said), ...guideFaults(draft)].map(
          (fault) => `${JSON.stringify(choices)}: ${fault}`,
        );
      });
      expect(faults).toEqual([]);
    },
  );
});
