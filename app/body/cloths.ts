import type { Mm } from './units';

/**
 * A cloth preset. `stretch` is what 100 mm, relaxed, gives when pulled, as a share ((stretched − rest)/rest);
 * thickness in mm. All numbers common practice, no source; shown to the maker and hers to change.
 */
export type Cloth = {
  readonly id: string;
  readonly stretch: number;
  readonly thickness: Mm;
  readonly frays: boolean;
  readonly nap: boolean;
  /** How much of the armhole's length a sleeve cap may have over it and still be eased in flat. */
  readonly easesIn: number;
};

/** A cloth of the maker's own: otherwise like the preset beside it, with her numbers. */
export type OwnCloth = Pick<Cloth, 'stretch' | 'thickness'> & {
  readonly name: string;
};

/** How far a maker's numbers may go: no cloth stretches or is more than that. */
export const CLOTH_LIMITS = {
  stretch: { min: 0, max: 1 },
  thickness: { min: 0.05, max: 8 },
} as const satisfies Readonly<Record<string, { readonly min: number; readonly max: number }>>;

export const cloths: readonly Cloth[] = [
  {
    id: 'quilting-cotton',
    stretch: 0,
    thickness: 0.3,
    frays: true,
    nap: false,
    easesIn: 0.028,
  },
  {
    id: 'linen',
    stretch: 0,
    thickness: 0.3,
    frays: true,
    nap: false,
    easesIn: 0.028,
  },
  {
    id: 'lawn',
    stretch: 0,
    thickness: 0.2,
    frays: true,
    nap: false,
    easesIn: 0.028,
  },
  {
    id: 'satin',
    stretch: 0,
    thickness: 0.25,
    frays: true,
    nap: false,
    easesIn: 0.02,
  },
  {
    id: 'tulle',
    stretch: 0,
    thickness: 0.2,
    frays: false,
    nap: false,
    easesIn: 0.02,
  },
  {
    id: 'light-denim',
    stretch: 0,
    thickness: 0.6,
    frays: true,
    nap: false,
    easesIn: 0.02,
  },
  {
    id: 'needlecord',
    stretch: 0,
    thickness: 0.9,
    frays: true,
    nap: true,
    easesIn: 0.028,
  },
  {
    id: 'flannel',
    stretch: 0,
    thickness: 0.7,
    frays: true,
    nap: false,
    easesIn: 0.028,
  },
  {
    id: 'jersey',
    stretch: 0.25,
    thickness: 0.7,
    frays: false,
    nap: false,
    easesIn: 0.028,
  },
  {
    id: 'sweatshirt-fleece',
    stretch: 0.15,
    thickness: 1.5,
    frays: false,
    nap: false,
    easesIn: 0.009,
  },
  {
    id: 'polar-fleece',
    stretch: 0.15,
    thickness: 2.2,
    frays: false,
    nap: false,
    easesIn: 0.009,
  },
  {
    id: 'felt',
    stretch: 0,
    thickness: 1.2,
    frays: false,
    nap: false,
    easesIn: 0.009,
  },
  {
    id: 'minky',
    stretch: 0.1,
    thickness: 2.5,
    frays: true,
    nap: true,
    easesIn: 0.009,
  },
];

export const USUAL_CLOTH = 'quilting-cotton';

/** Cloth up to this thickness gathers into a seam (common practice, no source). */
export const GATHERS_UP_TO_MM = 1;

/** Cloth over this thickness wants single hems and thin facings (common practice, no source). */
export const THICK_FROM_MM = 2;

/** Cloth from this thickness on eases next to nothing in (common practice, no source). */
const FIRM_FROM_MM = 1.2;
const FIRM_EASES_IN = 0.009;

/** The cloth of an order, with her own numbers where she gave them; undefined where nobody knows it. */
export function clothOf({ cloth = USUAL_CLOTH, ownCloth }: ClothOrdered): Cloth | undefined {
  const like = cloths.find(({ id }) => id === cloth);
  if (!like || !ownCloth) return like;
  const { stretch, thickness } = ownCloth;
  const easesIn = thickness >= FIRM_FROM_MM ? Math.min(like.easesIn, FIRM_EASES_IN) : like.easesIn;
  return { ...like, stretch, thickness, easesIn };
}

type ClothOrdered = { readonly cloth?: string; readonly ownCloth?: OwnCloth };
