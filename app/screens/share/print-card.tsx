import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from '../../parts';
import { noteHappening } from '../shared/trouble/happened';
import { useAddress } from './use-address';

/** The card on paper: drawn finer and on white, and handed to the printer once it is there. Seen in print only. */
export function PrintCard({ printed }: { readonly printed: () => Promise<Blob> }) {
  const { say } = useWords();
  const [picture, setPicture] = useState<Blob | null>(null);
  const address = useAddress(picture);
  const image = useRef<HTMLImageElement>(null);
  useEffect(() => {
    if (address) image.current?.decode().then(() => print(), noteHappening);
  }, [address]);
  return (
    <>
      <button type="button" class="quiet" onClick={() => printed().then(setPicture, noteHappening)}>
        {say('screen.share.print')}
      </button>
      {address && <img ref={image} class="card-printed" src={address} alt="" />}
    </>
  );
}
