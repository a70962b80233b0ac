import type { Font } from 'fontkit';
import { facingBack } from './levels';
import { type FaceId, joinsLetters } from './rows';

/** Lengths of letters are thousandths of the size they are set in (ISO 32000-1, 9.2.4). */
const EM = 1000;

/**
 * A letter's shape at its place in a word, in thousandths of the size: how far the word goes on behind it, how wide it is by itself,
 * and how far it is moved from its place. `text` is what it stands for.
 */
export type Glyph = {
  readonly id: number;
  readonly text: string;
  readonly advance: number;
  readonly width: number;
  readonly right: number;
  readonly up: number;
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
    shaped: remembered((part, direction) => shaped(font, part, direction, share), joinsLetters(id) ? WORDS : LETTERS),
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

type Shaped = Face['shaped'];

/** Lines are measured over and over, a word longer each time: what stands by itself is shaped once. */
function remembered(shape: Shaped, parts: RegExp): Shaped {
  const known = { ltr: new Map<string, readonly Glyph[]>(), rtl: new Map<string, readonly Glyph[]>() };
  const partOf = (part: string, direction: 'ltr' | 'rtl'): readonly Glyph[] => {
    const found = known[direction].get(part) ?? shape(part, direction);
    known[direction].set(part, found);
    return found;
  };
  return (text, direction) => {
    const shapes = (text.match(parts) ?? []).map((part) => partOf(part, direction));
    return (direction === 'rtl' ? shapes.reverse() : shapes).flat();
  };
}

/** Letters join within a word; where none join, each stands alone with its marks. */
const WORDS = /[^ ]+| /gu;
const LETTERS = /.[\p{M}\u3099\u309a\uff9e\uff9f]*/gsu;

/** A shape may serve several letters, and the library remembers the first: here each place in a word has its own. */
function toldApart(font: Font): Font {
  const shapeOf = font.getGlyph.bind(font);
  font.getGlyph = (id, codePoints = []) => Object.create(shapeOf(id), { codePoints: { value: codePoints } });
  return font;
}

function shaped(font: Font, text: string, direction: 'ltr' | 'rtl', share: number): readonly Glyph[] {
  const turned = direction === 'rtl' ? facingBack(text) : text;
  const { glyphs, positions } = font.layout(turned, FEATURES, undefined, undefined, direction);
  return glyphs.map(({ id, codePoints, advanceWidth }, n) => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[n] ?? {};
    return {
      id,
      text: direction === 'rtl' ? leftwards(codePoints) : String.fromCodePoint(...codePoints),
      advance: xAdvance * share,
      width: advanceWidth * share,
      right: xOffset * share,
      up: yOffset * share,
    };
  });
}

/**
 * What a shape of a leftward word stands for. Two letters in one shape are told by their own sign (Arabic Presentation Forms): readers
 * turn the letters of a word round one by one, and would turn these two as well.
 */
function leftwards(codePoints: readonly number[]): string {
  const text = facingBack(String.fromCodePoint(...codePoints));
  return text.length > 1 ? (ligatures.get(text) ?? text) : text;
}

/** Lam with alef, in four kinds, and the name of God. */
const ligatures = new Map(Array.from('ﻵﻷﻹﻻﷲ', (sign) => [sign.normalize('NFKC'), sign]));
