/** The few words of the watchdog in every language there is, by code; cut out of `locales/` by the build. */
declare const WATCHDOG_WORDS: Readonly<Record<string, Readonly<Record<string, string>>>>;

const SOURCE = 'en';

/** The first of the device's languages that there are words for. */
export const language: string =
  navigator.languages.map((tag) => String(tag).split('-')[0] ?? '').find((tag) => Object.hasOwn(WATCHDOG_WORDS, tag)) ??
  SOURCE;

export const say = (code: string): string => WATCHDOG_WORDS[language]?.[code] ?? code;
