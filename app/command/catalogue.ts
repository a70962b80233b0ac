import { bodyKinds, measures, traitValues } from '../body';
import { allowanceRoles, cloths, fits, heads, USUAL_CLOTH, USUAL_FIT, usualAllowances } from '../drafting/catalogue';
import { paperIds } from '../drafting/sheets';
import { locales } from '../words';

/** Everything an order may name, with its values and defaults, as plain JSON. */
export function catalogue() {
  return {
    garments: heads.map(({ id, bodies, looks, choices, needs }) => ({
      id,
      bodies,
      looks,
      choices,
      needs: [...new Set(needs.map((need) => need.measure))],
    })),
    bodies: bodyKinds,
    traits: traitValues,
    measures: measures.map(({ id, nature, typical }) => ({ id, nature, bodies: Object.keys(typical) })),
    fits: { values: fits, fallback: USUAL_FIT },
    cloths: { values: cloths, fallback: USUAL_CLOTH },
    allowances: Object.fromEntries(allowanceRoles.map((role) => [role, usualAllowances('usual')[role]])),
    papers: paperIds,
    units: ['in', 'cm'],
    locales,
  };
}
