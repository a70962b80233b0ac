import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { type Face, type FaceId, openFace } from '../drafting/faces';

/** Where each face lies whole, as its package has it. */
const files: Readonly<Record<FaceId, string>> = {
  arabic: '@expo-google-fonts/vazirmatn/400Regular/Vazirmatn_400Regular.ttf',
  japanese: '@expo-google-fonts/noto-sans-jp/400Regular/NotoSansJP_400Regular.ttf',
  latin: '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf',
};

const { resolve } = createRequire(import.meta.url);

export const readFace = async (id: FaceId): Promise<Face> => openFace(id, await readFile(resolve(files[id])));
