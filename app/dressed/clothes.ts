import type { Mm } from '../body';

/**
 * What a garment looks like from outside, as sewn: finished sizes in mm and what tells one make from another. Nothing of
 * how it is cut. Null or absent: it has none.
 */
export type Clothes = {
  readonly top: Top | null;
  readonly band: Band | null;
  readonly sleeve: Sleeve | null;
  readonly hood: Hood | null;
  readonly hat: Hat | null;
  readonly skirt: Skirt | null;
  readonly legs: Legs | null;
  readonly hung: Hung | null;
  readonly wrist: Wrist | null;
  readonly coat: Coat | null;
  readonly sock: Sock | null;
  readonly tunic: Tunic | null;
};

/** Round the trunk at a height below the high shoulder point. */
export type Level = { readonly down: Mm; readonly girth: Mm };

export type Opening = {
  readonly side: 'front' | 'back';
  readonly long: Mm | 'all';
  /** Closed edge to edge by a zip, not by what two edges lap over. */
  readonly zip: boolean;
};

/** A bodice with shoulders: a shirt, or the upper half of a dress. */
export type Top = {
  /** Finished neck as a share of the toy's. */
  readonly neck: number;
  readonly frontDrop: Mm;
  readonly backDrop: Mm;
  /** From neck to armhole as a share of the toy's shoulder; null where a sleeve runs up to the neck. */
  readonly shoulder: number | null;
  /** From the underarm down to the hem. */
  readonly levels: readonly Level[];
  readonly opening: Opening | null;
  readonly collar: 'flat' | 'band' | null;
  /** A skirt hangs from it: its lower edge is a seam, or raw. */
  readonly skirted: boolean;
  /** Drawn in at the neck by an elastic. */
  readonly drawnIn: boolean;
  readonly pocket: Pocket | null;
  /** How deep a band of rib ends it; 0 without. */
  readonly rib: Mm;
};

/** Corners of the pocket's right half in the front's own places, x from the centre; `patch`: a pocket of its own on either side, open above. */
export type Pocket = {
  readonly corners: readonly { readonly x: Mm; readonly y: Mm }[];
  readonly half: Mm;
  readonly patch: boolean;
};

/** A bodice that ends under the arms and hangs from straps. */
export type Band = {
  readonly high: Mm;
  /** How far the front's upper edge dips at the centre (a negative dip rises), and how wide it is up there. */
  readonly dip: Mm;
  readonly peak: Mm;
  readonly round: boolean;
  readonly straps: string;
  readonly strapWide: Mm;
  readonly girth: Mm;
};

export type Sleeve = {
  /** Its underarm as a share of the toy's. */
  readonly reach: number;
  /** Girths as shares of the arm's. */
  readonly upper: number;
  readonly cuff: number;
  readonly puffed: boolean;
  readonly raglan: boolean;
  /** What it ends in: a hem, a band of rib so much of its length, or an elastic. */
  readonly rib: number;
  readonly elastic: boolean;
};

export type Hood = {
  readonly face: number;
  readonly strip: boolean;
  readonly earsOut: boolean;
  readonly meets: boolean;
  /** A band of rib ends it round the face. */
  readonly rib: boolean;
};

/** `brim`: how far it stands out, of the head's girth; 0 without. */
export type Hat = {
  readonly cuff: boolean;
  readonly brim: number;
  readonly earsOut: boolean;
  /** Held by a strap under the chin. */
  readonly strap: boolean;
};

export type Skirt = {
  readonly long: Mm;
  readonly top: Mm;
  readonly hem: Mm;
  readonly falls: 'gathers' | 'pleats' | 'flare';
  /** Heights of tiers from the waist, and their girths; one where there are none. */
  readonly tiers: readonly Level[];
  readonly band: Mm;
};

/** Trousers or shorts, from the waist or from a top. */
export type Legs = {
  readonly reach: number;
  readonly girth: number;
  readonly band: Mm;
  /** Stands on the waist in front, its straps crossed behind or not. */
  readonly bib: Bib | null;
};

export type Bib = { readonly half: Mm; readonly high: Mm; readonly strapWide: Mm; readonly crossed: boolean };

/** What hangs from the neck. */
export type Hung =
  | { readonly kind: 'bag'; readonly long: Mm; readonly girth: Mm }
  | { readonly kind: 'cape'; readonly long: Mm; readonly girth: Mm }
  | { readonly kind: 'bib'; readonly long: Mm; readonly half: Mm }
  | { readonly kind: 'bow'; readonly wide: Mm; readonly deep: Mm }
  | ApronHung
  | { readonly kind: 'scarf'; readonly long: Mm; readonly wide: Mm };

/** Round a round body, from neck to hem; `winged`: wings or arms come through its sides; `drawn`: straight, an elastic at its neck. */
export type Tunic = { readonly winged: boolean; readonly drawn: boolean };

/** An apron, half its widths; its top so far below the neck as its strap goes up to it. */
export type ApronHung = {
  readonly kind: 'apron';
  readonly below: Mm;
  readonly bib: Mm;
  readonly bibHigh: Mm;
  readonly half: Mm;
  readonly long: Mm;
};

/** A coat for four legs: flat on the back with tabs `tab` mm wide, or round the body, with sleeves so long down the front legs. */
export type Coat = {
  readonly flat: boolean;
  readonly tab: Mm;
  readonly sleeve: Mm;
  readonly collar: boolean;
  readonly opens: 'belly' | 'back' | null;
};

/** Halfway up the leg, or above the foot; ended by a band of rib. */
export type Sock = { readonly high: boolean; readonly rib: boolean };

export type Wrist = { readonly long: Mm; readonly girth: number };
