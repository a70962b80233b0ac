import { Portrait } from '../../../parts';
import type { ToyWatched } from '../../../storage';
import { bodyOf } from '../making/body-of';

/** A toy as its numbers make it so far. */
export function DrawnFace({ watched }: { readonly watched: ToyWatched }) {
  return <Portrait body={bodyOf(watched)} />;
}
