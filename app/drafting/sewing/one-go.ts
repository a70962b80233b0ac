import type { Seam } from '../draft-types';
import type { AnyNames, SeamRow } from '../rows/rows';

/** Seams that are sewn in one go, as one; and the names of all of them. */
export type OneGo = { readonly seam: Seam; readonly names: readonly string[] };

/** A seam that runs on from another (`from`) is sewn with it: what either crosses is crossed by both. */
export function inOneGo(seams: readonly Seam[], rows: readonly SeamRow<AnyNames>[]): OneGo[] {
  const from = new Map(rows.flatMap((row) => (row.from === undefined ? [] : [[row.name, row.from] as const])));
  const heads = seams.filter(({ name }) => !from.has(name));
  return heads.map((head) => {
    const all = [head, ...seams.filter(({ name }) => from.get(name) === head.name)];
    const longest = all.reduce((most, each) => (each.ratio > most.ratio ? each : most));
    const chain = (side: 'first' | 'second') => all.flatMap((each) => each[side]);
    return {
      seam: { ...head, join: longest.join, first: chain('first'), second: chain('second') },
      names: all.map(({ name }) => name),
    };
  });
}
