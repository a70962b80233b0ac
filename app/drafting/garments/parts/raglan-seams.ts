import type { SeamRow } from '../../rows/rows';
import { isRaglan, type SleeveNames } from './sleeve-match';

/** A raglan sleeve's dart, where it has one, and its seams to front and back. */
export const raglanSeams: readonly SeamRow<SleeveNames>[] = [
  {
    name: 'shoulder-dart',
    sewn: 2,
    first: [{ piece: 'sleeve', edge: 'dart-front' }],
    second: [{ piece: 'sleeve', edge: 'dart-back', back: true }],
    openDart: true,
    when: isRaglan,
  },
  {
    name: 'front-raglan',
    sewn: 2,
    first: [{ piece: 'front', edge: 'armhole', back: true }],
    second: [{ piece: 'sleeve', edge: 'front-raglan' }],
    longer: 'gathered',
    tellsFront: true,
    when: isRaglan,
  },
  {
    name: 'back-raglan',
    sewn: 2,
    first: [{ piece: 'back', edge: 'armhole' }],
    second: [{ piece: 'sleeve', edge: 'back-raglan' }],
    longer: 'gathered',
    tellsFront: true,
    when: isRaglan,
  },
];
