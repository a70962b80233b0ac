import { MM_PER_INCH } from '../body';
import { type Face, type FaceId, type Faces, facesAtHand, facesOfLanguage } from '../drafting/faces';
import type { Glyphs, Picture } from '../drafting/output';
import { faceFrom } from './face-files';

/** Fine enough for a printed name. */
const DOTS_PER_INCH = 300;
const DOTS_PER_MM = DOTS_PER_INCH / MM_PER_INCH;
const POINTS_PER_INCH = 72;
/** Widths of pictures may move words, and moved words may come in other sizes: more rounds than that were never seen. */
const MOST_ROUNDS = 4;

type Letter = { readonly letters: string; readonly size: number; readonly bold: boolean };

/** Whatever letters there are: which of them are needed turns out only while pages are made. */
type LettersAtHand = { readonly faces: Faces; readonly glyphs: Glyphs };
type Means = {
  readonly open: (id: FaceId) => Promise<Face>;
  readonly draw: (letter: Letter) => Promise<Picture | undefined>;
};

/**
 * Makes something that needs letters at once, while faces are fetched and pictures take their time: made once to hear which,
 * then again with them. What no face has is drawn by the browser's own fonts; where no canvas is offered, letters become boxes.
 * @param language its faces are needed for certain
 */
export async function withLetters<Made>(
  language: string,
  make: (letters: LettersAtHand) => Made,
  { open, draw }: Means = { open: faceFrom, draw: drawLetter },
): Promise<Made> {
  const atHand = facesAtHand(open);
  const drawn = new Map<string, Picture | undefined>();
  await atHand.fetch(facesOfLanguage(language));
  for (let round = 1; ; round++) {
    const wanted = new Map<string, Letter>();
    const made = await atHand.make((faces) => {
      wanted.clear();
      return make({
        faces,
        glyphs: (letters, size, bold) => {
          const key = `${letters} ${size} ${bold}`;
          if (!drawn.has(key)) wanted.set(key, { letters, size, bold });
          return drawn.get(key);
        },
      });
    });
    if (wanted.size === 0 || round === MOST_ROUNDS) return made;
    for (const [key, one] of wanted) drawn.set(key, await draw(one));
  }
}

async function drawLetter({ letters, size, bold }: Letter): Promise<Picture | undefined> {
  if (typeof OffscreenCanvas === 'undefined') return undefined;
  const font = `${bold ? 'bold ' : ''}${(size * DOTS_PER_INCH) / POINTS_PER_INCH}px sans-serif`;
  const ruler = new OffscreenCanvas(1, 1).getContext('2d');
  if (!ruler) return undefined;
  ruler.font = font;
  const { width, actualBoundingBoxAscent: above, actualBoundingBoxDescent: below } = ruler.measureText(letters);
  const [wide, high, deep] = [Math.ceil(width), Math.ceil(above), Math.max(0, Math.ceil(below))];
  if (wide <= 0 || high + deep <= 0) return undefined;
  const canvas = new OffscreenCanvas(wide, high + deep);
  const brush = canvas.getContext('2d');
  if (!brush) return undefined;
  brush.font = font;
  brush.fillText(letters, 0, high);
  const png = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
  return { png, width: wide / DOTS_PER_MM, height: (high + deep) / DOTS_PER_MM, below: deep / DOTS_PER_MM };
}
