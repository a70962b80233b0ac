/** The next number in [0, 1), the same row for the same seed (mulberry32, public domain, Tommy Ettinger). */
export function chance(seed: number): () => number {
  // Signed: numbers of 31 bits need no room of their own.
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
