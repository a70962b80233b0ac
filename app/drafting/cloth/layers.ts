/** What a piece is cut from; each kind is laid apart, since each may be another cloth. */
export const layers = ['main', 'lining', 'facing', 'rib', 'bias'] as const;
export type Layer = (typeof layers)[number];

/** How the names of pieces end that are not cut from the main cloth, and what those are cut from (common practice). */
const ENDINGS: readonly (readonly [ending: string, layer: Layer])[] = [
  ['lining', 'lining'],
  ['facing', 'facing'],
  ['cuff-band', 'rib'],
  ['binding', 'bias'],
];

export function layerOf(name: string): Layer {
  return ENDINGS.find(([ending]) => name.endsWith(ending))?.[1] ?? 'main';
}
