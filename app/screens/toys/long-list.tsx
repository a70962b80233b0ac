import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** Rows are put in and taken out by so many at a time. */
const ROWS_A_BLOCK = 8;
/** Shown before anybody looks where they are: more than a screenful. */
const BLOCKS_AT_ONCE = 2;
/** What lies this near to the screen is there already when it is scrolled to. */
const NEAR = '500px';
/** Of a row nobody has seen yet, px; what was seen keeps its own height. */
const ROW_PX = 88;

type LongListProps<T> = {
  readonly items: readonly T[];
  readonly keyOf: (item: T) => string;
  readonly children: (item: T) => ComponentChildren;
};

/** A list of which only what is seen is there: two thousand rows cost what ten do. */
export function LongList<T>({ items, keyOf, children }: LongListProps<T>) {
  const blocks = Array.from({ length: Math.ceil(items.length / ROWS_A_BLOCK) }, (_, at) =>
    items.slice(at * ROWS_A_BLOCK, (at + 1) * ROWS_A_BLOCK),
  );
  return (
    <div class="toy-list">
      {blocks.map((block, at) => (
        <Block key={at} first={at < BLOCKS_AT_ONCE} rows={block.length}>
          {() =>
            block.map((item, row) => (
              <li key={keyOf(item)} aria-posinset={at * ROWS_A_BLOCK + row + 1} aria-setsize={items.length}>
                {children(item)}
              </li>
            ))
          }
        </Block>
      ))}
    </div>
  );
}

type BlockProps = { readonly first: boolean; readonly rows: number; readonly children: () => ComponentChildren };

function Block({ first, rows, children }: BlockProps) {
  const place = useRef<HTMLUListElement>(null);
  const height = useRef(rows * ROW_PX);
  const [near, setNear] = useState(first);
  useEffect(() => {
    const block = place.current;
    if (!block) return;
    const watch = new IntersectionObserver(
      ([entry]) => {
        if (entry?.isIntersecting) return setNear(true);
        // The row that has the focus stays, or the next press of a key would begin at the top.
        if (block.contains(document.activeElement)) return;
        if (block.childElementCount > 0) height.current = block.offsetHeight;
        setNear(false);
      },
      { rootMargin: NEAR },
    );
    watch.observe(block);
    return () => watch.disconnect();
  }, []);
  return (
    <ul ref={place} class="toy-block" style={near ? undefined : { minBlockSize: `${height.current}px` }}>
      {near && children()}
    </ul>
  );
}
