/** Lines to the terminal. Whatever came from outside (a file's name, a card's note) may not steer it. */

/** One line on stdout. */
export const print = (line: string): void => console.log(plain(line));

/** One line on stderr, whatever line breaks it was made of. */
export const complain = (line: string): void => console.error(plain(line.replace(/\s+/gu, ' ').trim()));

/** JSON is printed with the same characters escaped, so that it stays what it says. */
export const printJson = (json: string): void => console.log(json.replace(STEERING, escaped));

/** A reader that has seen enough (`… | head`) is no fault of ours. */
export function endQuietlyWithTheReader(): void {
  process.stdout.on('error', () => process.exit());
}

const plain = (text: string) => text.replace(STEERING, '\uFFFD');

/** Control characters but line feed (C1 and delete too: some terminals obey them), and what turns the direction of text. */
const STEERING = /(?!\n)[\p{Cc}\u202A-\u202E\u2066-\u2069]/gu;

const escaped = (character: string) => `\\u${(character.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`;
