import type { Group, Measure, Nature, Region, View } from './measure';
import type { SizeId } from './sizes';
import type { Mm } from './units';

const row = <Id extends string>(
  id: Id,
  nature: Nature,
  region: Region,
  group: Group,
  view: View,
  upright: Mm,
  spread: number,
  governs: readonly SizeId[],
  more: Partial<Pick<Measure, 'after' | 'optional'>> = {},
): Measure<Id> => ({
  id,
  nature,
  region,
  group,
  view,
  typical: { upright },
  spread,
  governs,
  after: [],
  ...more,
});

/** The catalogue: one row a measure, in the order the tape goes round the toy. Typical values are from memory. */
export const measures = [
  row('head-girth', 'girth', 'head', 'head', 'front', 430, 0.1, []),
  row('face-edge', 'surface', 'head', 'head', 'front', 380, 0.1, ['hoodFront']),
  row('crown-arc', 'surface', 'head', 'head', 'side', 262, 0.12, ['hoodCrown']),
  row('hood-depth', 'surface', 'head', 'head', 'side', 132, 0.12, ['hoodDepth']),
  row('neck-girth', 'girth', 'neck', 'trunk', 'front', 300, 0.16, ['neck']),
  row('chest-girth', 'girth', 'front', 'trunk', 'front', 395, 0.06, ['chest']),
  row('body-girth', 'girth', 'front', 'trunk', 'front', 430, 0.05, ['tummy']),
  row('front-width', 'surface', 'front', 'trunk', 'front', 218, 0.05, ['tummy']),
  row('back-width', 'surface', 'back', 'trunk', 'back', 212, 0.05, ['tummy']),
  row('hem-girth', 'girth', 'front', 'trunk', 'front', 420, 0.07, ['hem']),
  row('shoulder-length', 'surface', 'arm', 'shoulder', 'front', 30, 0.25, ['shoulder'], { optional: true }),
  row('side-inset', 'straight', 'arm', 'shoulder', 'front', 26, 0.35, [], {
    optional: true,
  }),
  row('armhole-depth', 'straight', 'arm', 'arm', 'front', 72, 0.12, ['armholeDepth']),
  row('arm-root-girth', 'girth', 'arm', 'limb', 'front', 168, 0.1, ['armhole']),
  row('upper-arm-girth', 'girth', 'arm', 'limb', 'front', 165, 0.1, ['bicep']),
  row('paw-girth', 'girth', 'arm', 'limb', 'front', 150, 0.14, ['cuff']),
  row('body-length', 'wish', 'wish', 'length', 'front', 150, 0.1, ['frontLength']),
  row('back-body-length', 'wish', 'wish', 'length', 'back', 138, 0.1, ['backLength']),
  row('side-length', 'wish', 'wish', 'length', 'side', 72, 0.14, ['sideLength']),
  row('front-neck-drop', 'wish', 'wish', 'wish', 'front', 36, 0.2, ['frontNeckDrop']),
  row('back-neck-drop', 'wish', 'wish', 'wish', 'back', 14, 0.25, ['backNeckDrop']),
  row('arm-length', 'wish', 'wish', 'arm', 'front', 128, 0.14, ['sleeveLength']),
  row('underarm-length', 'wish', 'wish', 'arm', 'front', 98, 0.16, ['underarmLength']),
] as const satisfies readonly Measure[];

export type MeasureId = (typeof measures)[number]['id'];
export const measureIds = measures.map((measure) => measure.id) as readonly MeasureId[];

const byId = new Map<string, Measure<MeasureId>>(measures.map((measure) => [measure.id, measure]));

/** The row of a measure; `undefined` for an id the catalogue does not hold. */
export function findMeasure(id: string): Measure<MeasureId> | undefined {
  return byId.get(id);
}
