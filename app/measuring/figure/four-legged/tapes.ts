import type { MeasureId } from '../../../body';
import { headFrontTapes, headSideTapes } from '../head/tapes';
import type { TapeRow } from '../lay';
import { neckwearTapes } from '../neckwear';
import type { fourLeggedFacing } from './facing';
import type { fourLeggedSide } from './side';

type Side = ReturnType<typeof fourLeggedSide>;
type Facing = ReturnType<typeof fourLeggedFacing>;
type Tapes<S extends Side | Facing> = {
  readonly [M in MeasureId]?: TapeRow<keyof S['places'] & string, keyof S['shots'] & string>;
};

/** Every measure of a four-legged toy that is taken from the side: the trunk is a barrel lying down. */
export const fourLeggedSideTapes: Tapes<Side> = {
  ...headSideTapes,
  'neck-girth': { way: { lay: 'round', of: 'trunk', at: 'neckMiddle', toward: 'neckBase' }, shot: 'nape' },
  'chest-girth': {
    way: { lay: 'round', of: 'trunk', at: 'chestRing', toward: 'towardTail' },
    shot: 'trunk',
    text: 'chest-girth-behind-legs',
  },
  'belly-girth': {
    way: { lay: 'round', of: 'trunk', at: 'bellyRing', toward: 'towardTailBelly' },
    shot: 'trunk',
  },
  'nape-to-leg': { way: { lay: 'edge', of: 'trunk', from: 'napeThread', to: 'withers', by: 'withers' }, shot: 'nape' },
  'spine-to-leg': { way: { lay: 'over', through: ['withers', 'spineSide', 'legTop'] }, shot: 'nape' },
  'front-leg-girth': { way: { lay: 'round', of: 'front-leg', at: 'frontLeg', toward: 'frontLegToward' }, shot: 'leg' },
  'foot-girth': {
    way: { lay: 'round', of: 'front-leg', at: 'foot', toward: 'footToward' },
    shot: 'leg',
    text: 'foot-girth-front-leg',
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
  'back-length': {
    way: { lay: 'edge', of: 'trunk', from: 'napeThread', to: 'coatEnd', by: 'backMiddle' },
    guides: [['coatEnd', 'coatSide', 'coatLow']],
    shot: 'trunk',
  },
  'cape-length': {
    way: { lay: 'edge', of: 'trunk', from: 'napeThread', to: 'capeEnd', by: 'withers' },
    guides: [['capeEnd', 'capeSide', 'capeLow']],
    shot: 'trunk',
    text: 'cape-length-along-back',
  },
  'under-length': {
    way: { lay: 'edge', of: 'trunk', from: 'behindLegs', to: 'underHem', by: 'bellyMiddle' },
    guides: [['hemTop', 'hemSide', 'underHem']],
    shot: 'trunk',
  },
  'front-leg-length': { way: { lay: 'over', through: ['sleeveTop', 'sleeveMiddle', 'sleeveHem'] }, shot: 'leg' },
};

/** Every measure of a four-legged toy that is taken from the front. */
export const fourLeggedFrontTapes: Tapes<Facing> = {
  ...headFrontTapes,
  'neck-to-leg': {
    way: { lay: 'over', through: ['neckFront', 'chestMiddle', 'legLine'] },
    guides: [['legLineLeft', 'legLine', 'legLineRight']],
    shot: 'chest',
  },
  height: {
    way: { lay: 'ruler', from: 'rulerTable', to: 'rulerTop', side: 1 },
    guides: [
      ['table', 'rulerTable'],
      ['crown', 'rulerTop'],
    ],
    shot: 'whole',
    needs: 'standing',
  },
  'leg-spread': { way: { lay: 'ruler', from: 'innerLeft', to: 'innerRight', side: -1 }, shot: 'chest' },
  'bib-length': { ...neckwearTapes['bib-length'], shot: 'chest' },
  'scarf-length': { ...neckwearTapes['scarf-length'], shot: 'chest' },
};
