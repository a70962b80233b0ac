import type { TraitId, Traits } from '../body';

/** A toy's looks of which only those may be read that a garment says it is cut by; another throws a RangeError. */
export function looksRead(traits: Traits, looks: readonly TraitId[]): Traits {
  return new Proxy(traits, {
    get(all, name) {
      if (!looks.some((look) => look === name)) throw new RangeError(`not among the garment's looks: ${String(name)}`);
      return all[name as TraitId];
    },
  });
}
