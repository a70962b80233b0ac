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
export { type CardResult, checkCard, readCard } from './read-card';
export { writeCard } from './write-card';
