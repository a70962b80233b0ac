import { type Face, type FaceId, openFace } from '../drafting/faces';
import { faceAddresses } from './face-addresses';

const opened = new Map<FaceId, Promise<Face>>();

/** A face, fetched once. Rejects where it cannot be had: what then lacks letters says so. */
export function faceFrom(id: FaceId): Promise<Face> {
  const face = opened.get(id) ?? fetched(id);
  opened.set(id, face);
  face.catch(() => opened.delete(id));
  return face;
}

async function fetched(id: FaceId): Promise<Face> {
  const answer = await fetch(faceAddresses[id]);
  if (!answer.ok) throw new TypeError(`no face ${id}: ${answer.status}`);
  return openFace(id, new Uint8Array(await answer.arrayBuffer()));
}
