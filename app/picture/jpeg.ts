import type { Area } from './area';

/** Markers without a length (ITU-T T.81, table B.1): TEM, RST0 to RST7, SOI. */
const isBare = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8);
/** Start of frame: C0 to CF, but not DHT (C4), JPG (C8) and DAC (CC). */
const isFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** Start of scan, end of image: no frame came before, so there is nothing to unpack. */
const isTooLate = (marker: number) => marker === 0xda || marker === 0xd9;

/** JPEG (ITU-T T.81): the segments are walked to the frame header, however much a camera wrote before it. */
export function jpegSize(view: DataView): Area | null {
  if (view.getUint16(0) !== 0xffd8) return null;
  for (let at = 2; ; ) {
    if (view.getUint8(at) !== 0xff) return null;
    while (view.getUint8(at + 1) === 0xff) at++;
    const marker = view.getUint8(at + 1);
    if (isFrame(marker)) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    if (isTooLate(marker)) return null;
    at += isBare(marker) ? 2 : 2 + Math.max(2, view.getUint16(at + 2));
  }
}
