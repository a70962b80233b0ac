import type { Draft } from '../../../app/drafting/draft-types';

type Choices = Draft['order']['choices'];

const isOpened = ({ opening }: Choices) => opening === 'front' || opening === 'back';
/** Ears come through seams that are left open over them. */
const ears = (choices: Choices) => (choices.hood === 'three' && choices.ears === 'open' ? 2 : 0);
const faceBehind = ({ closes }: Choices) => (closes === 'back' ? 1 : 0);
/** Two sleeves or two armholes. */
const ARMS = 2;
/** Turned through a gap, which is closed last: nothing may be sewn shut all round. */
const GAP = 1;

/** Faced in one with neck and armholes, the free edge of the facing stands for them; its shoulders are closed by hand, last. */
const FACED = 2;

/** Lined without sleeves and opened nowhere, it is turned while its shoulders are open: the lining's are closed by hand, last, as the gap is. */
const shouldersByHand = (choices: Choices) => (isOpened(choices) ? 0 : 2);

/** A top that hangs from its shoulders: neck and hem, which an opening makes one; a lining's own armholes and hem where they are only laid down. */
function top(choices: Choices): number {
  const arms = ARMS;
  if (choices.neck === 'in-one') return (isOpened(choices) ? 1 : 2) + FACED;
  if (choices.neck !== 'lined') return arms + (isOpened(choices) ? 1 : 2);
  const sleeved = choices.sleeve !== undefined && choices.sleeve !== 'none';
  const hems = choices.hem === 'turned' ? 0 : isOpened(choices) ? 1 : 2;
  return ((sleeved ? 2 * arms : 0) + hems || GAP) + (sleeved ? 0 : shouldersByHand(choices));
}

/** A bodice with a skirt: the opening ends in the skirt, so that neck and hem stay two; a lining's waist is laid down. */
function dress(choices: Choices): number {
  const hangs = choices.bodice === 'shoulder' || choices.bodice === 'tank';
  if (!hangs) return 2;
  if (choices.neck === 'in-one') return 2 + FACED;
  if (choices.neck !== 'lined') return 2 + ARMS;
  return 2 + (choices.sleeve === 'none' ? shouldersByHand(choices) : 2 * ARMS);
}

/** Waist and hems, and a hole for a tail. */
const trousers = ({ legs, tail }: Choices) => 1 + (legs === 'tube' ? 1 : 2) + (tail === 'open' ? 1 : 0);

/** One edge all round; a pocket and straps are stitched on. */
const APRON = 1;

/** How many openings each garment has, once it is sewn: worked out from what it is, a row a garment. */
const expected: Readonly<Record<string, (choices: Choices) => number>> = {
  // Hem, face and two wrists; opened in front hem and face are one, opened behind the hem and the crown's opening are.
  'hooded-top': (choices) => ARMS + (choices.opening === 'front' ? 1 : 2) + ears(choices),
  // Opened in front: hem, face or neck, and the front are one, and two wrists.
  jacket: (choices) => ARMS + 1 + (choices.collar === 'hood' ? ears(choices) : 0),
  tee: top,
  'simple-top': top,
  tank: top,
  nightshirt: top,
  dress,
  // Waist and hem; a waist that opens is still one.
  skirt: () => 2,
  // Neck with its armholes, and hem.
  'tube-dress': () => 2,
  trousers,
  // Arms, neck with the opening that ends in the seat, hems, and a hole for a tail.
  romper: (choices) => trousers(choices) + ARMS,
  // The bib is stitched on.
  dungarees: trousers,
  // Waist and legs; a nappy, open at its sides, is one. A tube is waist and hem.
  pants: ({ pants, legs, tail }) => (legs === 'tube' ? 2 : pants === 'nappy' ? 1 : 3) + (tail === 'open' ? 1 : 0),
  // Neck, fronts and hem are one; under a hood so are they and the face.
  cape: (choices) => 1 + ears(choices),
  apron: () => APRON,
  bib: () => GAP,
  // The bow is a tube; its knot and its band are apart from it.
  'bow-tie': () => 2,
  coat: () => GAP,
  // Neck or face, opening and hem are one, but for a face in a hood that opens behind; two legs.
  'fitted-coat': (choices) => 1 + ARMS + (choices.coatNeck === 'hood' ? faceBehind(choices) + ears(choices) : 0),
  scarf: () => 1,
  // The edge round face and neck is one; slits for ears are cut once their facings are on.
  bonnet: () => 1,
  // Neck and hem, which an opening makes one; a wing on either side.
  tunic: ({ tunicNeck, wings }) => (tunicNeck === 'gored' ? 1 : 2) + (wings === 'none' ? 0 : 2),
  // The brim, and an ear on either side; turned up, slits that reach it are one with it.
  hat: ({ hatEars, brim }) => (hatEars === 'open' || (hatEars === 'down' && brim !== 'turned') ? 3 : 1),
  'sleeping-bag': () => 1,
  vest: () => 1,
  // Two tubes.
  'wrist-warmers': () => 4,
  // Two bags.
  socks: () => 2,
};

/** Open from neck to hem for a head that asks for it, the two are one. */
const toHem = ({ order, pieces }: Draft): number =>
  order.garment === 'dress' &&
  pieces.some(
    ({ name, edges }) =>
      name === 'skirt-back' &&
      !edges.some((edge) => edge.role === 'seam' && edge.name === 'centre') &&
      edges.some((edge) => edge.role === 'opening'),
  )
    ? 1
    : 0;

/** Null where no row says what the garment is. */
export function openingsOf(draft: Draft): number | null {
  const { garment, choices } = draft.order;
  const wanted = expected[garment]?.(choices);
  return wanted === undefined ? null : wanted - toHem(draft);
}
