import type { MeasureId } from '../../../body';
import { headSideTapes } from '../head/tapes';
import type { TapeRow } from '../lay';
import type { SideHeld, uprightSide } from './side';

type Side = ReturnType<typeof uprightSide>;
type Row = TapeRow<keyof Side['places'], keyof Side['shots'], SideHeld>;

/** Every measure of an upright toy that is taken from the side. */
export const uprightSideTapes: { readonly [M in MeasureId]?: Row } = {
  ...headSideTapes,
  'underarm-to-waist': { way: { lay: 'over', through: ['underarm', 'sideWaist'] }, shot: 'trunk', pose: 'lifted' },
  'body-rise': {
    way: { lay: 'ruler', from: 'waistOnSide', to: 'tableUnderSide', side: -1, stands: true },
    guides: [['tableBehind', 'tableBefore']],
    shot: 'seat',
    pose: 'lifted',
    needs: 'seat',
  },
  'foot-girth': {
    way: { lay: 'round', of: 'foot-loop', at: 'footMiddle', toward: 'footToward' },
    shot: 'leg',
    pose: 'lifted',
  },
  'foot-length': {
    way: { lay: 'ruler', from: 'soleHeel', to: 'soleToe', side: 1 },
    guides: [
      ['heelEnd', 'soleHeel'],
      ['toeEnd', 'soleToe'],
    ],
    shot: 'leg',
    pose: 'lifted',
  },
  'hem-girth': {
    way: { lay: 'round', of: 'trunk', at: 'lapHem', toward: 'lapHemToward' },
    shot: 'lap',
    pose: 'lifted',
    only: 'sits',
    text: 'hem-girth-seated',
  },
  'hip-girth': {
    way: { lay: 'round', of: 'trunk', at: 'lapHip', toward: 'lapHipToward' },
    shot: 'lap',
    pose: 'lifted',
    only: 'sits',
    text: 'hip-girth-seated',
  },
  'side-length': {
    way: { lay: 'over', through: ['underarm', 'sideMiddle', 'sideHem'] },
    guides: [{ of: 'trunk', at: 'hem', toward: 'base' }],
    shot: 'trunk',
    pose: 'lifted',
  },
};
