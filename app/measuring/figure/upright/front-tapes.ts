import type { MeasureId } from '../../../body';
import type { TapeRow } from '../lay';
import type { Held } from './arm';
import type { uprightFacing } from './facing';

type Facing = ReturnType<typeof uprightFacing>;
type Row = TapeRow<keyof Facing['places'], keyof Facing['shots'], Held>;
export type FacingTapes = { readonly [M in MeasureId]?: Row };

/** Legs stretched toward the viewer stand before a tape round the lower trunk. */
const LEGS = ['leg', 'foot'] as const;
const NECKLINE = [
  ['neckEndLeft', 'neckEnd'],
  ['neckEndLeft', 'neckDrop', 'neckEnd'],
] as const;
const HEM = [['hemSideLeft', 'hem', 'hemSide']] as const;
const BAND_TOP = [['bandSideLeft', 'bandTop', 'bandSide']] as const;

/** Every measure of an upright toy that is taken from the front: head and trunk. */
const headAndTrunk = {
  'head-girth': { way: { lay: 'round', of: 'head', at: 'headWide', toward: 'chin' }, shot: 'head' },
  'face-edge': { way: { lay: 'edge', of: 'head', from: 'jawLeft', to: 'jaw', by: 'crown' }, shot: 'head' },
  'over-head': {
    way: { lay: 'edge', of: 'head', from: 'brimLeft', to: 'brim', by: 'crown' },
    guides: [['brimLeft', 'brimMiddle', 'brim']],
    shot: 'head',
  },
  'ear-base': { way: { lay: 'ruler', from: 'earNear', to: 'earFar', side: -1 }, shot: 'crown', needs: 'ears' },
  'ear-girth': {
    way: { lay: 'round', of: 'ear', at: 'earThick', toward: 'earThickToward' },
    shot: 'crown',
    needs: 'ears',
  },
  'ear-inset': {
    way: { lay: 'edge', of: 'head', from: 'crown', to: 'earNear', by: 'earNear' },
    shot: 'crown',
    needs: 'ears',
  },
  'neck-girth': { way: { lay: 'round', of: 'trunk', at: 'neckCrease', toward: 'base' }, shot: 'head' },
  'chest-girth': { way: { lay: 'round', of: 'trunk', at: 'chest', toward: 'base' }, shot: 'trunk', over: LEGS },
  'body-girth': { way: { lay: 'round', of: 'trunk', at: 'tummy', toward: 'base' }, shot: 'trunk', over: LEGS },
  'front-width': { way: { lay: 'across', of: 'trunk', at: 'tummy', toward: 'base' }, shot: 'trunk', over: LEGS },
  'hem-girth': { way: { lay: 'round', of: 'trunk', at: 'hem', toward: 'base' }, shot: 'trunk', over: LEGS },
  'waist-girth': { way: { lay: 'round', of: 'trunk', at: 'waist', toward: 'base' }, shot: 'trunk' },
  'hip-girth': { way: { lay: 'round', of: 'trunk', at: 'hip', toward: 'base' }, shot: 'trunk', over: LEGS },
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
    way: { lay: 'over', through: ['waist', 'tummy', 'crotch'], behind: ['crotch', 'seatBack', 'waistBack'] },
    shot: 'trunk',
  },
  'front-crotch': { way: { lay: 'over', through: ['waist', 'tummy', 'crotch'] }, shot: 'trunk' },
} as const satisfies FacingTapes;

const limbs = {
  'shoulder-length': { way: { lay: 'over', through: ['neckEnd', 'shoulderEnd'] }, shot: 'shoulder' },
  'side-inset': {
    way: { lay: 'ruler', from: 'plumbTop', to: 'shoulderEnd', side: 1 },
    guides: [['plumbFoot', 'plumbTop']],
    shot: 'shoulder',
  },
  'armhole-depth': { way: { lay: 'ruler', from: 'shoulderEnd', to: 'underarm', side: -1 }, shot: 'shoulder' },
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
  'arm-length': { way: { lay: 'over', through: ['shoulderEnd', 'elbowOuter', 'cuffOuter'] }, shot: 'arm' },
  'underarm-length': { way: { lay: 'over', through: ['underarm', 'elbowInner', 'cuffInner'] }, shot: 'arm' },
  'bodice-height': { way: { lay: 'over', through: ['bandTop', 'waist'] }, guides: BAND_TOP, shot: 'trunk' },
  'strap-length': {
    way: { lay: 'over', through: ['strapFront', 'shoulderMiddle'], behind: ['shoulderMiddle', 'strapBack'] },
    guides: BAND_TOP,
    shot: 'trunk',
  },
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
  'bib-length': {
    way: { lay: 'over', through: ['neckCrease', 'bibHem'] },
    guides: [['neckEndLeft', 'bibSideLeft', 'bibHem', 'bibSide', 'neckEnd']],
    shot: 'trunk',
  },
  'scarf-length': {
    way: {
      lay: 'over',
      through: ['scarfEndLeft', 'scarfLeft', 'scarfNeckLeft'],
      behind: ['scarfNeckLeft', 'scarfBehind', 'scarfNeckRight'],
      again: ['scarfNeckRight', 'scarfRight', 'scarfEndRight'],
    },
    shot: 'trunk',
  },
} as const satisfies FacingTapes;

export const uprightFrontTapes: FacingTapes = { ...headAndTrunk, ...limbs, ...wishes };
