import type { Flag } from '../../app/body';

/** What a garment cannot be on some plausible toys, and what would suit them instead: all that it then says. */
const CANNOT: Readonly<Record<string, readonly string[]>> = {
  'fitted-coat': ['coat-corner-not-drawn', 'wears-coat'],
  tunic: ['neck-holds-nothing', 'wears-hat', 'wears-scarf', 'wears-sleeping-bag'],
};

/** Codes of a refusal that no plausible toy should meet; none where it says what stands above and nothing else. */
export function unkindlyRefused(garment: string, flags: readonly Flag[]): string[] {
  const codes = flags.map(({ code }) => code);
  return codes.join() === CANNOT[garment]?.join() ? [] : codes.map((code) => `refused: ${code}`);
}
