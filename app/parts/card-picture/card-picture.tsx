import { type CardDrawing, FACE, type Mark, widthOf } from './drawing';

/** A card drawing on the page, for the screen and the printer. `text` is read in its place. */
export function CardPicture({ drawing, text }: { readonly drawing: CardDrawing; readonly text: string }) {
  return (
    <svg class="card-picture" viewBox={`0 0 ${drawing.width} ${drawing.height}`} role="img" aria-label={text}>
      {drawing.marks.map((mark) => (
        <MarkDrawing key={keyOf(mark)} mark={mark} />
      ))}
    </svg>
  );
}

const keyOf = (mark: Mark) => `${mark.at.join()} ${mark.is === 'shape' ? mark.path : mark.words}`;

function MarkDrawing({ mark }: { readonly mark: Mark }) {
  const [x, y] = mark.at;
  if (mark.is === 'shape') {
    return (
      <path
        d={mark.path}
        transform={`translate(${x} ${y}) scale(${mark.scale})`}
        fill={mark.fill ?? 'none'}
        stroke={mark.line?.colour ?? 'none'}
        stroke-width={mark.line?.width ?? 0}
        stroke-dasharray={mark.line?.dash?.join(' ') ?? 'none'}
        stroke-linecap="round"
        stroke-linejoin="round"
        opacity={mark.opacity ?? 1}
      />
    );
  }
  return (
    <text
      x={x}
      y={y}
      direction="ltr"
      font-family={FACE}
      font-size={mark.size}
      font-weight={mark.heavy ? 650 : 450}
      text-anchor={mark.side === 'right' ? 'end' : 'start'}
      fill={mark.colour}
      {...(widthOf(mark.words) * mark.size > mark.most && { textLength: mark.most, lengthAdjust: 'spacingAndGlyphs' })}
    >
      {mark.words}
    </text>
  );
}
