import type { BodyKind, MeasureId } from '../body';
import { type MarkId, marksOf } from './figure';

/** The measures that speak of each mark: where their tape starts, ends or lies. */
const speaks: { readonly [M in MarkId]: readonly MeasureId[] } = {
  neck: ['neck-girth', 'crown-arc', 'shoulder-length', 'nape-to-leg', 'neck-to-leg', 'back-length'],
  face: ['neck-girth'],
  fullest: ['body-girth', 'top-height', 'top-girth', 'base-height', 'base-girth'],
  waist: [
    'waist-girth',
    'underarm-to-waist',
    'body-rise',
    'crotch-length',
    'front-crotch',
    'waist-to-tail',
    'waist-to-hem',
  ],
  shoulders: ['shoulder-length', 'across-shoulders', 'side-inset', 'armhole-depth', 'arm-length'],
  underarms: ['chest-girth', 'armhole-depth', 'underarm-length', 'underarm-to-waist', 'side-length'],
  sides: ['front-width', 'back-width', 'side-length'],
  legs: ['neck-to-leg', 'nape-to-leg', 'spine-to-leg', 'leg-spread', 'under-length'],
  hem: ['hem-girth'],
  hood: ['face-edge', 'crown-arc', 'hood-depth', 'ear-from-face-edge'],
};

/** The things to put on a toy of this kind before these measures are taken, in order. */
export const marksFor = (kind: BodyKind, measures: readonly MeasureId[]): readonly MarkId[] =>
  marksOf[kind].filter((mark) => speaks[mark].some((id) => measures.includes(id)));
