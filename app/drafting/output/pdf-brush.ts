// Ink onto a PDF page: the only file that knows how the PDF library draws.

import type { jsPDF } from 'jspdf';
import type { Mm } from '../../body';
import { type Path, type Point, polyline, rotate } from '../geometry';
import type { Print } from '../sheets/prints';
import { type Ink, MM_PER_PT, type Pen, pensOf, smallestOf, type TextWidth, type Words } from './ink';
import { unknownWidths } from './letter-widths';
import { graphemes, type Run, runsOf, type Script, westernScript, withoutPictures } from './letters';
import { advanceOf, faceWriter, type Place, utf16 } from './pdf-face';

/** Letters drawn as a picture: PNG, its size in mm, and how far it reaches below the baseline. */
export type Picture = { readonly png: Uint8Array; readonly width: Mm; readonly height: Mm; readonly below: Mm };

/** Draws an emoji, or letters of a script, at a size in points; undefined where it cannot. */
export type Glyphs = (letters: string, size: number, bold: boolean) => Picture | undefined;

type Fraction = Extract<Run, { kind: 'fraction' }>;
type Missing = Extract<Run, { kind: 'missing' }>;

export type PdfBrush = { readonly widthOf: TextWidth; readonly draw: (ink: Ink) => void };

/** Widths from the fonts' tables are thousandths of the size. */
const EM = 1000;
/** A fraction's figures as a share of the text's size, never under the smallest print. */
const FIGURE_SHARE = 0.68;
/** How far up the figure above stands, as a share of the text's size. */
const ABOVE_SHARE = 0.3;
/** And the stroke between. */
const STROKE_SHARE = 0.1;
/** An empty box as wide and as high as this share of the size. */
const BOX_SHARE = 0.6;
/** From one such box to the next. */
const BOX_STEP = 0.75;

/** How wide letters are, by their code: the standard fonts are the same in every file, and have none beyond 16 bits. */
const lettersKnown = { plain: new Map<number, number>(), bold: new Map<number, number>() };
type Weight = keyof typeof lettersKnown;

/** A text as its runs, and how wide it is at a size of 1 where it is one run of the standard fonts. */
type Read = { readonly runs: readonly Run[]; plain: number | undefined; bold: number | undefined };

/** How a language is written: its BCP 47 tag, which way it runs, and letters that the standard fonts lack, in faces or as pictures. */
export type PdfScript = Script & { readonly language: string; readonly glyphs?: Glyphs };

export const westernPdf: PdfScript = { ...westernScript, language: 'en' };

export function pdfBrush(
  pdf: jsPDF,
  correction: number,
  script: PdfScript = westernPdf,
  print: Print = 'usual',
): PdfBrush {
  const ours = pensOf[print];
  const { glyphs } = script;
  // Each page begins with no pen of ours; whatever else sets lines makes us take ours up again.
  let taken: Pen | undefined;
  const layDown = (): void => {
    taken = undefined;
  };
  pdf.internal.events.subscribe('addPage', layDown);
  const letters = faceWriter(pdf, correction, layDown);
  const read = new Map<string, Read>();
  const readOnce = (text: string): Read => {
    const known = read.get(text);
    if (known) return known;
    const drawn = glyphs ? text : withoutPictures(text, script.faces);
    const made: Read = { runs: runsOf(drawn, script), plain: undefined, bold: undefined };
    read.set(text, made);
    return made;
  };
  const fonts = {
    plain: pdf.setFont('helvetica', 'normal').getFont(),
    bold: pdf.setFont('helvetica', 'bold').getFont(),
  };
  const letterWidth = (letter: string, weight: Weight): number => {
    const unknown = unknownWidths[letter]?.[weight];
    const how = { font: fonts[weight], charSpace: 0, doKerning: false };
    const width = unknown === undefined ? pdf.getStringUnitWidth(letter, how) : unknown / EM;
    lettersKnown[weight].set(letter.charCodeAt(0), width);
    return width;
  };
  /** At a size of 1. The fonts are written without kerning, so that a text is as wide as its letters together. */
  const ownWidth = (text: string, weight: Weight): number => {
    let width = 0;
    for (let at = 0; at < text.length; at += 1)
      width += lettersKnown[weight].get(text.charCodeAt(at)) ?? letterWidth(text.charAt(at), weight);
    return width;
  };
  const plainWidth = (text: string, size: number, bold: boolean): Mm =>
    ownWidth(text, bold ? 'bold' : 'plain') * size * MM_PER_PT;

  const runWidth = (run: Run, size: number, bold: boolean): Mm => {
    if (run.kind === 'plain') return plainWidth(run.text, size, bold);
    if (run.kind === 'shaped') return advanceOf(run.glyphs) * size * MM_PER_PT;
    if (run.kind === 'missing')
      return glyphs?.(run.letters, size, bold)?.width ?? boxesOf(run) * size * MM_PER_PT * BOX_STEP;
    const figures = figureSize(size, widthOf);
    return [run.above, '/', run.below].reduce((sum, part) => sum + plainWidth(part, figures, bold), 0);
  };
  const widthOf: TextWidth = Object.assign(
    (text: string, size: number, bold: boolean): Mm => {
      const words = readOnce(text);
      const [run] = words.runs;
      if (run?.kind !== 'plain' || words.runs.length > 1)
        return words.runs.reduce((sum, each) => sum + runWidth(each, size, bold), 0);
      const weight = bold ? 'bold' : 'plain';
      words[weight] ??= ownWidth(run.text, weight);
      return words[weight] * size * MM_PER_PT;
    },
    { direction: script.direction, print },
  );

  const put = (text: string, at: Point, { turn, bold }: Words, size: number): void => {
    pdf.setFont('helvetica', bold ? 'bold' : 'normal');
    pdf.setFontSize(size * correction);
    pdf.text(text, at.x * correction, at.y * correction, turn === 0 ? {} : { angle: (-turn * 180) / Math.PI });
  };

  const drawRun = (run: Run, words: Words, along: Mm): void => {
    const place = (right: Mm, up: Mm): Point => {
      const step = rotate({ x: along + right, y: -up }, words.turn);
      return { x: words.at.x + step.x, y: words.at.y + step.y };
    };
    if (run.kind === 'plain') put(run.text, place(0, 0), words, words.size);
    else if (run.kind === 'fraction') drawFraction(run, words, place);
    else if (run.kind === 'shaped') letters.write(run, words, place);
    else drawMissing(run, words, place);
  };

  const drawFraction = ({ above, below }: Fraction, words: Words, place: Place): void => {
    const figures = figureSize(words.size, widthOf);
    const em = words.size * MM_PER_PT;
    const first = plainWidth(above, figures, words.bold);
    put(above, place(0, em * ABOVE_SHARE), words, figures);
    put('/', place(first, em * STROKE_SHARE), words, figures);
    put(below, place(first + plainWidth('/', figures, words.bold), 0), words, figures);
  };

  const drawMissing = (run: Missing, { size, bold, turn }: Words, place: Place): void => {
    const picture = glyphs?.(run.letters, size, bold);
    if (picture) {
      writeInto(pdf, `/Span <</ActualText <${utf16(run.letters)}>>> BDC`);
      drawPicture(picture, place(0, -picture.below), turn);
      writeInto(pdf, 'EMC');
      return;
    }
    const side = size * MM_PER_PT * BOX_SHARE;
    usePen(ours.rule);
    for (let box = 0; box < boxesOf(run); box++) {
      const x = box * size * MM_PER_PT * BOX_STEP;
      trace(polyline([place(x, 0), place(x + side, 0), place(x + side, side), place(x, side), place(x, 0)]));
      pdf.stroke();
    }
  };

  const drawPicture = (picture: Picture, at: Point, turn: number): void => {
    const [width, height] = [picture.width * correction, picture.height * correction];
    const [x, y] = [at.x * correction, at.y * correction - height];
    pdf.addImage({ imageData: picture.png, format: 'PNG', x, y, width, height, rotation: (-turn * 180) / Math.PI });
  };

  const usePen = (pen: Pen): void => {
    if (taken === pen) return;
    taken = pen;
    const { width, dash, cap, grey } = pen;
    pdf.setLineWidth(width * correction);
    pdf.setLineCap(cap);
    pdf.setLineJoin('round');
    pdf.setLineDashPattern(
      dash.map((length) => length * correction),
      0,
    );
    pdf.setDrawColor(Math.round(grey * 255));
  };

  const trace = (path: Path): void => {
    const [first] = path;
    if (!first) return;
    pdf.moveTo(first.from.x * correction, first.from.y * correction);
    for (const curve of path) {
      const [x, y] = [curve.to.x * correction, curve.to.y * correction];
      if (curve.kind === 'line') pdf.lineTo(x, y);
      else {
        const { out, into } = curve;
        pdf.curveTo(out.x * correction, out.y * correction, into.x * correction, into.y * correction, x, y);
      }
    }
  };

  const draw = (ink: Ink): void => {
    if (ink.kind === 'words') {
      let along = 0;
      for (const run of readOnce(ink.text).runs) {
        drawRun(run, ink, along);
        along += runWidth(run, ink.size, ink.bold);
      }
      return;
    }
    if (ink.path.length === 0) return;
    if (ink.kind === 'fill') {
      const level = Math.round(ink.grey * 255);
      pdf.setFillColor(level, level, level);
      trace(ink.path);
      pdf.fill();
      return;
    }
    usePen(ours[ink.pen]);
    trace(ink.path);
    if (ink.closed) pdf.close();
    pdf.stroke();
  };

  return { widthOf, draw };
}

/** What the library's types leave out: a line put into the file, or onto the page, where it stands. */
export function writeInto(pdf: jsPDF, line: string): void {
  (pdf.internal as jsPDF['internal'] & { readonly write: (line: string) => void }).write(line);
}

/** How many boxes stand for letters without a picture: none for an emoji, which is left out. */
const boxesOf = ({ letters, picture }: Missing): number => (picture ? 0 : graphemes(letters).length);

function figureSize(size: number, widthOf: TextWidth): number {
  return Math.max(smallestOf(widthOf), size * FIGURE_SHARE);
}
