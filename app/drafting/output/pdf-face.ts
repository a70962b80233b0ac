// Faces of our own in a PDF: only the shapes that were used, each with the letters it stands for, so that a reader
// finds what was written (ISO 32000-1, 9.7.4 CIDFonts, 9.10.3 ToUnicode).

import type { jsPDF } from 'jspdf';
import type { Mm } from '../../body';
import { type Face, type FaceId, faceIds, type Glyph } from '../faces';
import type { Point } from '../geometry';
import { MM_PER_PT, type Words } from './ink';
import type { Run } from './letters';

/** A place beside the start of a run: mm along its baseline and above it. */
export type Place = (right: Mm, up: Mm) => Point;

type Shaped = Extract<Run, { kind: 'shaped' }>;

/** Lengths of letters are thousandths of their size. */
const EM = 1000;
/** Bold is drawn with a stroke round each shape, so wide as a share of the size. */
const BOLD_SHARE = 0.028;

/**
 * The library puts in a font of ours only under a name it knows before a letter is drawn: each face goes by one of the
 * standard fonts that we never use.
 */
const STANDING_IN = [
  ['times', 'normal'],
  ['times', 'bold'],
  ['times', 'italic'],
  ['courier', 'normal'],
] as const;

/** What the library tells whoever puts a font into the file. */
type Putting = {
  readonly font: { readonly id: string; objectNumber: number; isAlreadyPutted?: boolean };
  readonly out: (line: string) => void;
  readonly newObject: () => number;
  readonly putStream: (stream: { data: string; addLength1?: boolean; objectId: number }) => void;
};

type Used = { readonly face: Face; readonly codes: Map<string, number>; readonly glyphs: Glyph[] };

/** A text as a PDF holds it in hexadecimal digits (ISO 32000-1, 7.9.2.2). */
export const utf16 = (text: string): string =>
  ['feff', ...Array.from({ length: text.length }, (_, n) => hex(text.charCodeAt(n)))].join('');

export const advanceOf = (glyphs: readonly Glyph[]): number =>
  glyphs.reduce((sum, { advance }) => sum + advance, 0) / EM;

/** `penUsed` is told each time lines have been set for bold letters. */
export function faceWriter(pdf: jsPDF, correction: number, penUsed: () => void) {
  const used = new Map<FaceId, Used>();
  const keys = new Map<string, FaceId>();
  pdf.internal.events.subscribe('postProcessText', (text: { mutex: { activeFontKey: string; isHex?: boolean } }) => {
    if (keys.has(text.mutex.activeFontKey)) text.mutex.isHex = true;
  });
  pdf.internal.events.subscribe('putFont', (putting: Putting) => {
    const face = used.get(keys.get(putting.font.id) ?? 'latin');
    if (keys.has(putting.font.id) && face) putFace(putting, face);
  });

  const use = (face: Face): Used => {
    const [name, style] = STANDING_IN[faceIds.indexOf(face.id)] ?? STANDING_IN[0];
    keys.set(String(pdf.setFont(name, style).getFont().id), face.id);
    const known = used.get(face.id) ?? { face, codes: new Map(), glyphs: [] };
    used.set(face.id, known);
    return known;
  };

  const put = (face: Face, glyphs: readonly Glyph[], at: Point, { size, turn, bold }: Words): void => {
    const { codes, glyphs: all } = use(face);
    const text = glyphs.map((glyph) => {
      const key = `${glyph.id} ${glyph.text}`;
      const code = codes.get(key) ?? all.push(glyph);
      codes.set(key, code);
      return hex(code);
    });
    pdf.setFontSize(size * correction);
    if (bold) outlined(size);
    pdf.text(text.join(''), at.x * correction, at.y * correction, {
      ...(turn !== 0 && { angle: (-turn * 180) / Math.PI }),
      ...(bold && { renderingMode: 'fillThenStroke' }),
    });
  };

  const outlined = (size: number): void => {
    penUsed();
    pdf.setLineWidth(size * MM_PER_PT * BOLD_SHARE * correction);
    pdf.setLineDashPattern([], 0);
    pdf.setDrawColor('#000');
  };

  return {
    /** Letters that stand where they are expected go together, others each by itself. */
    write({ face, glyphs }: Shaped, words: Words, place: Place): void {
      const em = (words.size * MM_PER_PT) / EM;
      let along = 0;
      let [from, together]: [number, Glyph[]] = [0, []];
      const end = () => {
        if (together.length > 0) put(face, together, place(from * em, 0), words);
        together = [];
      };
      for (const glyph of glyphs) {
        const [right, up] = [along + glyph.right, glyph.up];
        if (glyph.right !== 0 || glyph.up !== 0) {
          end();
          put(face, [glyph], place(right * em, up * em), words);
        } else {
          if (together.length === 0) from = along;
          together.push(glyph);
        }
        along += glyph.advance;
        if (glyph.advance !== glyph.width) end();
      }
      end();
    },
  };
}

function putFace({ font, out, newObject, putStream }: Putting, { face, glyphs }: Used): void {
  const name = `HEMLNG+${face.id}`;
  const stream = (data: string, addLength1 = false): number => {
    const objectId = newObject();
    putStream({ data, objectId, addLength1 });
    out('endobj');
    return objectId;
  };
  const object = (...lines: string[]): number => {
    const id = newObject();
    for (const line of ['<<', ...lines, '>>', 'endobj']) out(line);
    return id;
  };
  const shapes = [...new Set(glyphs.map(({ id }) => id))];
  const file = stream(binary(face.cut(shapes)), true);
  const numbers = stream(binary(pairs([0, ...glyphs.map(({ id }) => shapes.indexOf(id) + 1)])));
  const letters = stream(toUnicode(glyphs));
  const [ascent, descent, capHeight] = [face.ascent, face.descent, face.capHeight].map(Math.round);
  const descriptor = object(
    '/Type /FontDescriptor',
    `/FontName /${name}`,
    `/FontFile2 ${file} 0 R`,
    `/FontBBox [${face.box.map(Math.round).join(' ')}]`,
    `/Flags 4 /StemV 80 /ItalicAngle 0 /Ascent ${ascent} /Descent ${descent} /CapHeight ${capHeight}`,
  );
  const own = object(
    `/Type /Font /Subtype /CIDFontType2 /BaseFont /${name}`,
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >>',
    `/FontDescriptor ${descriptor} 0 R /DW 1000 /CIDToGIDMap ${numbers} 0 R`,
    `/W [1 [${glyphs.map(({ width }) => Math.round(width * 10) / 10).join(' ')}]]`,
  );
  font.objectNumber = object(
    `/Type /Font /Subtype /Type0 /BaseFont /${name} /Encoding /Identity-H`,
    `/DescendantFonts [${own} 0 R] /ToUnicode ${letters} 0 R`,
  );
  font.isAlreadyPutted = true;
}

/** So many at a time may stand in one list (Adobe Technical Note 5014). */
const AT_ONCE = 100;

function toUnicode(glyphs: readonly Glyph[]): string {
  const rows = glyphs.map(({ text }, n) => `<${hex(n + 1)}><${utf16(text).slice(4)}>`);
  const lists = Array.from({ length: Math.ceil(rows.length / AT_ONCE) }, (_, n) => {
    const list = rows.slice(n * AT_ONCE, (n + 1) * AT_ONCE);
    return [`${list.length} beginbfchar`, ...list, 'endbfchar'];
  });
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<0000><ffff>',
    'endcodespacerange',
    ...lists.flat(),
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n');
}

const hex = (code: number): string => code.toString(16).padStart(4, '0');

const pairs = (numbers: readonly number[]): Uint8Array =>
  Uint8Array.from(numbers.flatMap((each) => [each >> 8, each & 255]));
const binary = (bytes: Uint8Array): string => Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
