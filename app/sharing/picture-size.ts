/**
 * How many pixels a picture says it has, from the first bytes of its file: PNG (ISO/IEC 15948), JPEG (ITU-T T.81)
 * or GIF; null for anything else. A small file may unpack to a picture that no phone can hold.
 */
export function pixelCount(bytes: Uint8Array): number | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (starts(bytes, [0x89, 0x50, 0x4e, 0x47]) && bytes.length >= 24) return view.getUint32(16) * view.getUint32(20);
  if (starts(bytes, [0x47, 0x49, 0x46, 0x38]) && bytes.length >= 10) {
    return view.getUint16(6, true) * view.getUint16(8, true);
  }
  return starts(bytes, [0xff, 0xd8]) ? jpegPixels(view) : null;
}

/** Walks the segments to the frame header (any SOF: C0 to CF but C4, C8 and CC). */
function jpegPixels(view: DataView): number | null {
  let at = 2;
  while (at + 9 < view.byteLength && view.getUint8(at) === 0xff) {
    const marker = view.getUint8(at + 1);
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return view.getUint16(at + 5) * view.getUint16(at + 7);
    at += 2 + view.getUint16(at + 2);
  }
  return null;
}

const starts = (bytes: Uint8Array, signature: readonly number[]) => signature.every((byte, at) => bytes[at] === byte);
