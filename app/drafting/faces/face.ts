import type { Font, Glyph as FontGlyph } from 'fontkit';
import { facingBack } from './levels';
import type { FaceId } from './rows';

/** Lengths of letters are thousandths of the size they are set in (ISO 32000-1, 9.2.4). */
const EM = 1000;

/** Curves and lines of a letter's shape as a PDF traces them, from the baseline's start, y up. */
export type Outline = readonly {
  readonly command: 'move' | 'line' | 'curve' | 'close';
  readonly at: readonly number[];
}[];

/**
 * A letter's shape at its place in a word, in thousandths of the size: how far the word goes on behind it, how wide it is by itself,
 * and how far it is moved from its place. `text` is what it stands for: nothing for a dot that belongs to the letter beside it.
 */
export type Glyph = {
  readonly id: number;
  readonly text: string;
  readonly advance: number;
  readonly width: number;
  readonly right: number;
  readonly up: number;
  readonly outline: () => Outline;
};

export type Face = {
  readonly id: FaceId;
  /** Whether it has all signs of a letter with its marks. */
  readonly has: (letter: string) => boolean;
  /** The letters of one script and direction as they are seen from left to right. */
  readonly shaped: (text: string, direction: 'ltr' | 'rtl') => readonly Glyph[];
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly box: readonly [left: number, bottom: number, right: number, top: number];
  /** A font of some of its shapes alone, for embedding: the nth has the number n + 1. */
  readonly cut: (ids: readonly number[]) => Uint8Array;
};

/** A face where its bytes are at hand; who is asked for one remembers it, and may have it the next time. */
export type Faces = (id: FaceId) => Face | undefined;

/** As the standard fonts are set: letter beside letter, so that what is found in a file is what was written. */
const FEATURES = { kern: false, liga: false, clig: false };

/** @param bytes of a TrueType font @throws where they are none */
export async function openFace(id: FaceId, bytes: Uint8Array): Promise<Face> {
  const { create } = await import('fontkit');
  const font = toldApart(create(bytes));
  const share = EM / font.unitsPerEm;
  const { minX, minY, maxX, maxY } = font.bbox;
  return {
    id,
    has: (letter) => [...letter].every((sign) => font.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0)),
    shaped: (text, direction) => shaped(font, text, direction, share),
    ascent: font.ascent * share,
    descent: font.descent * share,
    capHeight: font.capHeight * share,
    box: [minX * share, minY * share, maxX * share, maxY * share],
    cut: (ids) => {
      const subset = font.createSubset();
      for (const each of ids) subset.includeGlyph(each);
      return subset.encode();
    },
  };
}

/** A shape may serve several letters, and the library remembers the first: here each place in a word has its own. */
function toldApart(font: Font): Font {
  const shapeOf = font.getGlyph.bind(font);
  font.getGlyph = (id, codePoints = []) => Object.create(shapeOf(id), { codePoints: { value: codePoints } });
  return font;
}

function shaped(font: Font, text: string, direction: 'ltr' | 'rtl', share: number): readonly Glyph[] {
  const turned = direction === 'rtl' ? facingBack(text) : text;
  const { glyphs, positions } = font.layout(turned, FEATURES, undefined, undefined, direction);
  return glyphs.map((glyph, n) => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[n] ?? {};
    return {
      id: glyph.id,
      text:
        direction === 'rtl'
          ? facingBack(String.fromCodePoint(...glyph.codePoints))
          : String.fromCodePoint(...glyph.codePoints),
      advance: xAdvance * share,
      width: glyph.advanceWidth * share,
      right: xOffset * share,
      up: yOffset * share,
      outline: () => outlineOf(glyph, share),
    };
  });
}

function outlineOf({ path }: FontGlyph, share: number): Outline {
  let at: readonly number[] = [0, 0];
  return path.commands.map(({ command, args }): Outline[number] => {
    const to = args.map((each) => each * share);
    const [x0 = 0, y0 = 0] = at;
    at = to.length > 0 ? to.slice(-2) : at;
    if (command === 'moveTo') return { command: 'move', at: to };
    if (command === 'lineTo') return { command: 'line', at: to };
    if (command === 'bezierCurveTo') return { command: 'curve', at: to };
    if (command === 'closePath') return { command: 'close', at: [] };
    const [x = 0, y = 0, x1 = 0, y1 = 0] = to;
    return {
      command: 'curve',
      at: [x0 + (2 / 3) * (x - x0), y0 + (2 / 3) * (y - y0), x1 + (2 / 3) * (x - x1), y1 + (2 / 3) * (y - y1), x1, y1],
    };
  });
}
