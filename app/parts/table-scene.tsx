import './table-scene.css';

const tape = 'M-10 128C40 96 74 150 128 134S206 66 262 92s70 34 120 6';

/** What lies on the table before anything is measured: a pattern piece, a spool, a pencil, and the tape across it all. */
export function TableScene() {
  return (
    <svg class="table-scene" viewBox="0 0 360 176" aria-hidden="true" focusable="false">
      <g class="table-paper" transform="rotate(-5 108 84)">
        <path class="table-sheet" d="M46 14h118v146H46z" />
        <path class="table-cut" d="M70 40c6 15 20 20 33 20l24-13c-7 26 1 40 18 49l-4 48H70z" />
        <path class="table-seam" d="M77 52c7 11 18 15 29 15l13-7c-3 23 4 35 18 43l-3 33H77z" />
        <path class="table-grain" d="M98 84v36m-4-31 4-5 4 5m-8 26 4 5 4-5" />
      </g>
      <g transform="rotate(9 250 60)">
        <path class="table-spool" d="M238 22h40l-5 8h-30zM243 66h30l5 8h-40z" />
        <path class="table-thread" d="M243 30h30v36h-30z" />
        <path class="table-turns" d="M243 36l30 3m-30 5 30 3m-30 5 30 3m-30 5 30 3" />
      </g>
      <path class="table-strand" d="M272 66c26 6 34 22 20 32s-34 0-26-10 42 6 104-22" />
      <path class="table-tape-edge" d={tape} />
      <path class="table-tape" d={tape} />
      <path class="table-ticks" d={tape} />
      <path class="table-tape-middle" d={tape} />
      <g transform="rotate(24 300 140)">
        <path class="table-pencil" d="M248 134h76v11h-76z" />
        <path class="table-pencil-line" d="M248 139.5h76" />
        <path class="table-wood" d="M324 134l17 5.5-17 5.5z" />
        <path class="table-lead" d="M335 137.6l6 1.9-6 1.9z" />
        <path class="table-rubber" d="M240 134h8v11h-8z" />
      </g>
    </svg>
  );
}
