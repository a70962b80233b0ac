import { facesOfLanguage } from '../drafting/faces';
import { faceAddresses } from './face-addresses';

/** Asks for the faces of a language (a BCP 47 tag), so that the service worker keeps them and paper is printed without a network. */
export async function keepFaces(language: string): Promise<void> {
  await Promise.all(facesOfLanguage(language).map((id) => fetch(faceAddresses[id]).catch(() => undefined)));
}
