// The files of tests that take longest begin first: where two run at once, one would else be left alone with them at the end.
import { basename } from 'node:path';
import { BaseSequencer } from 'vitest/node';

/** The longest of the browser's, longest first. */
const LONGEST = ['languages', 'keyboard', 'layout', 'poison', 'pseudo', 'ways', 'doors', 'hands', 'axe'];

export class LongestFirst extends BaseSequencer {
  /** @override @param {import('vitest/node').TestSpecification[]} files */
  async sort(files) {
    const sorted = await super.sort(files);
    return sorted.toSorted((one, other) => placeOf(one) - placeOf(other));
  }
}

/** @param {import('vitest/node').TestSpecification} file */
function placeOf({ moduleId }) {
  const place = LONGEST.indexOf(basename(moduleId, '.test.ts'));
  return place < 0 || !moduleId.includes('/browser/') ? LONGEST.length : place;
}
