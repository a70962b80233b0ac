import type { MeasureId } from '../../../body';
import type { TapeRow } from '../lay';
import type { earPlaces } from './ears';
import type { headPlaces } from './places';
import type { sideHeadPlaces } from './side';

type FrontPlace = keyof ReturnType<typeof headPlaces> | keyof ReturnType<typeof earPlaces>;
type SidePlace = keyof ReturnType<typeof sideHeadPlaces>;

const HOOD_EDGE = [['hoodTop', 'hoodBrow', 'hoodEdge', 'hoodCheek', 'hoodChin']] as const;

/** Every measure of a head that is taken from the front. */
export const headFrontTapes = {
  'head-girth': { way: { lay: 'round', of: 'head', at: 'headWide', toward: 'chin' }, shot: 'head' },
  'face-edge': { way: { lay: 'edge', of: 'head', from: 'jawLeft', to: 'jaw', by: 'crown' }, shot: 'head' },
  'over-head': {
    way: { lay: 'edge', of: 'head', from: 'brimLeft', to: 'brim', by: 'crown' },
    guides: [['brimLeft', 'brimMiddle', 'brim']],
    shot: 'head',
  },
  'ear-base': { way: { lay: 'ruler', from: 'earNear', to: 'earFar', side: -1 }, shot: 'ear', needs: 'ears' },
  'ear-girth': {
    way: { lay: 'round', of: 'ear', at: 'earThick', toward: 'earThickToward' },
    shot: 'ear',
    needs: 'ears',
  },
  'ear-inset': {
    way: { lay: 'edge', of: 'head', from: 'crown', to: 'earNear', by: 'earNear' },
    shot: 'crown',
    needs: 'ears',
  },
} as const satisfies { readonly [M in MeasureId]?: TapeRow<FrontPlace, 'head' | 'crown' | 'ear'> };

/** Every measure of a head that is taken from the side. */
export const headSideTapes = {
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
} as const satisfies { readonly [M in MeasureId]?: TapeRow<SidePlace, 'head'> };
