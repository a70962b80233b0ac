/** Choices that several garments have, and the words for what was chosen. */
import { length, one, yes } from './choice';

export const openingChoice = one(['auto', 'none', 'slit', 'front', 'back'], 'auto');
export const armholeChoice = one(['auto', 'set-in', 'raglan', 'in-one'], 'auto');
/** How a neckline is finished: concave, so never simply turned. */
export const neckChoice = one(['bound', 'faced', 'lined', 'band', 'flat'], 'bound');
/** The same where there may be no sleeves: what opens is then lined in thin woven cloth, else bound; on a narrow shoulder faced in one with the armholes. */
export const bareNeckChoice = one(['auto', ...neckChoice.of, 'in-one'], 'auto');
/** Under the chin a hood's front edges leave a gap, or meet. */
export const chinChoice = one(['open', 'meet'], 'open');
/** How a hood ends round the face. */
export const hoodEdgeChoice = one(['turned', 'rib'], 'turned');
export const earsChoice = one(['covered', 'open'], 'covered');
export const pocketChoice = yes(true);
export const pocketCutChoice = one(['wide', 'patch'], 'wide');
export const panelsChoice = one(['auto', 'two', 'four'], 'auto');
export const hemChoice = one(['turned', 'raw'], 'turned');
export const legHemChoice = one(['turned', 'casing', 'ready', 'raw'], 'turned');
/** A sock with a heel, or a tube for a foot that does not stand out in front of the leg. */
export const heelChoice = one(['shaped', 'tube'], 'shaped');
/** A band of rib is sewn to it, and stretched to its length. */
export const ribbedHemChoice = one(['turned', 'casing', 'rib', 'ready', 'raw'], 'turned');
/** `ready`: cut from an old garment, its edge laid on one that is finished there: a hem, a cuff, a rib. */
export const straightHemChoice = one(['turned', 'ready', 'raw'], 'turned');
/** How a sleeve ends: as the hem does, or by itself. */
export const plainWristChoice = one(['turned', 'elastic', 'rib', 'ready'], 'turned');
export const wristChoice = one(['auto', ...plainWristChoice.of], 'auto');

/** By how much the sleeve, or the leg, of the shorter limb ends sooner than the other. */
export const shorterChoice = length(0, 60, 0);

/** Two legs; or one tube where the toy's are sewn together, or are to be kept warm together. */
export const legsChoice = one(['auto', 'two', 'tube'], 'auto');
/** A diamond between the legs, where the crotch seam would be too short without. */
export const gussetChoice = one(['auto', 'diamond', 'none'], 'auto');
/** Whether the back seam is left open for a tail: where that is, or from the waist down, closed above it. */
export const tailChoice = one(['auto', 'open', 'waist', 'covered'], 'auto');
/** A hat covers the ears, or they come through its seams. */
export const bonnetEarsChoice = one(['auto', 'open', 'covered'], 'auto');
/** Where slits that end above the edge would be too short for them, its seams stay open down to it. */
export const hatEarsChoice = one(['auto', 'open', 'down', 'covered'], 'auto');
/** What comes out at the sides of a round toy: nothing, flat wings, or arms as thick as they are wide. */
export const wingsChoice = one(['none', 'flat', 'round'], 'none');
/** A tunic shaped to its neck by gores, or straight and drawn in there by an elastic. */
export const tunicNeckChoice = one(['gored', 'drawn'], 'gored');
/** Whose hands dress the toy: they say what closes a garment, how far it opens and how easily it goes on. */
export const dresserChoice = one(['older-child', 'small-child', 'display'], 'older-child');
/** What closes an opening. */
export const closedByChoice = one(['auto', 'hook-and-loop', 'snaps', 'ties'], 'auto');
/** The same down a whole front, where a zip may, or the button band of an old garment. */
export const frontClosedByChoice = one([...closedByChoice.of, 'zip', 'band'], 'auto');
/** Buttons for looks, sewn on over what closes it. */
export const buttonsChoice = yes(false);

/** How the casing of an elastic waist is made: turned, or of a strip where its edge is too curved for that. */
export const waistChoice = one(['auto', 'turned', 'faced'], 'auto');

type Value<C extends { readonly of: readonly string[] }> = C['of'][number];
export type Opens = { readonly opening: Value<typeof openingChoice> };
export type Necks = { readonly neck: Value<typeof bareNeckChoice> };
export type Ears = { readonly ears: Value<typeof earsChoice> };
export type Pockets = { readonly pocket: boolean };
export type PocketCut = { readonly pocketCut: Value<typeof pocketCutChoice> };
export type Panels = { readonly panels: Value<typeof panelsChoice> };
export type Hems = { readonly hem: Value<typeof ribbedHemChoice> };
export type Wrists = { readonly wrist: Value<typeof wristChoice> };
export type Sleeves = {
  readonly sleeve: 'long' | 'short' | 'puffed' | 'none';
  readonly armhole: Value<typeof armholeChoice>;
};
export type Hoods = {
  readonly hood: 'auto' | 'none' | 'two' | 'three';
  readonly chin: Value<typeof chinChoice>;
};
export type HoodEdges = { readonly hoodEdge: Value<typeof hoodEdgeChoice> };
export type LegCount = { readonly legs: Value<typeof legsChoice> };
export type Gussets = { readonly gusset: Value<typeof gussetChoice> };
export type Tails = { readonly tail: Value<typeof tailChoice> };
export type Wings = { readonly wings: Value<typeof wingsChoice> };
export type TunicNecks = { readonly tunicNeck: Value<typeof tunicNeckChoice> };
export type Brims = { readonly brim: 'cuff' | 'turned' | 'brim' };
export type HatEars = { readonly hatEars: Value<typeof hatEarsChoice> };
/** `bodice`: sewn to one, as in a romper. */
export type Waists = { readonly waist: Value<typeof waistChoice> | 'bodice' };
export type Trousers = { readonly trousers: 'long' | 'short' | 'elastic' | 'pyjamas' };
export type Pants = { readonly pants: 'pants' | 'nappy' };
/** How far up the leg a sock reaches. */
export type Socks = { readonly sock: 'low' | 'high' };
/** A sock cut in two sides with a heel, or as a tube folded in front. */
export type Heels = { readonly heel: Value<typeof heelChoice> };
export type Skirts = {
  readonly skirt: 'gathered' | 'knife' | 'box' | 'elastic' | 'a-line' | 'half-circle' | 'circle' | 'tiers';
};
export type Bodices = { readonly bodice: 'shoulder' | 'tank' | 'band' | 'dipped' | 'half-circle' | 'halter' };
export type Straps = { readonly straps: 'straight' | 'crossed' | 'neck' | 'none' };
export type Dressed = {
  readonly dresser: Value<typeof dresserChoice>;
  readonly closedBy: Value<typeof frontClosedByChoice>;
  readonly buttons: boolean;
};
export type Linings = { readonly lining: boolean };

/** The button band of an old garment: its edges are finished, its buttons are there. */
export const isOldBand = ({ closedBy }: Pick<Dressed, 'closedBy'>): boolean => closedBy === 'band';
/** What ends in a hem can end sooner on one side. */
export const mayEndSooner = {
  sleeve: ({ sleeve, armhole, wrist, hem }: Omit<Sleeves & Hems & Wrists, 'hem'> & { readonly hem: string }) =>
    (sleeve === 'long' || sleeve === 'short') &&
    armhole !== 'in-one' &&
    (wrist === 'turned' || (wrist === 'auto' && (hem === 'turned' || hem === 'raw'))),
  leg: ({ legs, hem }: LegCount & { readonly hem: string }) => legs !== 'tube' && (hem === 'turned' || hem === 'raw'),
};

/** Edges that open lap, but for those that a zip joins edge to edge. */
export const laps = ({ closedBy }: Pick<Dressed, 'closedBy'>): boolean => closedBy !== 'zip';
/** A skirt that falls straight: its hem is as long as its top. */
export const isStraight = (skirt: Skirts['skirt']): boolean => ['gathered', 'knife', 'box', 'elastic'].includes(skirt);
/** A front that opens, or a back: what lies on either side of it is a mirrored pair. */
export const isOpen = (side: 'front' | 'back') => (choices: Opens) => choices.opening === side;
/** Half a circle stands on the waist in front; behind it the skirt hangs from an elastic. */
export const isRound = ({ bodice }: Bodices) => bodice === 'half-circle';
/** The bodices that hang from straps. */
export const isBand = ({ bodice }: Bodices) => bodice !== 'shoulder' && bodice !== 'tank';
/** Straps that are fastened behind the neck. */
export const isRoundNeck = (choices: Bodices & Straps) =>
  choices.straps === 'neck' || choices.bodice === 'halter' || isRound(choices);
