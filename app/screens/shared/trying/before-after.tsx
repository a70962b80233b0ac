import type { Draft } from '../../../drafting/draft-types';
import { useWords } from '../../../parts';
import { drawPiece, type PieceDrawing, pathData } from '../pieces/piece-drawing';
import './before-after.css';

/** Lines are this small a share of the picture's width. */
const THIN_SHARE = 220;
/** Between pieces, mm. */
const GAP_MM = 16;

/** The pieces that change, before and after laid over each other. */
export function BeforeAfter({ before, after }: { readonly before: Draft; readonly after: Draft }) {
  const { say } = useWords();
  const pairs = after.pieces.flatMap((piece) => {
    const old = before.pieces.find(({ name }) => name === piece.name);
    const changed = old && pathData(old.seamLine) !== pathData(piece.seamLine);
    return changed ? [{ name: piece.name, old: drawPiece(old), fresh: drawPiece(piece) }] : [];
  });
  if (pairs.length === 0) return null;
  let reached = 0;
  const laid = pairs.map((pair) => {
    const [left, right] = [Math.min(pair.old.left, pair.fresh.left), Math.max(edgeOf(pair.old), edgeOf(pair.fresh))];
    const at = reached - left;
    reached += right - left + GAP_MM;
    return { ...pair, at };
  });
  const top = Math.min(...pairs.flatMap(({ old, fresh }) => [old.top, fresh.top]));
  const foot = Math.max(...pairs.flatMap(({ old, fresh }) => [old.top + old.height, fresh.top + fresh.height]));
  const names = pairs.map(({ name }) => say(`piece.${name}`));
  return (
    <figure class="before-after">
      <svg
        viewBox={`-4 ${(top - 4).toFixed(1)} ${(reached - GAP_MM + 8).toFixed(1)} ${(foot - top + 8).toFixed(1)}`}
        style={{ '--thin': `${((reached - GAP_MM) / THIN_SHARE).toFixed(2)}px` }}
        role="img"
        aria-label={say('screen.tried.over', { pieces: names })}
      >
        {laid.map(({ name, old, fresh, at }) => (
          <g key={name} transform={`translate(${at.toFixed(1)} 0)`}>
            <Outline drawing={old} look="before" />
            <Outline drawing={fresh} look="after" />
          </g>
        ))}
      </svg>
      <figcaption class="soft small">{say('screen.tried.lines', { pieces: names })}</figcaption>
    </figure>
  );
}

const edgeOf = ({ left, width }: PieceDrawing) => left + width;

function Outline({ drawing, look }: { readonly drawing: PieceDrawing; readonly look: 'before' | 'after' }) {
  return (
    <g class={look}>
      <path d={drawing.seam} />
      {drawing.mirrored && <path d={drawing.seam} transform="scale(-1 1)" />}
    </g>
  );
}
