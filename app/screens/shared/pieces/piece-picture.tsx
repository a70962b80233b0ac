import type { PieceDrawing } from './piece-drawing';
import './piece-picture.css';

/** The lines of one piece, in mm, for whatever picture it stands in. */
export function PieceLines({ drawing }: { readonly drawing: PieceDrawing }) {
  const half = (
    <>
      <path class="piece-cut" d={drawing.cut} />
      <path class="piece-seam" d={drawing.seam} />
      {drawing.lines.map((line) => (
        <path key={line} class="piece-line" d={line} />
      ))}
    </>
  );
  return (
    <g class="piece">
      {half}
      {drawing.mirrored && <g transform="scale(-1 1)">{half}</g>}
      <path class="piece-grain" d={drawing.grain} />
      {drawing.fold && <path class="piece-fold" d={drawing.fold} />}
    </g>
  );
}

/** One piece by itself, `scale` pixels to the millimetre, so that pieces side by side can be compared. */
export function PiecePicture({ drawing, scale }: { readonly drawing: PieceDrawing; readonly scale: number }) {
  const { left, top, width, height } = drawing;
  const edge = 2 / scale;
  return (
    <svg
      class="piece-picture"
      viewBox={[left - edge, top - edge, width + 2 * edge, height + 2 * edge].map((mm) => mm.toFixed(1)).join(' ')}
      width={(width + 2 * edge) * scale}
      height={(height + 2 * edge) * scale}
      aria-hidden="true"
      focusable="false"
    >
      <PieceLines drawing={drawing} />
    </svg>
  );
}
