/** A name no other toy has: the one wished for, or that with a number after it. */
export function freeName(name: string, taken: ReadonlySet<unknown>): string {
  if (!name) return name;
  for (let number = 1; ; number++) {
    const candidate = number === 1 ? name : `${name} ${number}`;
    if (!taken.has(candidate)) return candidate;
  }
}
