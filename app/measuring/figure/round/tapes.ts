import type { MeasureId } from '../../../body';
import { headFrontTapes } from '../head/tapes';
import type { TapeRow } from '../lay';
import { neckwearTapes } from '../neckwear';
import type { roundFacing } from './facing';
import type { roundSide } from './side';

type Facing = ReturnType<typeof roundFacing>;
type Side = ReturnType<typeof roundSide>;
type Tapes<S extends Side | Facing> = {
  readonly [M in MeasureId]?: TapeRow<keyof S['places'] & string, keyof S['shots'] & string>;
};

const TABLE = ['tableLeft', 'rulerTable'] as const;
const FULLEST = { of: 'trunk', at: 'fullest', toward: 'base' } as const;
const FULLEST_LEVEL = ['fullestRight', 'rulerFullest'] as const;

/** Every measure of a round toy that is taken from the front. */
export const roundFrontTapes: Tapes<Facing> = {
  'head-girth': headFrontTapes['head-girth'],
  'over-head': headFrontTapes['over-head'],
  'ear-base': headFrontTapes['ear-base'],
  'ear-girth': headFrontTapes['ear-girth'],
  'ear-inset': headFrontTapes['ear-inset'],
  'neck-girth': {
    way: { lay: 'round', of: 'trunk', at: 'neck', toward: 'base' },
    shot: 'whole',
    text: 'neck-girth-under-face',
  },
  'body-girth': { way: { lay: 'round', of: 'trunk', at: 'fullest', toward: 'base' }, shot: 'whole' },
  'hem-girth': { way: { lay: 'round', of: 'trunk', at: 'hem', toward: 'base' }, shot: 'whole' },
  'waist-girth': { way: { lay: 'round', of: 'trunk', at: 'waist', toward: 'base' }, shot: 'whole' },
  'top-girth': { way: { lay: 'round', of: 'trunk', at: 'topLine', toward: 'base' }, shot: 'whole' },
  'base-girth': { way: { lay: 'round', of: 'trunk', at: 'baseLine', toward: 'base' }, shot: 'whole' },
  height: {
    way: { lay: 'ruler', from: 'rulerTable', to: 'rulerTop', side: 1 },
    guides: [TABLE, ['crown', 'rulerTop']],
    shot: 'ruler',
  },
  'top-height': {
    way: { lay: 'ruler', from: 'rulerFullest', to: 'rulerTopLine', side: 1 },
    guides: [FULLEST, FULLEST_LEVEL, { of: 'trunk', at: 'topLine', toward: 'base' }, ['topRight', 'rulerTopLine']],
    shot: 'ruler',
  },
  'base-height': {
    way: { lay: 'ruler', from: 'rulerFullest', to: 'rulerBaseLine', side: -1 },
    guides: [FULLEST, FULLEST_LEVEL, { of: 'trunk', at: 'baseLine', toward: 'base' }, ['baseRight', 'rulerBaseLine']],
    shot: 'ruler',
  },
  'waist-to-hem': {
    way: { lay: 'over', through: ['waistAside', 'skirtAside'] },
    guides: [
      ['waistSideLeft', 'skirtSideLeft'],
      ['skirtSideLeft', 'skirtMiddle', 'skirtSide'],
      ['waistSide', 'skirtSide'],
    ],
    shot: 'skirt',
  },
  'bib-length': { ...neckwearTapes['bib-length'], shot: 'whole' },
  'scarf-length': { ...neckwearTapes['scarf-length'], shot: 'whole' },
};

/** From the side: wing and tail. */
export const roundSideTapes: Tapes<Side> = {
  'wing-base': { way: { lay: 'ruler', from: 'wingAft', to: 'wingFore', side: -1 }, shot: 'wing' },
  'wing-height': {
    way: { lay: 'ruler', from: 'rulerTable', to: 'rulerWing', side: 1 },
    guides: [TABLE, ['wingLevel', 'rulerWing']],
    shot: 'ruler',
  },
  'tail-base-girth': {
    way: { lay: 'round', of: 'tail', at: 'tailBase', toward: 'tailBaseToward' },
    shot: 'tail',
    needs: 'tail',
  },
  'tail-girth': {
    way: { lay: 'round', of: 'tail', at: 'tailThick', toward: 'tailThickToward' },
    shot: 'tail',
    needs: 'tail',
  },
};

/** From behind. */
export const roundBackTapes: Tapes<Facing> = {
  'cape-length': {
    way: { lay: 'over', through: ['neckFront', 'capeMiddle', 'capeHem'] },
    guides: [['neckEndLeft', 'capeSideLeft', 'capeHem', 'capeSide', 'neckEnd']],
    shot: 'skirt',
  },
};
