// Stretches of a line, in order and apart: what a row of a board or of an outline is made of.

/** From `from` to `to` in mm, from < to or a single place. */
export type Span = readonly [from: number, to: number];
export type Spans = readonly Span[];

/** The same stretches, sorted, with those that meet or overlap made one. */
export function merged(spans: Spans): Spans {
  if (spans.length < 2) return spans;
  const sorted = inOrder(spans) ? spans : [...spans].sort((a, b) => a[0] - b[0]);
  const out: [number, number][] = [];
  for (const [from, to] of sorted) append(out, from, to);
  return out;
}

/** Adds a stretch that begins no earlier than the last: where they meet or overlap, that becomes longer. */
function append(out: [number, number][], from: number, to: number): void {
  const last = out[out.length - 1];
  if (last && from <= last[1]) last[1] = Math.max(last[1], to);
  else out.push([from, to]);
}

/** Most are: sorting is what takes time. */
function inOrder(spans: Spans): boolean {
  let before = -Infinity;
  for (const [from] of spans) {
    if (from < before) return false;
    before = from;
  }
  return true;
}

/** What lies between `from` and `to` and in none of the merged spans. */
export function gaps(spans: Spans, from: number, to: number): Spans {
  const out: Span[] = [];
  let at = from;
  for (const [a, b] of spans) {
    if (a > at) out.push([at, Math.min(a, to)]);
    at = Math.max(at, b);
    if (at >= to) return out;
  }
  if (at < to) out.push([at, to]);
  return out;
}

/** Every stretch moved by `by` and made longer by `grow` at both ends. */
export function shifted(spans: Spans, by: number, grow = 0): Spans {
  return spans.map(([from, to]) => [from + by - grow, to + by + grow]);
}

/** Stretches as they are found, from, to, from, to … in no order. */
export type Loose = number[];

/** Merged spans with loose ones added; those are put in order by it. */
export function withLoose(spans: Spans, loose: Loose): Spans {
  sortLoose(loose);
  const out: [number, number][] = [];
  let next = 0;
  let at = 0;
  while (next < spans.length || at < loose.length) {
    const span = spans[next];
    let from = loose[at] ?? Infinity;
    let to = loose[at + 1] ?? Infinity;
    if (span && span[0] <= from) {
      from = span[0];
      to = span[1];
      next += 1;
    } else at += 2;
    append(out, from, to);
  }
  return out;
}

/** By where they begin; there are few, and most lie in order. */
function sortLoose(loose: Loose): void {
  for (let i = 2; i < loose.length; i += 2) {
    const from = loose[i] ?? 0;
    const to = loose[i + 1] ?? 0;
    let at = i;
    for (; at > 0 && (loose[at - 2] ?? 0) > from; at -= 2) {
      loose[at] = loose[at - 2] ?? 0;
      loose[at + 1] = loose[at - 1] ?? 0;
    }
    loose[at] = from;
    loose[at + 1] = to;
  }
}
