// Finds rings of imports, whatever kind of import closes them: a type or a lazy import ties modules together as well.
import { fileOf } from './imports.mjs';

/**
 * One shortest ring through each tangle of modules, its first module repeated at the end; none in a house in order.
 * @param {readonly import('./imports.mjs').Module[]} modules
 * @param {Set<string>} known
 * @returns {string[][]}
 */
export function ringsOf(modules, known) {
  const next = new Map(
    modules.map(({ path, imports }) => [path, imports.flatMap(({ target }) => fileOf(target, known) ?? [])]),
  );
  /** @type {Set<string>} */
  const told = new Set();
  /** @type {string[][]} */
  const rings = [];
  for (const { path } of modules) {
    const ring = told.has(path) ? null : shortestRing(path, next);
    if (!ring) continue;
    rings.push(ring);
    for (const member of ring) told.add(member);
  }
  return rings;
}

/** The shortest way from a module back to itself. @param {string} start @param {Map<string, string[]>} next */
function shortestRing(start, next) {
  /** @type {Map<string, string[]>} by what way each module is reached */
  const ways = new Map([[start, [start]]]);
  for (const [path, way] of ways) {
    for (const target of next.get(path) ?? []) {
      if (target === start) return [...way, start];
      if (!ways.has(target)) ways.set(target, [...way, target]);
    }
  }
  return null;
}
