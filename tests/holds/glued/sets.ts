/** Numbers 0 … n − 1 that come to belong together, two at a time. */
export type Sets = {
  readonly join: (a: number, b: number) => void;
  readonly of: (a: number) => number;
  readonly all: () => number[][];
};

export function sets(count: number): Sets {
  const parent = Array.from({ length: count }, (_, n) => n);
  const of = (a: number): number => {
    let root = a;
    while (parent[root] !== root) root = parent[root] ?? root;
    parent[a] = root;
    return root;
  };
  return {
    of,
    join: (a, b) => {
      parent[of(a)] = of(b);
    },
    all: () => {
      const found = new Map<number, number[]>();
      for (let n = 0; n < count; n++) found.set(of(n), [...(found.get(of(n)) ?? []), n]);
      return [...found.values()];
    },
  };
}
