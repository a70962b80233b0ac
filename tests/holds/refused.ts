import type { Flag } from '../../app/body';

/** What a garment cannot be on some plausible toys, and says with what would suit them instead. */
const CANNOT: Readonly<Record<string, string>> = { 'fitted-coat': 'coat-corner-not-drawn' };

/** Codes of a refusal that no plausible toy should meet; none where it is one of those above, and names another garment. */
export function unkindlyRefused(garment: string, flags: readonly Flag[]): string[] {
  const codes = flags.map(({ code }) => code);
  const kind = codes[0] === CANNOT[garment] && codes.slice(1).some((code) => code.startsWith('wears-'));
  return kind ? [] : codes.map((code) => `refused: ${code}`);
}
