import type { Ref } from '../../draft-types';
import { sumOf } from '../../rows/names';
import type { Part } from '../../rows/part';
import { BINDS_UP_TO_MM, type Cloth, isKnit } from '../../sizes/cloths';
import { BINDING_MM } from '../../sizes/scale';
import { type Edged, type StripGives, type StripTakes, stripPart } from './strip';
import { thinBinding } from './thick';

/** In all, a strip is this many times as wide as it shows (handbooks of dressmaking): four layers. */
export const STRIP_WIDTHS = 4;
/** Round a hollow edge a strip is stretched by this share, so that its fold lies flat, or by as much as its cloth allows. */
const STRETCHED = 0.02;
const STRETCHED_OF_EASE = 0.8;

/** What is bound, and whether that edge is hollow: a neck, an armhole. */
export type Bound<C extends object, R extends Ref> = Edged<C, R> & { readonly hollow: (choices: C) => boolean };

/**
 * A strip round a raw edge: sewn on edge to edge, folded over both, stitched down. The edge is cut on the line and stays where
 * it was drawn.
 */
export function bindingPart<C extends object, R extends Ref, Name extends string>(
  name: Name,
  { hollow, ...edged }: Bound<C, R>,
): Part<StripTakes<C, R>, StripGives<Name>> {
  const { edge, closed, rings = 1, intoCasing } = edged;
  const end = intoCasing ? 'casing' : 'opening';
  return stripPart<C, R, Name>(name, edged, {
    long: (look) =>
      sumOf(edge(look.choices), look) / rings / (hollow(look.choices) ? 1 + stretchedIn(look.wearer.cloth) : 1),
    wide: ({ wearer }) => STRIP_WIDTHS * BINDING_MM[wearer.scale],
    roles: (choices) => ({ side: closed(choices) ? 'seam' : end, bottom: 'edge', centre: 'fold' }),
    bias: isCutAslant,
    joined: { bound: true },
    notes: [thinBinding],
  });
}

/** Woven strips, and the thin ones that bind thick cloth, follow a curve on the bias; knit ones along their stretch. */
export function isCutAslant(cloth: Cloth): boolean {
  return !isKnit(cloth) || cloth.thickness > BINDS_UP_TO_MM;
}

const stretchedIn = ({ easesIn }: Cloth) => Math.min(STRETCHED, easesIn * STRETCHED_OF_EASE);
