import { bodicePictures } from './bodice-pictures';
import { coatPictures } from './coat-pictures';
import { hatPictures } from './hat-pictures';
import { neckPictures } from './neck-pictures';
import { skirtPictures } from './skirt-pictures';
import { sockPictures } from './sock-pictures';
import {
  cloth,
  deep,
  face,
  hood,
  line,
  longSleeves,
  measured,
  neckHole,
  type Picture,
  puffedSleeves,
  shortSleeves,
  skin,
  stitch,
  trunk,
} from './strokes';
import { trouserPictures } from './trouser-pictures';
import { tunicPictures } from './tunic-pictures';

const plain = [shortSleeves, trunk, neckHole];
const long = [longSleeves, trunk, neckHole];
const hooded = [longSleeves, trunk, hood, face];
const fromBehind = [shortSleeves, trunk];
const buttons = line('M33 34h6m-6 8h6m-6 8h6');
/** The end of a sleeve. */
const cuffed = cloth('M20 10h32l6 50H14z');
/** The right edge lies over the left. */
const lapped: Picture = [cloth('M28 12h36v48H28z'), cloth('M8 12h34v48H8z')];
/** An open hand over the edge of some cloth, larger or smaller. */
const hand = (size: number): string => {
  const at = (x: number, y: number) => `${36 + x * size} ${50 + y * size}`;
  const finger = (x: number, high: number) =>
    `L${at(x, -18)}L${at(x, high)}Q${at(x + 2.5, high - 4)} ${at(x + 5, high)}L${at(x + 5, -18)}`;
  return `M${at(-11, 0)}L${at(-12, -14)}L${at(-20, -22)}Q${at(-21, -28)} ${at(-16, -27)}L${at(-11, -20)}${finger(-10.5, -36)}${finger(-5, -40)}${finger(0.5, -39)}${finger(6, -34)}L${at(11, -10)}L${at(9, 0)}z`;
};
const side = cloth('M14 60C10 14 58 2 58 34v26z');
/** A circle round the middle of the frame: the toy's tummy seen from above, and the cloth round it. */
const round = (size: number): string => `M36 ${38 - size}a${size} ${size} 0 1 1-.1 0z`;

/** Each value of each choice, `choice.value`, and each fit. */
export const choicePictures: Readonly<Record<string, Picture>> = {
  ...bodicePictures,
  ...neckPictures,
  ...skirtPictures,
  ...trouserPictures,
  ...hatPictures,
  ...coatPictures,
  ...sockPictures,
  ...tunicPictures,
  'opening.auto': [...plain, measured],
  'opening.none': plain,
  'opening.slit': [...plain, stitch('M36 28v14')],
  'opening.front': [...plain, stitch('M36 28v32'), buttons],
  'opening.back': [...fromBehind, stitch('M36 26v34'), buttons],
  'sleeve.long': long,
  'sleeve.short': plain,
  'sleeve.puffed': [puffedSleeves, trunk, neckHole],
  'sleeve.none': [trunk, neckHole, stitch('M24.5 40c-2-7-1-12 1.5-16M47.5 40c2-7 1-12-1.5-16')],
  'armhole.auto': [...long, measured],
  'armhole.set-in': [...long, stitch('M25 39c4-4 4-11 1-15M47 39c-4-4-4-11-1-15')],
  'armhole.raglan': [...long, stitch('M25 39c3-4 5-8 6-12M47 39c-3-4-5-8-6-12')],
  'armhole.in-one': [
    cloth('M26 24c4 4 16 4 20 0l18 7-4 12-13-3q-2 1-2 5l1 15H26l1-15q0-4-2-5l-13 3-4-12z'),
    neckHole,
    stitch('M26 24 8 31M46 24l18 7'),
  ],
  'hood.auto': [side, measured],
  'hood.none': long,
  'hood.two': [side, stitch('M18 58C15 20 54 8 54 34')],
  'hood.three': [side, deep('M14 60C10 14 58 2 58 34l-7 2C50 14 20 20 23 60z'), stitch('M23 60C20 20 50 14 51 36')],
  'chin.open': [trunk, cloth('M14 40C2 0 70 0 58 40L46 50Q36 14 26 50z'), line('M26 50q10 6 20 0')],
  'hoodEdge.turned': [side, stitch('M20 60V36')],
  'hoodEdge.rib': [
    side,
    deep('M14 60C13 44 20 30 28 22l5 7C27 36 23 46 23 60z'),
    line('M14 54h9M14 46l9 2M17 38l8 4M21 31l7 5'),
  ],
  'chin.meet': [trunk, cloth('M14 40C2 0 70 0 58 40L36 54z'), deep('M36 54C14 20 58 20 36 54z')],
  'ears.covered': [cloth('M26 44C12 10 60 10 46 44c-4 4-16 4-20 0z'), deep('M29 43c-6-17 20-17 14 0-3 2-11 2-14 0z')],
  'ears.open': [
    skin('M24 24C12 4 22 0 30 18zM48 24C60 4 50 0 42 18z'),
    cloth('M26 44C12 10 60 10 46 44c-4 4-16 4-20 0z'),
    deep('M29 43c-6-17 20-17 14 0-3 2-11 2-14 0z'),
  ],
  'pocket.true': [...hooded, cloth('M28 42h16l3 12H25z')],
  'pocket.false': hooded,
  'pocketCut.wide': [...hooded, cloth('M28 42h16l3 12H25z')],
  'pocketCut.patch': [...hooded, cloth('M25 44h8v10h-8zM39 44h8v10h-8z'), stitch('M25 46h8m6 0h8')],
  'collar.hood': hooded,
  'collar.band': [...long, cloth('M28 18q8 5 16 0l2 6q-10 6-20 0z')],
  'collar.flat': [...long, cloth('M26 23q4 6 10 6l-1 7Q24 33 23 25zM46 23q-4 6-10 6l1 7q11-3 12-11z')],
  'wrist.auto': [cuffed, stitch('M14 52h44'), measured],
  'wrist.turned': [cuffed, stitch('M14 52h44')],
  'wrist.elastic': [
    cloth('M20 10h32l8 34-4 6 4 10H12l4-10-4-6z'),
    line('M18 50h36M20 44l-2 12m8-12-2 12m8-12-2 12m8-12-2 12m8-12-2 12m8-12-2 12'),
  ],
  'wrist.rib': [
    cloth('M20 10h32l8 36H12z'),
    deep('M15 46h42v14H15z'),
    line('M20 46v14m5-14v14m5-14v14m5-14v14m5-14v14m5-14v14m5-14v14'),
  ],
  'closedBy.zip': [
    cloth('M8 12h25v48H8zM39 12h25v48H39z'),
    line('M36 12v48'),
    stitch('M33 14v44M39 14v44'),
    deep('M34 44h4v10h-4z'),
  ],
  'closedBy.band': [
    ...lapped,
    stitch('M39 14v44M31 14v44'),
    deep('M35 20a2 2 0 1 0 .1 0zM35 34a2 2 0 1 0 .1 0zM35 48a2 2 0 1 0 .1 0z'),
  ],
  'wrist.ready': [cloth('M20 10h32l4 40H16z'), deep('M16 50h40v10H16z'), line('M10 50h52'), stitch('M17 57h38')],
  'hem.ready': [cloth('M14 12h44v34H14z'), deep('M6 46h60v14H6z'), stitch('M8 56h56'), line('M14 46h44')],
  'hem.rib': [
    cloth('M10 12h52v34H10z'),
    deep('M13 46h46v14H13z'),
    line('M18 46v14m5-14v14m5-14v14m5-14v14m5-14v14m5-14v14m5-14v14m5-14v14'),
  ],
  'lining.true': [cloth('M16 26h40v32H16z'), deep('M16 26h40v9q-20 9-40 0z'), line('M22 27v9m9-9v11m10-11v11m9-11v9')],
  'lining.false': [cloth('M16 26h40v32H16z'), stitch('M16 31h40')],
  // Two edges that lap, seen close, and what lies between them.
  'closedBy.auto': [...lapped, line('M40 12v48'), measured],
  'closedBy.hook-and-loop': [...lapped, deep('M31 14h9v44h-9z'), line('M32 20h7m-7 6h7m-7 6h7m-7 6h7m-7 6h7m-7 6h7')],
  'closedBy.snaps': [...lapped, deep([20, 34, 48].map((y) => `M31 ${y}a4 4 0 1 1 8 0a4 4 0 1 1-8 0z`).join(''))],
  'closedBy.ties': [
    cloth('M8 12h24v48H8zM40 12h24v48H40z'),
    line([24, 46].map((y) => `M30 ${y}q-8-8-9-1 1 5 9 1h12q8-8 9-1-1 5-9 1M34 ${y + 1}l-5 9M38 ${y + 1}l5 9`).join('')),
  ],
  'buttons.true': [
    ...lapped,
    skin([20, 34, 48].map((y) => `M30 ${y}a5 5 0 1 1 10 0a5 5 0 1 1-10 0z`).join('')),
    line([20, 34, 48].map((y) => `M34 ${y - 1}v2m2-2v2`).join('')),
  ],
  'buttons.false': [...lapped, line('M40 12v48')],
  'dresser.older-child': [skin(hand(1)), cloth('M8 44h56v18H8z'), stitch('M10 50h52')],
  'dresser.small-child': [skin(hand(0.68)), cloth('M8 44h56v18H8z'), stitch('M10 50h52')],
  'dresser.display': [cloth('M14 54h44v8H14z'), skin('M28 54V40q-6-4-4-12 12-14 24 0 2 8-4 12v14z'), line('M8 62h56')],
  'hem.turned': [cloth('M10 14h52v44H10z'), deep('M10 46h52v12H10z'), stitch('M12 48h48')],
  'hem.casing': [
    cloth('M10 14h52l-6 28 4 6-4 10H16l-4-10 4-6z'),
    stitch('M17 43h38M17 56h38'),
    line('M22 44l-2 6 2 5m8-11-2 6 2 5m8-11-2 6 2 5m8-11-2 6 2 5'),
  ],
  'hem.raw': [cloth('M10 14h52v44H10z'), line('M12 58v4m6-4v3m6-3v4m6-4v3m6-3v4m6-4v3m6-3v4m6-4v3m6-3v4')],
  'fit.close': [skin(round(20)), line(round(23))],
  'fit.easy': [skin(round(18)), line(round(24))],
  'fit.roomy': [skin(round(15)), line(round(26))],
};
