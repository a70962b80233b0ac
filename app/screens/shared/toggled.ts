/** A value taken out of a row, or put in. */
export function toggled<V>(row: readonly V[], value: V): readonly V[] {
  return row.includes(value) ? row.filter((each) => each !== value) : [...row, value];
}
