import latin from '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf?face';
import japanese from '@expo-google-fonts/noto-sans-jp/400Regular/NotoSansJP_400Regular.ttf?face';
import arabic from '@expo-google-fonts/vazirmatn/400Regular/Vazirmatn_400Regular.ttf?face';
import type { FaceId } from '../drafting/faces';

/** Where each face lies, cut down by the build to the letters of its scripts. */
export const faceAddresses: Readonly<Record<FaceId, string>> = { arabic, japanese, latin };
