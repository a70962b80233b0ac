import { BANK_CARD_MM } from '../../app/body';
import { normal, type Random } from './seeded';

type Spot = { readonly x: number; readonly y: number };

/** A synthetic photograph of a plane: where its four card corners and two points are tapped, and how far apart those are. */
export type Photograph = {
  readonly corners: readonly [Spot, Spot, Spot, Spot];
  readonly first: Spot;
  readonly second: Spot;
  readonly truth: number;
};

export type Shot = {
  /** Largest tilt of the plane against the camera, radians. */
  readonly tilt: number;
  /** How wide a part of the plane the toy and the card take, mm. */
  readonly reach: number;
  /** How far taps miss, px, one standard deviation. */
  readonly tap: number;
  /** Focal length as a share of the picture's diagonal. */
  readonly focal: number;
};

export const PICTURE = { width: 4000, height: 3000 } as const;

/** The same of an outline in the plane and of a line along x through its middle: where each corner is tapped. */
export type OutlinePhotograph = {
  readonly corners: readonly Spot[];
  readonly outline: readonly Spot[];
  readonly thread: readonly [Spot, Spot];
};

/** Card and two points anywhere in a plane. */
export function photograph(random: Random, shot: Shot): Photograph {
  const { seen, anywhere, card } = camera(random, shot);
  const [a, b] = [anywhere(), anywhere()];
  const [w, x, y, z] = card();
  return {
    corners: [w, x, y, z],
    first: seen(a),
    second: seen(b),
    truth: Math.hypot(a.x - b.x, a.y - b.y),
  };
}

/** An outline about the middle of a plane, the card anywhere on it or beside it. */
export function photographOf(random: Random, outline: readonly Spot[], shot: Shot): OutlinePhotograph {
  const { seen, card } = camera(random, shot);
  const far = shot.reach / 4;
  return { corners: card(), outline: outline.map(seen), thread: [seen({ x: -far, y: 0 }), seen({ x: far, y: 0 })] };
}

/** A plane held at any slant up to `tilt`, the card anywhere in it and turned anyhow, filling most of the picture. */
function camera(random: Random, { tilt, reach, tap, focal }: Shot) {
  const between = (low: number, high: number) => low + (high - low) * random();
  const f = focal * Math.hypot(PICTURE.width, PICTURE.height);
  const [lean, way] = [between(0, tilt), between(0, 2 * Math.PI)];
  const depth = (reach * f * between(1.05, 1.5)) / PICTURE.height;
  /** Turned about a line in the plane, then seen through a pinhole. */
  const seen = ({ x, y }: Spot): Spot => {
    const along = x * Math.cos(way) + y * Math.sin(way);
    const across = y * Math.cos(way) - x * Math.sin(way);
    const [a, b] = [along, across * Math.cos(lean)];
    const z = depth + across * Math.sin(lean);
    const [u, v] = [a * Math.cos(way) - b * Math.sin(way), a * Math.sin(way) + b * Math.cos(way)];
    return {
      x: PICTURE.width / 2 + (f * u) / z + tap * normal(random),
      y: PICTURE.height / 2 + (f * v) / z + tap * normal(random),
    };
  };
  const anywhere = (): Spot => ({ x: between(-0.5, 0.5) * reach, y: between(-0.5, 0.5) * reach });
  const [place, turn] = [anywhere(), between(0, 2 * Math.PI)];
  const onCard = (x: number, y: number) => {
    const [a, b] = [(x - 0.5) * BANK_CARD_MM.width, (y - 0.5) * BANK_CARD_MM.height];
    return seen({
      x: 0.7 * place.x + a * Math.cos(turn) - b * Math.sin(turn),
      y: 0.7 * place.y + a * Math.sin(turn) + b * Math.cos(turn),
    });
  };
  const card = () => [onCard(0, 0), onCard(1, 0), onCard(1, 1), onCard(0, 1)] as const;
  return { seen, anywhere, card };
}
