import { useEffect, useState } from 'preact/hooks';
import type { Card } from '../../body';
import type { CardWords } from '../../drafting/output';
import { useWords } from '../../parts';
import { cardOf, photoOf } from '../../storage';
import { codeOf, noteHappening } from '../shared/trouble/happened';
import { homeAddress } from './home-address';
import { smallPhoto } from './small-photo';

/** A card ready to leave, in all its forms: the picture is made before the tap, since a share sheet waits for nothing. */
export type Outgoing = {
  readonly png: Blob;
  /** The picture for the printer, drawn when it is asked for. */
  readonly printed: () => Promise<Blob>;
  readonly link: string;
  /** The card as a file's text. */
  readonly json: string;
  /** What stands on it, to be read. */
  readonly words: CardWords;
  /** Parts that the link and the QR do not hold. */
  readonly leftOut: readonly string[];
};

export type Making =
  | { readonly is: 'making' }
  | { readonly is: 'ready'; readonly outgoing: Outgoing }
  | { readonly is: 'failed'; readonly code: string };

/** The card of a toy with everything that may go along; null until it is read. */
export function useWholeCard(toyId: string): Card | null {
  const { hand } = useWords();
  const [card, setCard] = useState<Card | null>(null);
  useEffect(() => {
    const read = async () => {
      const [whole, photo] = await Promise.all([cardOf(toyId, hand.unit), photoOf(toyId)]);
      const small = photo ? await smallPhoto(photo) : undefined;
      setCard(small ? { ...whole, photo: small } : whole);
    };
    read().catch(noteHappening);
  }, [toyId, hand.unit]);
  return card;
}

/** All forms of a card, made anew whenever it changes. */
export function useOutgoing(card: Card | null): Making {
  const { say, hand } = useWords();
  const [making, setMaking] = useState<Making>({ is: 'making' });
  useEffect(() => {
    if (!card) return;
    let stale = false;
    setMaking({ is: 'making' });
    const make = async (): Promise<Outgoing> => {
      const [sharing, picture] = await Promise.all([import('../../sharing'), import('../../parts/card-picture')]);
      const { link, leftOut } = sharing.cardLink(card, homeAddress(location));
      const { dark } = (await sharing.loadQrWriter())(link);
      const rightToLeft = document.documentElement.dir === 'rtl';
      const drawing = picture.drawCard({ card, modules: dark, say, locale: hand.locale, rightToLeft });
      return {
        png: await picture.pngOf(drawing),
        printed: () => picture.pngOf(drawing, picture.forPrinter),
        link,
        json: sharing.writeCard(card),
        words: picture.cardWords({ card, say, locale: hand.locale }),
        leftOut,
      };
    };
    make().then(
      (outgoing) => !stale && setMaking({ is: 'ready', outgoing }),
      (error) => {
        noteHappening(error);
        if (!stale) setMaking({ is: 'failed', code: codeOf(error) });
      },
    );
    return () => {
      stale = true;
    };
  }, [card, say, hand.locale]);
  return making;
}
