import type { Area } from './area';

/** First chunk of a WebP (RFC 9649): a lossy frame, a lossless one, or a canvas that frames must lie in. */
const LOSSY = 0x56503820;
const LOSSLESS = 0x5650384c;
const CANVAS = 0x56503858;

export function webpSize(view: DataView): Area | null {
  if (view.getUint32(0) !== 0x52494646 || view.getUint32(8) !== 0x57454250) return null;
  const chunk = view.getUint32(12);
  if (chunk === CANVAS) return { width: 1 + three(view, 24), height: 1 + three(view, 27) };
  if (chunk === LOSSLESS && view.getUint8(20) === 0x2f) {
    const bits = view.getUint32(21, true);
    return { width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) };
  }
  // RFC 6386, section 9.1: a start code, then 14 bits each; the two above them scale what is shown.
  if (chunk === LOSSY && three(view, 23) === 0x2a019d)
    return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  return null;
}

const three = (view: DataView, at: number) => view.getUint16(at, true) + view.getUint8(at + 2) * 65536;
