import type { Choice, Choices, Value } from './choice';
import type { Head } from './head';

/** A choice as it is offered beside the others: only the values that make sense there, and the one that counts. */
export type Offered = { readonly name: string; readonly choice: Choice; readonly value: Value };

/** What a garment asks beside what is chosen so far; what would change nothing is not asked. */
export function offered(head: Head, chosen: Readonly<Record<string, Value>> = {}): readonly Offered[] {
  const all = Object.entries(head.choices);
  const choices: Choices = Object.fromEntries(all.map(([name, { fallback }]) => [name, chosen[name] ?? fallback]));
  return all.flatMap(([name, choice]): Offered[] => {
    const suits = (value: Value): boolean => head.suits?.[name]?.(choices, value) ?? true;
    const value = choices[name] ?? choice.fallback;
    if (choice.kind === 'yes') return suits(true) && suits(false) ? [{ name, choice, value }] : [];
    if (choice.kind !== 'one') return suits(value) ? [{ name, choice, value }] : [];
    const of = choice.of.filter(suits);
    if (of.length < 2) return [];
    const fallback = of.includes(choice.fallback) ? choice.fallback : (of[0] ?? choice.fallback);
    return [{ name, choice: { ...choice, of, fallback }, value: of.some((each) => each === value) ? value : fallback }];
  });
}
