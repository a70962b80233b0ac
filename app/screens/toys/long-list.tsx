import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** So many rows, or so many smaller blocks, make a block. */
const TO_A_BLOCK = 8;
/** Shown before anybody looks where they are: more than a screenful. */
const ROWS_AT_ONCE = 16;
/** What lies this near to the screen is there already when it is scrolled to. */
const NEAR = '500px';
/** Of a row nobody has seen yet, px; what was seen keeps its own height. */
const ROW_PX = 88;

type LongListProps<T> = {
  readonly items: readonly T[];
  readonly keyOf: (item: T) => string;
  readonly children: (item: T) => ComponentChildren;
};

/** A list of which only what is seen is there, in blocks of blocks: two thousand rows cost what ten do. */
export function LongList<T>({ items, keyOf, children }: LongListProps<T>) {
  const row = (at: number) => {
    const item = items[at];
    return (
      item && (
        <li key={keyOf(item)} aria-posinset={at + 1} aria-setsize={items.length}>
          {children(item)}
        </li>
      )
    );
  };
  return (
    <div class="toy-list">
      <Blocks from={0} rows={items.length} row={row} />
    </div>
  );
}

type BlockProps = {
  readonly from: number;
  readonly rows: number;
  readonly row: (at: number) => ComponentChildren;
};

/** Rows as the fewest blocks, all of one size but the last. */
function Blocks({ from, rows, row }: BlockProps) {
  let size = TO_A_BLOCK;
  while (size * TO_A_BLOCK < rows) size *= TO_A_BLOCK;
  return Array.from({ length: Math.ceil(rows / size) }, (_, at) => {
    const first = from + at * size;
    return <Block key={`${size} ${first}`} from={first} rows={Math.min(size, from + rows - first)} row={row} />;
  });
}

function Block({ from, rows, row }: BlockProps) {
  const place = useRef<HTMLDivElement>(null);
  const height = useRef(rows * ROW_PX);
  const [near, setNear] = useState(from < ROWS_AT_ONCE);
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
    <div ref={place} class="toy-blocks" style={near ? undefined : { minBlockSize: `${height.current}px` }}>
      {near &&
        (rows > TO_A_BLOCK ? (
          <Blocks from={from} rows={rows} row={row} />
        ) : (
          <ul class="toy-block">{Array.from({ length: rows }, (_, at) => row(from + at))}</ul>
        ))}
    </div>
  );
}
