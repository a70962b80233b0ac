import type { Piece } from '../draft-types';

/** What a piece is cut from; each kind is laid apart, since each may be another cloth. */
export const layers = ['main', 'lining', 'facing', 'rib', 'bias', 'thin-cotton'] as const;
export type Layer = (typeof layers)[number];

/** How the names of pieces end that are not cut from the main cloth, and what those are cut from (common practice); a waist's strip is. */
const ENDINGS: readonly (readonly [ending: string, layer: Layer])[] = [
  ['waist-facing', 'main'],
  ['lining', 'lining'],
  ['facing', 'facing'],
  ['cuff-band', 'bias'],
  ['-rib', 'rib'],
  ['binding', 'bias'],
];

export function layerOf({ name, of }: Pick<Piece, 'name' | 'of'>): Layer {
  return of ?? ENDINGS.find(([ending]) => name.endsWith(ending))?.[1] ?? 'main';
}

/** Whether a piece is a strip that binds an edge, of whichever cloth. */
export function isStrip({ name }: Pick<Piece, 'name'>): boolean {
  return layerOf({ name }) === 'bias';
}
