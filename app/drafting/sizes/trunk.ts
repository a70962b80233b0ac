import type { Mm } from '../../body';
import { widestDart } from './dart-room';
import { leaned, type Quarter } from './lean';
import type { Sizes } from './maker';
import { LEAST_INSET_MM, LEAST_SHOULDER_DRAWN_MM } from './shoulder';
import type { Wearer } from './wearer';

/** A hem is hardly narrower than the tummy it has to pass. */
const LEAST_HEM_SHARE = 0.97;
const TWO_SIDE_SEAMS = 2;
/** However round the tummy, a chest is shared no more unevenly: the arms come out at its sides (common practice, no source). */
const LEAST_CHEST_SHARE = 0.42;
/** Round arms that reach forward the back has this share of the half chest more, and the front as much less (common practice, no source). */
const FORWARD_SHARE = 0.15;

/** A bodice's widths: front and back, half of each. */
export type Trunk = { readonly front: Quarter; readonly back: Quarter };
/** The girths asked for, what the front has of each, and where down the side the tummy is fullest (a share). */
export type TrunkSize = 'chest' | 'tummy' | 'hem' | 'chestShare' | 'tummyShare' | 'hemShare';
/** And the side that has to reach them. */
export type SideSize = 'fullest' | 'sideLevel' | 'armholeDepth' | 'dartMost' | 'underarmDeeper';
type Neck = Sizes<'slope' | 'neckHalfWidth'>;

/** Girths shared by front and back as the toy's own are; the chest is wide enough that neck, shoulder and armhole lie side by side. */
export function trunkOf(wearer: Wearer, neck: Neck): Trunk {
  const share = frontShare(wearer);
  const half = halfChest(wearer, neck);
  const least = leastChest(neck);
  const shared = Math.min(Math.max(share, LEAST_CHEST_SHARE), 1 - LEAST_CHEST_SHARE);
  const behind = Math.max(half * (1 - shared), least);
  const before = Math.max(half - behind, least);
  const forward = wearer.traits.arms === 'forward' ? Math.min((half / 2) * FORWARD_SHARE, before - least) : 0;
  const tummy = wearer.girth('body-girth', TWO_SIDE_SEAMS) / 2;
  const hem = askedHem(wearer) / 2;
  return {
    front: { chest: before - forward, tummy: tummy * share, hem: hem * share },
    back: { chest: behind + forward, tummy: tummy * (1 - share), hem: hem * (1 - share) },
  };
}

/** The hem that the fit asks for. */
export const askedHem = (wearer: Pick<Wearer, 'girth'>): Mm =>
  Math.max(wearer.girth('hem-girth', TWO_SIDE_SEAMS), wearer.girth('body-girth', TWO_SIDE_SEAMS) * LEAST_HEM_SHARE);

/** Half the eased chest; where nobody measured it but the arm's place, the width that neck, shoulder and arm leave beside each other. */
function halfChest(wearer: Wearer, { slope, neckHalfWidth }: Neck): Mm {
  const placed = ['side-inset', 'shoulder-length'] as const;
  return !wearer.taken('chest-girth') && placed.every(wearer.taken)
    ? 2 * (neckHalfWidth + wearer.of('shoulder-length') * Math.cos(slope) + wearer.of('side-inset'))
    : wearer.girth('chest-girth', TWO_SIDE_SEAMS) / 2;
}

/** What the front has of a girth that front and back share. */
export function frontShare(wearer: Wearer): number {
  const front = wearer.of('front-width');
  return front / (front + wearer.of('back-width'));
}

/** Half a front or back that neck, shoulder and armhole just lie beside each other in. */
export function leastChest({ slope, neckHalfWidth }: Neck): Mm {
  return neckHalfWidth + LEAST_SHOULDER_DRAWN_MM * Math.cos(slope) + LEAST_INSET_MM;
}

/** As it is drawn: both leaned out no further than the side may that the armhole leaves, the chest by what a dart takes in. */
export function drawnTrunk(sizes: Sizes<TrunkSize | SideSize>): Trunk {
  const { sideLevel, armholeDepth, fullest, underarmDeeper } = sizes;
  const side = (name: 'front' | 'back') => {
    const quarter = asked(sizes, name);
    return leaned(quarter, sideLevel - armholeDepth, fullest, underarmDeeper, widestDart(sizes, quarter).width);
  };
  return { front: side('front'), back: side('back') };
}

/** Half a front or back as its girths ask for it. */
export function asked(sizes: Sizes<TrunkSize>, side: 'front' | 'back'): Quarter {
  return {
    chest: quarterOf(sizes, side, 'chest'),
    tummy: quarterOf(sizes, side, 'tummy'),
    hem: quarterOf(sizes, side, 'hem'),
  };
}

/** A girth as it is drawn. */
export function drawnGirth(sizes: Sizes<TrunkSize | SideSize>, girth: keyof Quarter): Mm {
  const { front, back } = drawnTrunk(sizes);
  return 2 * (front[girth] + back[girth]);
}

export function girthsOf({ front, back }: Trunk): Sizes<TrunkSize> {
  const both = (name: keyof Quarter) => front[name] + back[name];
  const share = (name: keyof Quarter) => front[name] / both(name);
  return {
    chest: 2 * both('chest'),
    tummy: 2 * both('tummy'),
    hem: 2 * both('hem'),
    chestShare: share('chest'),
    tummyShare: share('tummy'),
    hemShare: share('hem'),
  };
}

/** Half a front or back at one of the girths. */
function quarterOf(sizes: Sizes<TrunkSize>, side: 'front' | 'back', girth: keyof Quarter): Mm {
  const share = sizes[`${girth}Share`];
  return (sizes[girth] / 2) * (side === 'front' ? share : 1 - share);
}

/** The narrower of front and back across the chest, half of it: where the armhole has least room. */
export function narrowestChest(sizes: Sizes<'chest' | 'chestShare'>): Mm {
  return (sizes.chest / 2) * Math.min(sizes.chestShare, 1 - sizes.chestShare);
}
