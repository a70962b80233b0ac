/** Done; refused; not understood or unreadable; our own fault (the last as `sysexits.h` has it, EX_SOFTWARE). */
export const EXIT = { done: 0, refused: 1, unreadable: 2, ours: 70 } as const;
export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** How a command is called; its words are in `locales/` under `command.NAME`. */
export type Call = {
  readonly name: string;
  /** What stands behind the name, a line a way of calling it. */
  readonly usage: readonly string[];
  /** What an option's value is called in the help; null for one without a value. */
  readonly options: Readonly<Record<string, string | null>>;
  /** Fewest and most words beside the options. */
  readonly words: readonly [number, number];
  readonly exits: readonly Exit[];
};

export type Asked = {
  readonly words: readonly string[];
  readonly values: { readonly [option: string]: string | undefined };
  readonly on: (option: string) => boolean;
};
