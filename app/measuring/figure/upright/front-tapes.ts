import type { MeasureId } from '../../../body';
import { headFrontTapes } from '../head/tapes';
import type { TapeRow } from '../lay';
import { neckwearTapes } from '../neckwear';
import type { Held } from './arm';
import type { uprightFacing } from './facing';

type Facing = ReturnType<typeof uprightFacing>;
type Row = TapeRow<keyof Facing['places'], keyof Facing['shots'], Held>;
export type FacingTapes = { readonly [M in MeasureId]?: Row };

const NECKLINE = [
  ['neckEndLeft', 'neckEnd'],
  ['neckEndLeft', 'neckDrop', 'neckEnd'],
] as const;
const HEM = [{ of: 'trunk', at: 'hem', toward: 'base' }] as const;
const CUFF = [{ of: 'arm', at: 'cuff', toward: 'cuffToward' }] as const;
export const BAND_TOP = [{ of: 'trunk', at: 'bandTop', toward: 'base' }] as const;

const trunk = {
  height: {
    way: { lay: 'ruler', from: 'rulerTable', to: 'rulerTop', side: 1 },
    guides: [
      ['table', 'rulerTable'],
      ['crown', 'rulerTop'],
    ],
    shot: 'whole',
    needs: 'standing',
  },
  'neck-girth': { way: { lay: 'round', of: 'trunk', at: 'neckCrease', toward: 'base' }, shot: 'head' },
  'chest-girth': { way: { lay: 'round', of: 'trunk', at: 'chest', toward: 'base' }, shot: 'chest' },
  'body-girth': { way: { lay: 'round', of: 'trunk', at: 'tummy', toward: 'base' }, shot: 'trunk' },
  'front-width': { way: { lay: 'across', of: 'trunk', at: 'tummy', toward: 'base' }, shot: 'tummy' },
  'hem-girth': { way: { lay: 'round', of: 'trunk', at: 'hem', toward: 'base' }, shot: 'lower', only: 'stands' },
  'waist-girth': { way: { lay: 'round', of: 'trunk', at: 'waist', toward: 'base' }, shot: 'trunk' },
  'hip-girth': { way: { lay: 'round', of: 'trunk', at: 'hip', toward: 'base' }, shot: 'lower', only: 'stands' },
  'over-arms-girth': {
    way: { lay: 'round', of: 'arms-and-trunk', at: 'chest', toward: 'base' },
    shot: 'trunk',
    pose: 'close',
  },
  'body-loop': {
    way: {
      lay: 'over',
      through: ['shoulderMiddle', 'loopTummy', 'crotch'],
      behind: ['crotch', 'loopBack', 'shoulderMiddle'],
    },
    shot: 'trunk',
  },
  'crotch-length': {
    way: { lay: 'over', through: ['waistFront', 'tummy', 'crotch'], behind: ['crotch', 'seatBack', 'waistBack'] },
    shot: 'trunk',
  },
  'front-crotch': { way: { lay: 'over', through: ['waistFront', 'crotchFront'] }, shot: 'trunk' },
} as const satisfies FacingTapes;

const limbs = {
  'shoulder-length': { way: { lay: 'over', through: ['neckEnd', 'shoulderEnd'] }, shot: 'shoulder' },
  'side-inset': {
    way: { lay: 'ruler', from: 'plumbTop', to: 'shoulderEnd', side: 1 },
    guides: [['plumbFoot', 'plumbTop']],
    named: { word: 'side-line', at: 'plumbMiddle' },
    shot: 'shoulder',
  },
  'armhole-depth': {
    way: { lay: 'ruler', from: 'armholeTop', to: 'armholeFoot', side: 1 },
    guides: [
      ['shoulderEnd', 'armholeTop'],
      ['underarm', 'armholeFoot'],
    ],
    shot: 'shoulder',
  },
  'arm-root-girth': { way: { lay: 'round', of: 'arm', at: 'armRoot', toward: 'armRootToward' }, shot: 'arm' },
  'upper-arm-girth': { way: { lay: 'round', of: 'arm', at: 'upperArm', toward: 'upperArmToward' }, shot: 'arm' },
  'paw-girth': { way: { lay: 'round', of: 'arm', at: 'paw', toward: 'pawToward' }, shot: 'arm' },
  'thigh-girth': { way: { lay: 'round', of: 'leg', at: 'thigh', toward: 'thighToward' }, shot: 'legs', over: ['foot'] },
} as const satisfies FacingTapes;

const wishes = {
  'body-length': {
    way: { lay: 'over', through: ['neckEnd', 'lengthChest', 'lengthTummy', 'lengthHem'] },
    guides: HEM,
    shot: 'trunk',
  },
  'front-neck-drop': { way: { lay: 'over', through: ['neck', 'neckDrop'] }, guides: NECKLINE, shot: 'head' },
  'arm-length': {
    way: { lay: 'over', through: ['shoulderEnd', 'elbowOuter', 'cuffOuter'] },
    guides: CUFF,
    shot: 'arm',
  },
  'underarm-length': {
    way: { lay: 'over', through: ['underarm', 'elbowInner', 'cuffInner'] },
    guides: CUFF,
    shot: 'arm',
  },
  'bodice-height': { way: { lay: 'over', through: ['waistFront', 'bandFront'] }, guides: BAND_TOP, shot: 'band' },
  'waist-to-hem': {
    way: { lay: 'over', through: ['waistAside', 'skirtHem'] },
    guides: [
      ['waistSideLeft', 'skirtSideLeft'],
      ['skirtSideLeft', 'skirtMiddle', 'skirtSide'],
      ['waistSide', 'skirtSide'],
    ],
    shot: 'skirt',
  },
  'inside-leg-length': { way: { lay: 'over', through: ['insideTop', 'insideMiddle', 'insideHem'] }, shot: 'legs' },
  'bib-length': { ...neckwearTapes['bib-length'], shot: 'trunk' },
  'scarf-length': { ...neckwearTapes['scarf-length'], shot: 'trunk' },
} as const satisfies FacingTapes;

/** Every measure of an upright toy that is taken from the front. */
export const uprightFrontTapes: FacingTapes = { ...headFrontTapes, ...trunk, ...limbs, ...wishes };
