/** A language file of which the build has kept only what the first screen says. */
declare module '*.json?first' {
  const words: import('./locales').Sentences;
  export default words;
}
