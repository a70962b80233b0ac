import type { Mm } from '../../body';
import { type Bounds, type Point, pathBounds } from '../geometry';
import type { Part, Scene } from './guide-types';
import { strokesOf } from './strokes';

/** How names and numbers are written in a picture; lengths in mm of the picture. */
export type Writing = {
  /** How wide a part's name is in letters of full size. */
  readonly widthOf: (part: Part) => Mm;
  /** Height of a letter, and down to which share of it a name may shrink to stay on its piece. */
  readonly letters: Mm;
  readonly smallest: number;
  /** Radius of a number's ring. */
  readonly ring: Mm;
  /** Nothing is written beyond. */
  readonly edge: Bounds;
};

/** A name's middle, the share of full size it is written in, and whether it stands beside its piece. */
export type NamePlace = { readonly at: Point; readonly share: number; readonly beside: boolean };

/** A line of letters is so much higher than a letter. */
const LINE_SHARE = 1.2;
/** From a piece to the middle of the name over or under it, in heights of a letter: close by, or clear of numbers at the edge. */
const AWAY_SHARES = [0.75, 1.25] as const;
/** What lies under a number or another name cannot be read; what runs over another piece can, badly. */
const OVER_PIECE = 0.5;
/** Beside the line down a piece's middle its name stands clear of it by this share of a letter. */
const CLEAR_SHARE = 0.4;

/** Where each part's name stands: on its piece if that has room between the numbers, else beside it; the parts' own order. */
export function placeNames(scene: Scene, writing: Writing): readonly NamePlace[] {
  const { parts, meets } = scene;
  const rings = meets.map(({ at }) => around(at, 2 * writing.ring, 2 * writing.ring));
  const boxes = parts.map(({ outline }) => pathBounds(outline));
  const taken: Bounds[] = [...rings, ...strokesOf(scene, writing.letters)];
  return parts.map((part, index) => {
    const others = boxes.filter((_, other) => other !== index);
    const best = placesOf(part, boxes[index], writing)
      .map((place) => ({ place, cost: costOf(place.box, place.beside ? others : [], taken, writing.edge) }))
      .reduce((one, other) => (other.cost < one.cost ? other : one));
    taken.push(best.place.box);
    return { at: best.place.at, share: best.place.share, beside: best.place.beside };
  });
}

type Place = NamePlace & { readonly box: Bounds };

/** Everywhere a part's name may stand, the best first. */
function placesOf(part: Part, own: Bounds | undefined, { widthOf, letters, smallest }: Writing): readonly Place[] {
  const [width, height] = [widthOf(part), letters * LINE_SHARE];
  const put = (at: Point, share: number, beside: boolean): Place => ({
    ...{ at, share, beside },
    box: around(at, width * share, height * share),
  });
  const within = (share: number) => [
    ...part.inside.filter(({ room }) => width * share <= room).map(({ at }) => put(at, share, false)),
    ...part.inside.flatMap(({ at, room }) => {
      const aside = (width * share) / 2 + CLEAR_SHARE * letters;
      return 2 * aside > room / 2 ? [] : [-aside, aside].map((by) => put({ x: at.x + by, y: at.y }, share, false));
    }),
  ];
  const box = own ?? around({ x: 0, y: 0 }, 0, 0);
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  // Under and over it: by its middle, else by one end of it.
  const across = box.right - box.left > width ? [x, box.left + width / 2, box.right - width / 2] : [x];
  const beside = [
    ...across.flatMap((at) =>
      AWAY_SHARES.flatMap((share) => [
        { x: at, y: box.bottom + share * letters },
        { x: at, y: box.top - share * letters },
      ]),
    ),
    { x: box.right + letters + width / 2, y },
    { x: box.left - letters - width / 2, y },
  ].map((at) => put(at, 1, true));
  const small = beside.map(({ at }) => put(at, smallest, true));
  return [...within(1), ...within(smallest), ...beside, ...small];
}

/** How much of a name could not be read there, mm². */
function costOf(box: Bounds, others: readonly Bounds[], taken: readonly Bounds[], edge: Bounds): number {
  const covered = (by: readonly Bounds[]) => by.reduce((sum, each) => sum + shared(box, each), 0);
  const outside = areaOf(box) - shared(box, edge);
  return covered(taken) + OVER_PIECE * covered(others) + 2 * outside;
}

const around = ({ x, y }: Point, width: Mm, height: Mm): Bounds => ({
  left: x - width / 2,
  right: x + width / 2,
  top: y - height / 2,
  bottom: y + height / 2,
});

const areaOf = ({ left, right, top, bottom }: Bounds) => Math.max(0, right - left) * Math.max(0, bottom - top);

/** The area two boxes share. */
const shared = (a: Bounds, b: Bounds) =>
  areaOf({
    left: Math.max(a.left, b.left),
    right: Math.min(a.right, b.right),
    top: Math.max(a.top, b.top),
    bottom: Math.min(a.bottom, b.bottom),
  });
