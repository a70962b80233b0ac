import { useEffect, useState } from 'preact/hooks';
import { photoOf } from '../../../storage';
import { useToy } from '../keeping';
import { lazily } from '../lazily';
import { noteHappening } from '../trouble/happened';
import './toy-face.css';

const DrawnFace = lazily(async () => (await import('./drawn-face')).DrawnFace);

/** A toy's photo, or its figure drawn from the numbers taken so far. */
export function ToyFace({ toyId }: { readonly toyId: string }) {
  const watched = useToy(toyId);
  const photo = usePhoto(toyId, watched.state === 'here' ? watched.value.toy?.changedAt : undefined);
  if (photo) return <img class="toy-photo" src={photo} alt="" />;
  return (
    <span class="toy-portrait">
      {watched.state === 'here' && watched.value.toy && <DrawnFace watched={watched.value} />}
    </span>
  );
}

/** The address of a toy's photo for as long as it is shown; looked for again when the toy changes. */
export function usePhoto(toyId: string, changed: unknown): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    let made: string | null = null;
    let left = false;
    photoOf(toyId).then((photo) => {
      if (left) return;
      made = photo ? URL.createObjectURL(photo) : null;
      setAddress(made);
    }, noteHappening);
    return () => {
      left = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [toyId, changed]);
  return address;
}
