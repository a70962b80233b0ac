import { isFitToOpen, type PictureSize, pictureSize } from '../picture';
import { decodeCode } from './code/decode';
import { faultOf } from './fault';
import { CARD_BYTES } from './limits';
import { carriesCard } from './link';
import type { Pixels } from './qr/plane';
import { type CardResult, readCard } from './read-card';

/** Unpacks a picture into pixels, at most so large as its maker sees fit; null where it is no picture after all. */
export type Unpack = (picture: Blob) => Promise<Pixels | null>;

/**
 * A card out of whatever came in: a link or a card's text, a card file, or a picture with a card's QR in it. Never
 * throws, and judges as `readCard` and `decodeCode` do. Faults of its own: `not-a-picture`, `no-qr` (none that
 * carries a card can be read in the picture), `too-large` (a file over 32 MB, a picture over 50 million pixels).
 */
export async function readArrival(arrival: string | Blob, unpack: Unpack): Promise<CardResult> {
  try {
    if (typeof arrival === 'string') return readText(arrival);
    if (arrival.size > PICTURE_BYTES) return faultOf('too-large', '', { bytes: arrival.size, limit: PICTURE_BYTES });
    const size = pictureSize(new Uint8Array(await arrival.arrayBuffer()));
    // A shared picture often comes without a type, and what says it is one may be anything.
    if (size) return await readQrIn(arrival, size, unpack);
    if (arrival.type.startsWith('image/')) return faultOf('not-a-picture');
    if (arrival.size > CARD_BYTES) return faultOf('too-large', '', { bytes: arrival.size, limit: CARD_BYTES });
    return readText(await arrival.text());
  } catch {
    return faultOf('unreadable-file');
  }
}

const readText = (text: string): CardResult =>
  carriesCard(text) && !/^\s*\{/u.test(text) ? decodeCode(text) : readCard(text);

async function readQrIn(picture: Blob, size: PictureSize, unpack: Unpack): Promise<CardResult> {
  if (!isFitToOpen(size)) return faultOf('too-large', '', { pixels: size.width * size.height });
  const [unpacked, { readPicture }] = await Promise.all([unpack(picture), import('./qr/read')]);
  if (!unpacked) return faultOf('not-a-picture');
  const link = await readPicture(unpacked, carriesCard);
  return link === null ? faultOf('no-qr') : decodeCode(link);
}

const PICTURE_BYTES = 32 * 1024 * 1024;
