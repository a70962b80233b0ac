import { useEffect, useState } from 'preact/hooks';
import './tape-line.css';

const CELLS = 60;
const CELL_WIDTH = 6;

/** How far it was pulled out on the screen before: from there it slides on. */
let before = 0;

/**
 * How far along the maker is, as a strip of tape pulled out over a ruled edge. It is only looked at: the words
 * "9 left" or "6 of 14" stand in the header.
 */
export function TapeLine({ done, all }: { readonly done: number; readonly all: number }) {
  const pulled = all > 0 ? Math.round((CELLS * CELL_WIDTH * done) / all) : 0;
  const [from] = useState(before);
  useEffect(() => {
    before = pulled;
  }, [pulled]);
  return (
    <svg class="tape-line" viewBox={`0 0 ${CELLS * CELL_WIDTH} 12`} preserveAspectRatio="none" aria-hidden="true">
      <path class="tape-line-tick" d={ticks(0, CELLS)} />
      <g class="tape-line-pulled" style={{ '--from': `${from - pulled}px` }}>
        <rect class="tape-line-cloth" x={-CELLS * CELL_WIDTH} width={CELLS * CELL_WIDTH + pulled} height="10" />
        <path class="tape-line-tick pulled" d={ticks(-CELLS, Math.floor(pulled / CELL_WIDTH))} />
        {pulled > 0 && <path class="tape-line-end" d={`M${pulled} 0v10`} />}
      </g>
    </svg>
  );
}

function ticks(from: number, until: number): string {
  const all = Array.from({ length: until - from + 1 }, (_, index) => from + index);
  return all.map((cell) => `M${cell * CELL_WIDTH} 0v${cell % 5 === 0 ? 7 : 4}`).join('');
}
