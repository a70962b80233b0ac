/** What every screen is given. */
export type ScreenProps = {
  /** The named parts of its address. */
  readonly params: Readonly<Record<string, string>>;
  readonly query: URLSearchParams;
  /** Whether the store was new, known, or found cleared by the browser. */
  readonly found: 'new' | 'known' | 'cleared';
};
