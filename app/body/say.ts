/** Turns a code and its values into words of the maker's language; handed to whatever prints words. */
export type Say = (code: string, values?: Readonly<Record<string, number | string>>) => string;
