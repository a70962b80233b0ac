/** Turns a code and its values (several names: a list of them) into words of the maker's language; handed to whatever prints words. */
export type Say = (code: string, values?: Readonly<Record<string, number | string | readonly string[]>>) => string;
