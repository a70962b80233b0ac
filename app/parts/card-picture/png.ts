import { type CardDrawing, FACE, type Shape, type Writing } from './drawing';

/** For the printer: the paper left white, and twice as fine. */
export type Finish = { readonly paper: string; readonly fine: number };
export const forPrinter: Finish = { paper: '#ffffff', fine: 2 };

/** A card drawing as a PNG. Throws `DrawingError` where the browser gives no canvas. */
export async function pngOf(drawing: CardDrawing, finish: Finish = { paper: drawing.paper, fine: 1 }): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = drawing.width * finish.fine;
  canvas.height = drawing.height * finish.fine;
  const pen = canvas.getContext('2d');
  if (!pen) throw new DrawingError();
  pen.fillStyle = finish.paper;
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.scale(finish.fine, finish.fine);
  pen.lineCap = 'round';
  pen.lineJoin = 'round';
  pen.direction = drawing.rightToLeft ? 'rtl' : 'ltr';
  for (const mark of drawing.marks) {
    pen.save();
    if (mark.is === 'shape') drawShape(pen, mark);
    else drawWords(pen, mark);
    pen.restore();
  }
  return new Promise((resolve, reject) =>
    canvas.toBlob((png) => (png ? resolve(png) : reject(new DrawingError())), 'image/png'),
  );
}

/** The picture could not be made: the device has no room for it. */
class DrawingError extends Error {
  override readonly name = 'DrawingError';
  readonly code = 'picture-undrawn';
}

function drawShape(pen: CanvasRenderingContext2D, { path, at, scale, fill, line, opacity }: Shape): void {
  pen.translate(at[0], at[1]);
  pen.scale(scale, scale);
  pen.globalAlpha = opacity ?? 1;
  const outline = new Path2D(path);
  if (fill) {
    pen.fillStyle = fill;
    pen.fill(outline);
  }
  if (line) {
    pen.strokeStyle = line.colour;
    pen.lineWidth = line.width;
    pen.setLineDash([...(line.dash ?? [])]);
    pen.stroke(outline);
  }
}

function drawWords(pen: CanvasRenderingContext2D, { words, at, side, size, heavy, colour, most }: Writing): void {
  pen.font = `${heavy ? 650 : 450} ${size}px ${FACE}`;
  pen.textAlign = side;
  pen.fillStyle = colour;
  pen.fillText(words, at[0], at[1], most);
}
