/**
 * Pictures that look photographed, made by arithmetic alone: a flat drawing seen by a pinhole camera, out of focus, in
 * uneven light, with little contrast, noise, and JPEG's losses. Grey only; coordinates in pixels, x right, y down.
 */
import jpeg from 'jpeg-js';
import type { QrSymbol } from '../../app/sharing/qr/write';

export type Pixels = { readonly width: number; readonly height: number; readonly data: Uint8ClampedArray };
/** A flat drawing: brightness 0 to 1 at a place, in units of its own width; white outside 0…1. */
export type Drawing = { readonly at: (x: number, y: number) => number; readonly tall: number };

export type Shot = {
  /** Size of the photo, and how much of its width the drawing takes when seen straight. */
  readonly width: number;
  readonly height: number;
  readonly share: number;
  /** Radians: leaning away from the camera, about the vertical; the same about the horizontal; turned in the plane. */
  readonly yaw?: number;
  readonly pitch?: number;
  readonly roll?: number;
  /** Standard deviation of the lens's blur, in pixels. */
  readonly blur?: number;
  /** White minus black, of full range; and how much of it the light falls off across the photo. */
  readonly contrast?: number;
  readonly shade?: number;
  /** Standard deviation of noise, of full range. */
  readonly noise?: number;
  /** JPEG quality, 1 to 100; none: not compressed. */
  readonly quality?: number;
  readonly random: () => number;
};

export function photograph(drawing: Drawing, shot: Shot): Pixels {
  const exposed = blurred(exposure(drawing, shot), shot);
  const { width, height } = shot;
  const data = new Uint8ClampedArray(width * height * 4);
  const { contrast = 1, shade = 0, noise = 0, random } = shot;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const light = 1 - shade * ((x / width + y / height) / 2);
      const grain = noise * (random() + random() + random() + random() - 2) * 1.73;
      const grey = 255 * (0.5 + (((exposed[y * width + x] ?? 1) - 0.5) * contrast + grain)) * light;
      data.fill(grey, (y * width + x) * 4, (y * width + x) * 4 + 3);
      data[(y * width + x) * 4 + 3] = 255;
    }
  return shot.quality === undefined ? { width, height, data } : throughJpeg({ width, height, data }, shot.quality);
}

export function throughJpeg({ width, height, data }: Pixels, quality: number): Pixels {
  const written = jpeg.encode({ width, height, data: Buffer.from(data.buffer) }, quality);
  const read = jpeg.decode(written.data, { useTArray: true, formatAsRGBA: true });
  return { width: read.width, height: read.height, data: new Uint8ClampedArray(read.data) };
}

/** A QR as it would lie on paper: with its quiet zone, the drawing's width being both. */
export function drawnQr({ size, dark }: QrSymbol, quiet = 4): Drawing {
  const modules = size + 2 * quiet;
  return {
    tall: 1,
    at: (x, y) => (dark[Math.floor(y * modules) - quiet]?.[Math.floor(x * modules) - quiet] ? 0 : 1),
  };
}

/** Each photo pixel looks back through the pinhole onto the leaning sheet; four looks a pixel. */
function exposure(drawing: Drawing, { width, height, share, yaw = 0, pitch = 0, roll = 0 }: Shot): Float32Array {
  const seen = new Float32Array(width * height);
  const scale = width * share;
  /** The camera stands as far off as two sheets are wide: perspective as strong as a phone held close. */
  const distance = 2 * scale;
  const [cosYaw, sinYaw, cosPitch, sinPitch] = [Math.cos(yaw), Math.sin(yaw), Math.cos(pitch), Math.sin(pitch)];
  const [cosRoll, sinRoll] = [Math.cos(roll), Math.sin(roll)];
  /** Axes of the sheet in space: u to its right, v down, after roll, then pitch, then yaw. */
  const axis = (a: number, b: number) => {
    const [x, y, z] = [a, b * cosPitch, b * sinPitch];
    return [x * cosYaw + z * sinYaw, y, -x * sinYaw + z * cosYaw] as const;
  };
  const [u, v] = [axis(cosRoll, sinRoll), axis(-sinRoll, cosRoll)];
  const look = (px: number, py: number) => {
    /* Solve (a·u + b·v + (0,0,distance)) ∥ (px, py, distance) for a and b. */
    const row1 = [u[0] * distance - px * u[2], v[0] * distance - px * v[2], px * distance] as const;
    const row2 = [u[1] * distance - py * u[2], v[1] * distance - py * v[2], py * distance] as const;
    const det = row1[0] * row2[1] - row1[1] * row2[0];
    const a = (row1[2] * row2[1] - row1[1] * row2[2]) / det;
    const b = (row1[0] * row2[2] - row1[2] * row2[0]) / det;
    const [x, y] = [a / scale + 0.5, b / scale + drawing.tall / 2];
    return x < 0 || x >= 1 || y < 0 || y >= drawing.tall ? 0.85 : drawing.at(x, y);
  };
  const offsets = [-0.25, 0.25];
  for (let py = 0; py < height; py++)
    for (let px = 0; px < width; px++) {
      let sum = 0;
      for (const dy of offsets)
        for (const dx of offsets) sum += look(px + dx - width / 2 + 0.5, py + dy - height / 2 + 0.5);
      seen[py * width + px] = sum / 4;
    }
  return seen;
}

/** A Gaussian, along rows and then columns. */
function blurred(seen: Float32Array, { width, height, blur = 0 }: Shot): Float32Array {
  if (blur === 0) return seen;
  const reach = Math.ceil(blur * 3);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, at) => Math.exp(-((at - reach) ** 2) / (2 * blur ** 2)));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const along = (from: Float32Array, step: (at: number, by: number) => number) =>
    from.map(
      (_, at) => weights.reduce((sum, weight, by) => sum + weight * (from[step(at, by - reach)] ?? 0), 0) / total,
    );
  const clamp = (value: number, most: number) => Math.max(0, Math.min(most, value));
  const rows = along(seen, (at, by) => Math.floor(at / width) * width + clamp((at % width) + by, width - 1));
  return along(rows, (at, by) => clamp(Math.floor(at / width) + by, height - 1) * width + (at % width));
}
