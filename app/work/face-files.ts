import latin from '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf?face';
import japanese from '@expo-google-fonts/noto-sans-jp/400Regular/NotoSansJP_400Regular.ttf?face';
import arabic from '@expo-google-fonts/vazirmatn/400Regular/Vazirmatn_400Regular.ttf?face';
import { type Face, type FaceId, openFace } from '../drafting/faces';

/** Where each face lies, cut down by the build to the letters of its scripts. */
const addresses: Readonly<Record<FaceId, string>> = { arabic, japanese, latin };

const opened = new Map<FaceId, Promise<Face>>();

/** A face, fetched once. Rejects where it cannot be had: what then lacks letters says so. */
export function faceFrom(id: FaceId): Promise<Face> {
  const face = opened.get(id) ?? fetched(id);
  opened.set(id, face);
  face.catch(() => opened.delete(id));
  return face;
}

async function fetched(id: FaceId): Promise<Face> {
  const answer = await fetch(addresses[id]);
  if (!answer.ok) throw new TypeError(`no face ${id}: ${answer.status}`);
  return openFace(id, new Uint8Array(await answer.arrayBuffer()));
}
