/** Pixels as a canvas gives them: RGBA, row by row from the top. `ImageData` is one. */
export type Pixels = { readonly width: number; readonly height: number; readonly data: Uint8ClampedArray };
/** The light of a picture alone: 0 black to 255 white, beyond both after sharpening. */
export type Plane = { readonly width: number; readonly height: number; readonly light: Float32Array };
/** Part of a plane, in its pixels. */
export type Frame = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** Luma of ITU-R BT.601; what is see-through lies on white. */
export function planeOf({ width, height, data }: Pixels): Plane {
  const light = new Float32Array(width * height);
  for (let at = 0, from = 0; at < light.length; at++, from += 4) {
    const luma = 0.299 * (data[from] ?? 0) + 0.587 * (data[from + 1] ?? 0) + 0.114 * (data[from + 2] ?? 0);
    light[at] = 255 - ((255 - luma) * (data[from + 3] ?? 0)) / 255;
  }
  return { width, height, light };
}

export function pixelsOf({ width, height, light }: Plane): Pixels {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let at = 0, to = 0; at < light.length; at++) {
    const value = light[at] ?? 0;
    data[to++] = value;
    data[to++] = value;
    data[to++] = value;
    data[to++] = 255;
  }
  return { width, height, data };
}

/** The part of a plane inside a frame, as far as they overlap. */
export function cropped({ width, height, light }: Plane, frame: Frame): Plane {
  const [left, top] = [Math.max(0, Math.floor(frame.x)), Math.max(0, Math.floor(frame.y))];
  const [right, bottom] = [
    Math.min(width, Math.ceil(frame.x + frame.width)),
    Math.min(height, Math.ceil(frame.y + frame.height)),
  ];
  const across = Math.max(1, right - left);
  const down = Math.max(1, bottom - top);
  const part = new Float32Array(across * down);
  for (let row = 0; row < down; row++) {
    const from = (top + row) * width + left;
    part.set(light.subarray(from, from + across), row * across);
  }
  return { width: across, height: down, light: part };
}

/** Larger or smaller by a factor: between pixels when growing, the mean of what falls together when shrinking. */
export function scaled(plane: Plane, factor: number): Plane {
  if (factor === 1) return plane;
  const width = Math.max(1, Math.round(plane.width * factor));
  const height = Math.max(1, Math.round(plane.height * factor));
  const looks = Math.max(1, Math.round(1 / factor));
  const light = new Float32Array(width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let j = 0; j < looks; j++)
        for (let i = 0; i < looks; i++)
          sum += between(plane, (x + (i + 0.5) / looks) / factor - 0.5, (y + (j + 0.5) / looks) / factor - 0.5);
      light[y * width + x] = sum / looks ** 2;
    }
  return { width, height, light };
}

/** Bilinear; beyond the rim, the rim. */
function between({ width, height, light }: Plane, x: number, y: number): number {
  const nearX = Math.min(width - 1, Math.max(0, x));
  const nearY = Math.min(height - 1, Math.max(0, y));
  const left = Math.floor(nearX);
  const row = Math.floor(nearY) * width;
  const right = Math.min(width - 1, left + 1);
  const below = Math.min((height - 1) * width, row + width);
  const across = nearX - left;
  const down = nearY - Math.floor(nearY);
  const upper = (light[row + left] ?? 0) * (1 - across) + (light[row + right] ?? 0) * across;
  const lower = (light[below + left] ?? 0) * (1 - across) + (light[below + right] ?? 0) * across;
  return upper * (1 - down) + lower * down;
}
