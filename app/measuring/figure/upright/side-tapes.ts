import type { MeasureId } from '../../../body';
import type { TapeRow } from '../lay';
import type { SideHeld, uprightSide } from './side';

type Side = ReturnType<typeof uprightSide>;
type Row = TapeRow<keyof Side['places'], keyof Side['shots'], SideHeld>;

const HOOD_EDGE = [['hoodTop', 'hoodBrow', 'hoodEdge', 'hoodCheek', 'hoodChin']] as const;

/** Every measure of an upright toy that is taken from the side. */
export const uprightSideTapes: { readonly [M in MeasureId]?: Row } = {
  'crown-arc': {
    way: { lay: 'edge', of: 'head', from: 'nape', to: 'hoodTop', by: 'crownBack' },
    guides: HOOD_EDGE,
    shot: 'head',
  },
  'hood-depth': {
    way: { lay: 'over', through: ['headBack', 'earLevel', 'hoodEdge'] },
    guides: HOOD_EDGE,
    shot: 'head',
  },
  'ear-from-face-edge': {
    way: { lay: 'over', through: ['hoodAtEar', 'earFront'] },
    guides: HOOD_EDGE,
    shot: 'head',
    needs: 'ears',
  },
  'underarm-to-waist': { way: { lay: 'over', through: ['underarm', 'sideWaist'] }, shot: 'trunk', pose: 'lifted' },
  'body-rise': {
    way: { lay: 'ruler', from: 'tableBehind', to: 'waistBehind', side: -1 },
    guides: [
      ['waistBack', 'waistBehind'],
      ['tableBehind', 'tableBefore'],
    ],
    shot: 'seat',
    needs: 'seat',
  },
  'foot-girth': {
    way: { lay: 'over', through: ['instep', 'footSide', 'heel'], behind: ['heel', 'footFar', 'instep'] },
    shot: 'leg',
  },
  'side-length': {
    way: { lay: 'over', through: ['underarm', 'sideTummy', 'sideHem'] },
    guides: [['hemBack', 'hemMiddle', 'hemFront']],
    shot: 'trunk',
    pose: 'lifted',
  },
};
