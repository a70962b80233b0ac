import type { Mm } from '../../../body';
import type { Piece } from '../../../drafting/draft-types';

type Path = Piece['seamLine'];
type Spot = { readonly x: Mm; readonly y: Mm };

/** A piece as drawn on the screen: SVG path data in mm. A piece on the fold is shown whole, its fold marked. */
export type PieceDrawing = {
  readonly cut: string;
  readonly seam: string;
  readonly lines: readonly string[];
  readonly grain: string;
  readonly fold: string | null;
  readonly mirrored: boolean;
  readonly left: Mm;
  readonly top: Mm;
  readonly width: Mm;
  readonly height: Mm;
};

export function drawPiece(piece: Piece): PieceDrawing {
  const spots = piece.cutLine.map((curve) => curve.from);
  const [left, right] = extent(spots.map(({ x }) => x));
  const [top, bottom] = extent(spots.map(({ y }) => y));
  const [from, to] = piece.grain;
  return {
    cut: pathData(piece.cutLine, true),
    seam: pathData(piece.seamLine, true),
    lines: [...piece.lines.map((line) => pathData(line.path)), ...piece.cuts.map((cut) => pathData(cut))],
    grain: `M${pair(from)}L${pair(to)}`,
    fold: piece.onFold ? `M0 ${short(top)}V${short(bottom)}` : null,
    mirrored: piece.onFold,
    left: piece.onFold ? -right : left,
    top,
    width: piece.onFold ? 2 * right : right - left,
    height: bottom - top,
  };
}

/** Path data in tenths of a millimetre: a screen shows no more. */
export function pathData(path: Path, closed = false): string {
  const [first] = path;
  if (!first) return '';
  const drawn = path.map((curve) =>
    curve.kind === 'line' ? `L${pair(curve.to)}` : `C${pair(curve.out)} ${pair(curve.into)} ${pair(curve.to)}`,
  );
  return `M${pair(first.from)}${drawn.join('')}${closed ? 'Z' : ''}`;
}

const short = (mm: Mm) => String(Math.round(mm * 10) / 10);
const pair = ({ x, y }: Spot) => `${short(x)} ${short(y)}`;

function extent(values: readonly Mm[]): readonly [Mm, Mm] {
  return [Math.min(...values), Math.max(...values)];
}
