import { headed, long, plus, type Spot, spot } from './space';

export type Distance = (x: number, y: number, z: number) => number;

/** A part of a body, and a ball it lies in. */
export type Part = { readonly distance: Distance; readonly centre: Spot; readonly reach: number };

/** A closed body: signed distance to its surface, mm, negative inside (exact near it), and the way out. */
export type Solid = { readonly distance: Distance; readonly outward: (x: number, y: number, z: number) => Spot };

/** How far apart a slope is felt, mm. */
const FELT_MM = 0.05;

export function union(parts: readonly Part[]): Solid {
  let nearest = parts[0]?.distance ?? (() => 0);
  const distance: Distance = (x, y, z) => {
    let least = Number.POSITIVE_INFINITY;
    for (const part of parts) {
      const { centre, reach } = part;
      if (Math.sqrt((x - centre.x) ** 2 + (y - centre.y) ** 2 + (z - centre.z) ** 2) - reach > least) continue;
      const here = part.distance(x, y, z);
      if (here >= least) continue;
      least = here;
      nearest = part.distance;
    }
    return least;
  };
  const outward = (x: number, y: number, z: number) => {
    const here = distance(x, y, z);
    const of = nearest;
    return headed(spot(of(x + FELT_MM, y, z) - here, of(x, y + FELT_MM, z) - here, of(x, y, z + FELT_MM) - here));
  };
  return { distance, outward };
}

/** What is 0 on a surface, divided by how steep it is: the distance, as far as the first order goes. */
export function level(of: Distance): Distance {
  return (x, y, z) => {
    const here = of(x, y, z);
    const dx = of(x + FELT_MM, y, z) - here;
    const dy = of(x, y + FELT_MM, z) - here;
    const dz = of(x, y, z + FELT_MM) - here;
    return (here * FELT_MM) / Math.max(1e-9, Math.sqrt(dx * dx + dy * dy + dz * dz));
  };
}

export function ellipsoid(centre: Spot, half: Spot): Part {
  const distance = level((x, y, z) => {
    const across = (x - centre.x) / half.x;
    const down = (y - centre.y) / half.y;
    const deep = (z - centre.z) / half.z;
    return Math.sqrt(across * across + down * down + deep * deep) - 1;
  });
  return { distance, centre, reach: Math.max(half.x, half.y, half.z) };
}

/** Two balls and the cone that touches both round: an arm, a leg (the distance is exact). */
export function limb(from: Spot, to: Spot, thick: number, thin: number): Part {
  const length = long(plus(to, from, -1));
  const way = headed(plus(to, from, -1));
  const lean = Math.max(-0.99, Math.min(0.99, (thick - thin) / Math.max(length, 1e-6)));
  const upright = Math.sqrt(1 - lean * lean);
  const distance: Distance = (x, y, z) => {
    const dx = x - from.x;
    const dy = y - from.y;
    const dz = z - from.z;
    const along = dx * way.x + dy * way.y + dz * way.z;
    const beside = Math.sqrt(Math.max(0, dx * dx + dy * dy + dz * dz - along * along));
    const foot = along - (beside * lean) / upright;
    if (foot <= 0) return Math.sqrt(along * along + beside * beside) - thick;
    if (foot >= length) return Math.sqrt((along - length) ** 2 + beside * beside) - thin;
    return beside * upright + along * lean - thick;
  };
  return { distance, centre: plus(from, way, length / 2), reach: length / 2 + Math.max(thick, thin) };
}
