/**
 * What lies flat in a photograph in which a bank-size card lies in the same plane: the card's four corners are tapped, then
 * the two ends of a straight length, or the corners of an outline, and what they amount to comes with its uncertainty.
 * Nothing that goes round or over a toy can be seen this way. Pure: pictures are looked at elsewhere.
 */
export { distanceOn } from './length';
export { outlineOn, type SeenOutline } from './outline';
export { type PhotoFault, seePlane, USUAL_TAP_PX } from './plane';
export { isSimple } from './simple';
