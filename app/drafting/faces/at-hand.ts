import type { Face, Faces } from './face';
import type { FaceId } from './rows';

/**
 * Faces for what needs its letters at once, while a face takes its time to open: made once to hear which, then again with
 * them. One that cannot be opened is missing from then on.
 */
export function facesAtHand(open: (id: FaceId) => Promise<Face>) {
  const known = new Map<FaceId, Face | undefined>();
  const fetch = async (ids: Iterable<FaceId>): Promise<void> => {
    await Promise.all(Array.from(ids, async (id) => known.set(id, await open(id).catch(() => undefined))));
  };
  return {
    /** Opens those that are needed for certain, so that nothing is made in vain. */
    fetch,
    async make<Made>(make: (faces: Faces) => Made): Promise<Made> {
      for (;;) {
        const missed = new Set<FaceId>();
        const made = make((id) => {
          if (!known.has(id)) missed.add(id);
          return known.get(id);
        });
        if (missed.size === 0) return made;
        await fetch(missed);
      }
    },
  };
}
