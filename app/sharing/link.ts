import type { Card } from '../body';
import { encodeCard } from './code/encode';

export type CardLink = { readonly link: string; readonly leftOut: readonly string[] };

/** The link that carries a card. `home` is the app's own address; the card rides in the fragment, which no server sees. */
export function cardLink(card: Card, home: string): CardLink {
  const { fragment, leftOut } = encodeCard(card);
  return { link: home.replace(/[?#].*$/su, '') + fragment, leftOut };
}

/** Whether an address, or the fragment of one, carries a card of this or a later version: `#/…` is a screen, `#1…` a card. */
export const carriesCard = (address: string): boolean => /#\d/u.test(address);
