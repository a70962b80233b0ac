import { MM_PER_INCH } from '../body';
import type { Glyphs, Picture } from '../drafting/output';

/** Fine enough for a printed name. */
const DOTS_PER_INCH = 300;
const DOTS_PER_MM = DOTS_PER_INCH / MM_PER_INCH;
const POINTS_PER_INCH = 72;
/** Widths of pictures may move words, and moved words may come in other sizes: more rounds than that were never seen. */
const MOST_ROUNDS = 4;

type Letter = { readonly letter: string; readonly size: number; readonly bold: boolean };

/**
 * Makes something that needs letters as pictures at once, while pictures take their time: made once to hear which
 * letters, then again with them drawn by the browser's own fonts. Where no canvas is offered, letters stay boxes.
 */
export async function withPictures<Made>(make: (glyphs: Glyphs) => Made, draw = drawLetter): Promise<Made> {
  const drawn = new Map<string, Picture | undefined>();
  for (let round = 1; ; round++) {
    const wanted = new Map<string, Letter>();
    const made = make((letter, size, bold) => {
      const key = `${letter} ${size} ${bold}`;
      if (!drawn.has(key)) wanted.set(key, { letter, size, bold });
      return drawn.get(key);
    });
    if (wanted.size === 0 || round === MOST_ROUNDS) return made;
    for (const [key, one] of wanted) drawn.set(key, await draw(one));
  }
}

async function drawLetter({ letter, size, bold }: Letter): Promise<Picture | undefined> {
  if (typeof OffscreenCanvas === 'undefined') return undefined;
  const font = `${bold ? 'bold ' : ''}${(size * DOTS_PER_INCH) / POINTS_PER_INCH}px sans-serif`;
  const ruler = new OffscreenCanvas(1, 1).getContext('2d');
  if (!ruler) return undefined;
  ruler.font = font;
  const { width, actualBoundingBoxAscent: above, actualBoundingBoxDescent: below } = ruler.measureText(letter);
  const [wide, high, deep] = [Math.ceil(width), Math.ceil(above), Math.max(0, Math.ceil(below))];
  if (wide <= 0 || high + deep <= 0) return undefined;
  const canvas = new OffscreenCanvas(wide, high + deep);
  const brush = canvas.getContext('2d');
  if (!brush) return undefined;
  brush.font = font;
  brush.fillText(letter, 0, high);
  const png = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
  return { png, width: wide / DOTS_PER_MM, height: (high + deep) / DOTS_PER_MM, below: deep / DOTS_PER_MM };
}
