import { solveLinear } from './linear';
import { cross, inner, plus, type Spot, scale, size, turned, type Vector } from './space';

/**
 * How a camera sees the plane of the card: the plane's two directions and its origin in the camera's space (mm; x right,
 * y down, z away), and the focal length (px). Square pixels, the axis through the picture's middle.
 */
export type View = { readonly right: Vector; readonly down: Vector; readonly origin: Vector; readonly focal: number };

/** Where a spot of the plane (mm) is seen (px from the picture's middle). */
export function seenAt({ right, down, origin, focal }: View, { x, y }: Spot): Spot {
  const [a, b, depth] = plus(plus(scale(right, x), scale(down, y)), origin);
  return { x: (focal * a) / depth, y: (focal * b) / depth };
}

/** Where on the plane (mm) that lies which is seen at a spot of the picture; null on and beyond the horizon. */
export function laidOn({ right, down, origin, focal }: View, { x, y }: Spot): Spot | null {
  const ray: Vector = [x, y, focal];
  const normal = cross(right, down);
  const reach = inner(normal, origin) / inner(normal, ray);
  if (!(reach > 0)) return null;
  const place = plus(scale(ray, reach), scale(origin, -1));
  return { x: inner(place, right), y: inner(place, down) };
}

/** A view turned about `axis` (radians), moved by `shift` (mm), its focal length times e^zoom. */
export function moved(view: View, axis: Vector, shift: Vector, zoom: number): View {
  return {
    right: turned(view.right, axis),
    down: turned(view.down, axis),
    origin: plus(view.origin, shift),
    focal: view.focal * Math.exp(zoom),
  };
}

/** The other way the plane may lean: its normal mirrored in the line of sight to it. Small cards look nearly alike both ways. */
export function mirrored(view: View): View {
  const normal = cross(view.right, view.down);
  const sight = scale(view.origin, 1 / size(view.origin));
  const axis = cross(normal, sight);
  const lean = Math.atan2(size(axis), inner(normal, sight));
  const turn = size(axis) > 0 ? scale(axis, (2 * lean) / size(axis)) : axis;
  return { ...view, right: turned(view.right, turn), down: turned(view.down, turn) };
}

/**
 * The view in which four spots of the plane (mm) are seen at four of the picture, for a guessed focal length (px): by
 * the homography between them (direct linear transformation, Hartley & Zisserman, Multiple View Geometry, 4.1), its
 * columns made square and equally long. Null where they do not fix one.
 */
export function viewOf(plane: readonly Spot[], picture: readonly Spot[], focal: number): View | null {
  const rows = plane.flatMap(({ x, y }, at) => {
    const { x: u = 0, y: v = 0 } = picture[at] ?? {};
    const [a, b] = [u / focal, v / focal];
    return [
      [x, y, 1, 0, 0, 0, -a * x, -a * y],
      [0, 0, 0, x, y, 1, -b * x, -b * y],
    ];
  });
  const solved = solveLinear(
    rows,
    picture.flatMap(({ x, y }) => [x / focal, y / focal]),
  );
  if (!solved) return null;
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = solved;
  const [first, second]: [Vector, Vector] = [
    [a, d, g],
    [b, e, h],
  ];
  const distance = 2 / (size(first) + size(second));
  const right = scale(first, 1 / size(first));
  const square = plus(second, scale(right, -inner(second, right)));
  return { right, down: scale(square, 1 / size(square)), origin: scale([c, f, 1], distance), focal };
}
