import type { Say } from '../../body';

/** The same words, each found once: every piece and page says much that another has said, and finding words takes long. */
export function saidOnce(say: Say): Say {
  const said = new Map<string, string>();
  return (code, values) => {
    const key = values ? `${code} ${JSON.stringify(values)}` : code;
    const known = said.get(key);
    if (known !== undefined) return known;
    const words = say(code, values);
    said.set(key, words);
    return words;
  };
}
