import { decodeQR, type FinderPoints } from 'qr/decode.js';
import { likelyPlaces } from './likely-places';
import { cropped, type Frame, type Pixels, type Plane, pixelsOf, planeOf, scaled } from './plane';
import { sharpened } from './sharpen';

/**
 * Finds a QR in a picture and reads it; null where there is none that can be read. Tries the picture as it is, then
 * places where a QR may be or was seen but not read, then parts of the picture, each enlarged and sharpened in a few
 * ways, which brings back most of what blur and compression took. Gives way to the page between tries.
 * @param accept what a text must be to count; other QRs in the same picture are passed over
 */
export async function readPicture(
  pixels: Pixels,
  accept: (text: string) => boolean = () => true,
): Promise<string | null> {
  const whole = planeOf(pixels);
  const seen: Frame[] = [];
  const started = performance.now();
  for (const { plane, ways } of places(whole, seen)) {
    for (const way of ways) {
      const text = tryWay(plane, way, plane === whole ? seen : []);
      if (text !== null && accept(text)) return text;
      if (performance.now() - started > PICTURE_MS) return null;
      await new Promise((resume) => setTimeout(resume));
    }
  }
  return null;
}

/** One quick try, for a camera: frame after frame in a different way, so that a still hand is enough. */
export function readFrame(pixels: Pixels, turn: number): string | null {
  const way = FRAME_WAYS[turn % FRAME_WAYS.length] ?? AS_IT_IS;
  return tryWay(planeOf(pixels), way, []);
}

/** How a picture is prepared before a try: enlarged, then sharpened with a radius in pixels of the enlarged one. */
type Way = { readonly scale: number; readonly radius: number; readonly amount: number };

const AS_IT_IS: Way = { scale: 1, radius: 0, amount: 0 };
const SHARPER: Way = { scale: 1, radius: 2, amount: 2 };
/** Which ways are worth trying was measured on photographs made by `tests/photos`: quickest first, then likeliest. */
const WAYS: readonly Way[] = [
  AS_IT_IS,
  SHARPER,
  { scale: 2, radius: 4, amount: 3 },
  { scale: 3, radius: 6, amount: 3 },
  { scale: 2, radius: 4, amount: 6 },
  { scale: 2, radius: 0, amount: 0 },
  { scale: 1, radius: 3, amount: 4 },
  { scale: 0.5, radius: 0, amount: 0 },
  { scale: 0.5, radius: 3, amount: 4 },
];
const FRAME_WAYS: readonly Way[] = [AS_IT_IS, SHARPER, AS_IT_IS, { scale: 2, radius: 4, amount: 3 }];
const TILE_WAYS = WAYS.slice(1, 3);

/** Time a maker waits for a picture without a QR, in milliseconds. */
const PICTURE_MS = 8000;

/** A try on more pixels than this would hold a phone up for more than about a second. */
const MOST_PIXELS = 3_000_000;

function* places(whole: Plane, seen: readonly Frame[]): Generator<{ plane: Plane; ways: readonly Way[] }> {
  yield { plane: whole, ways: [AS_IT_IS] };
  for (const frame of [...likelyPlaces(whole), ...seen.slice(0, 2)]) yield { plane: cropped(whole, frame), ways: WAYS };
  yield { plane: whole, ways: WAYS.slice(1) };
  for (const frame of tiles(whole)) yield { plane: cropped(whole, frame), ways: TILE_WAYS };
}

/** The middle and the four corners, each more than half as high and wide as the whole. */
function tiles(whole: Plane): Frame[] {
  const [width, height] = [whole.width * TILE_SHARE, whole.height * TILE_SHARE];
  const [right, down] = [whole.width - width, whole.height - height];
  const corners = [0, 1].flatMap((x) => [0, 1].map((y) => ({ x: x * right, y: y * down, width, height })));
  return [{ x: right / 2, y: down / 2, width, height }, ...corners];
}

const TILE_SHARE = 0.625;

/** Null where nothing is read; where a QR was seen all the same, its surroundings are added to `seen`. */
function tryWay(plane: Plane, { scale, radius, amount }: Way, seen: Frame[]): string | null {
  if (plane.width * plane.height * scale ** 2 > MOST_PIXELS && scale > 1) return null;
  const prepared = radius === 0 && scale === 1 ? plane : sharpened(scaled(plane, scale), radius, amount);
  const note = ({ boundingBox: box }: FinderPoints) => {
    const margin = Math.max(box.width, box.height) * 0.2;
    seen.push({
      x: (box.x - margin) / scale,
      y: (box.y - margin) / scale,
      width: (box.width + 2 * margin) / scale,
      height: (box.height + 2 * margin) / scale,
    });
  };
  try {
    return decodeQR(pixelsOf(prepared), { effort: Infinity, timeLimit: TRY_MS, pointsOnDetect: note });
  } catch {
    return null;
  }
}

/** Time for a try's own retries, in milliseconds. */
const TRY_MS = 400;
