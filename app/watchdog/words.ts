type Words = Readonly<Record<string, string>>;

/** What the watchdog says, by code, in English; cut out of `locales/` by the build, as are the other languages' beside it. */
declare const WATCHDOG_WORDS: Words;
/** `{ de: { code: words } }`. */
const OTHERS = './watchdog-words.json';

const SOURCE = 'en';
/** Words that do not come within this are done without, ms. */
const LIMIT_MS = 3_000;

export type Spoken = { readonly language: string; readonly say: (code: string) => string };

/** Words in the first of the device's languages that there are any for; in English where they cannot be had. */
export async function wordsHere(): Promise<Spoken> {
  const wanted = navigator.languages.map((tag) => String(tag).split('-')[0] ?? '');
  const others = wanted[0] === SOURCE ? {} : await fetchOthers();
  const language = wanted.find((tag) => tag === SOURCE || Object.hasOwn(others, tag)) ?? SOURCE;
  return { language, say: (code) => others[language]?.[code] ?? WATCHDOG_WORDS[code] ?? code };
}

const fetchOthers = (): Promise<Readonly<Record<string, Words>>> =>
  fetch(OTHERS, { signal: AbortSignal.timeout(LIMIT_MS) }).then(
    (found) => found.json().catch(() => ({})),
    () => ({}),
  );
