import './tape-line.css';

const CELLS = 60;
const CELL_WIDTH = 6;

/**
 * How far along the maker is, as a strip of tape pulled out over a ruled edge. It is only looked at: the words
 * "6 of 14" stand in the header.
 */
export function TapeLine({ done, all }: { readonly done: number; readonly all: number }) {
  const pulled = all > 0 ? Math.round((CELLS * CELL_WIDTH * done) / all) : 0;
  return (
    <svg class="tape-line" viewBox={`0 0 ${CELLS * CELL_WIDTH} 12`} preserveAspectRatio="none" aria-hidden="true">
      <rect class="tape-line-cloth" width={pulled} height="10" />
      <path class="tape-line-tick" d={ticks(0, CELLS)} />
      <path class="tape-line-tick pulled" d={ticks(0, Math.floor(pulled / CELL_WIDTH))} />
      {pulled > 0 && <path class="tape-line-end" d={`M${pulled} 0v10`} />}
    </svg>
  );
}

function ticks(from: number, until: number): string {
  const all = Array.from({ length: until - from + 1 }, (_, index) => from + index);
  return all.map((cell) => `M${cell * CELL_WIDTH} 0v${cell % 5 === 0 ? 7 : 4}`).join('');
}
