/**
 * The card on its way from one phone to another: reading and writing it as JSON, as a compact code in a link, as a QR
 * and in a picture, and the inbox of files shared to the app. Everything that comes in is judged here. No storage of
 * toys, no screens, no words ever live here.
 */
export { decodeCode } from './code/decode';
export { type EncodedCard, encodeCard } from './code/encode';
export type { Fault, Refusal } from './fault';
export { CARD_BYTES as LARGEST_CARD_BYTES } from './limits';
export { type CardLink, cardLink, carriesCard } from './link';
export type { Pixels } from './qr/plane';
export type { QrSymbol } from './qr/write';
export { readArrival, type Unpack } from './read-arrival';
export { type CardResult, checkCard, readCard } from './read-card';
export { writeCard } from './write-card';

/** Loads the QR writer (ISO/IEC 18004, level M) when it is first wanted; its symbol is synchronous from then on. */
export const loadQrWriter = async () => (await import('./qr/write')).qrOf;
/** Loads the reader of QRs in pictures and camera frames when it is first wanted. */
export const loadQrReader = async () => {
  const { readFrame, readPicture } = await import('./qr/read');
  return { readFrame, readPicture };
};
