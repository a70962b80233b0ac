import type { Mm, Say, Unit } from '../../body';
import type { Draft } from '../draft-types';
import type { Direction } from '../faces';
import { formatMm, type Point, toSvg as pathData } from '../geometry';
import { emptyBoard } from '../packing';
import { outlineOf } from '../pieces/outline';
import { type Figure, figureOf, type Turned, turnFigure } from '../sheets/figure';
import { type Form, formed } from '../sheets/forms';
import { withMarks } from '../sheets/marks';
import { type Ink, type Layer, MM_PER_PT, pens, type TextWidth } from './ink';
import { hasNap, labelOf } from './label';
import { type Label, labelBeside, labelInside } from './label-room';
import type { Forms } from './labels-ink';
import { escaped } from './markup';
import { pieceInk } from './piece-ink';

/** Between pieces and round them all, mm. */
const BETWEEN_MM = 10;

/** Rows of pieces are no wider, mm: about what projectors and cutting mats take. */
const WIDEST_ROW_MM = 1000;

/** Which layers there are, from the back: each a group a machine can take alone. */
const layers: readonly Layer[] = ['seam', 'cut', 'marks', 'words'];

/** How wide letters are at most, as a share of the size: the font is the viewer's own. */
const LETTER_SHARE = { plain: 0.54, bold: 0.6 } as const;

/** What is shown of each piece, and the unit of lengths in words. */
export type SvgOptions = { readonly form?: Form; readonly units?: Unit; readonly direction?: Direction };

/**
 * All pieces side by side as one SVG (W3C SVG 2) at true scale: one unit is 1 mm. Pieces on the fold are unfolded.
 * A group a layer: `cut`, `seam`, `marks`, `words`.
 */
export function toSvg(told: Draft, say: Say, options: SvgOptions = {}): string {
  const { form = 'cut', units = 'cm', direction = 'ltr' } = options;
  const shown = formed(told, form);
  const { places, width, height } = inRows(shown.pieces.map((piece, index) => figureOf(piece, index, false)));
  const ink = places.flatMap((place) => placedInk({ told, shown }, place, { width, height }, { say, form, units }));
  const groups = layers.map((layer) => {
    const drawn = ink.filter((each) => each.layer === layer).map((each) => svgOf(each, direction));
    return `<g id="${layer}" fill="none" stroke="#000" stroke-linejoin="round">\n${drawn.join('\n')}\n</g>`;
  });
  const [w, h] = [formatMm(width), formatMm(height)];
  const head = `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}">`;
  return `${head}\n${groups.join('\n')}\n</svg>\n`;
}

type Place = { readonly figure: Figure; readonly turned: Turned; readonly x: Mm; readonly y: Mm };

/** Pieces from left to right, in rows. */
function inRows(figures: readonly Figure[]): {
  readonly places: readonly Place[];
  readonly width: Mm;
  readonly height: Mm;
} {
  const places: Place[] = [];
  let [x, y, tallest, widest] = [BETWEEN_MM, BETWEEN_MM, 0, 0];
  for (const figure of figures) {
    const turned = turnFigure(figure, 0);
    if (x > BETWEEN_MM && x + turned.rows.width + BETWEEN_MM > WIDEST_ROW_MM) {
      [x, y, tallest] = [BETWEEN_MM, y + tallest + BETWEEN_MM, 0];
    }
    places.push({ figure, turned, x, y });
    x += turned.rows.width + BETWEEN_MM;
    tallest = Math.max(tallest, turned.rows.height);
    widest = Math.max(widest, x);
  }
  return { places, width: Math.ceil(widest), height: Math.ceil(y + tallest + BETWEEN_MM) };
}

function placedInk(
  { told, shown }: Forms,
  { figure, turned, x, y }: Place,
  page: { readonly width: Mm; readonly height: Mm },
  { say, form, units }: Required<Pick<SvgOptions, 'form' | 'units'>> & { readonly say: Say },
): readonly Ink[] {
  const piece = shown.pieces[figure.piece];
  const labelled = told.pieces[figure.piece];
  if (!piece || !labelled) return [];
  const { whole, labelBeside: beside } = figure;
  const to = (p: Point): Point => ({ x: p.x - turned.rows.left + x, y: p.y - turned.rows.top + y });
  const room = turned.room && { ...turned.room, x: turned.room.x + x, y: turned.room.y + y };
  const paragraphs = labelOf({ draft: told, piece: labelled, whole, form, units }, say);
  const outline = outlineOf(piece.seamLine, whole).map(to);
  const lines = withMarks(emptyBoard(page.width, page.height), piece, whole, to);
  const inside = beside ? undefined : labelInside(paragraphs, outline, lines, widthOf);
  const drawn = pieceInk({ piece, whole, nap: hasNap(told), to }, say, widthOf);
  const words = drawn.filter((ink) => ink.kind === 'words');
  const label: Label = inside ?? labelBeside(paragraphs, { outline, lines }, { page: () => lines, room }, widthOf);
  return [...drawn, ...label.ink, ...(label.lead?.([...words, ...label.ink]) ?? [])];
}

/** One stroke, fill or line of words. */
export function svgOf(ink: Ink, direction: Direction = 'ltr'): string {
  if (ink.kind === 'words') return textElement(ink, direction);
  const d = pathData(ink.path, { closed: ink.kind === 'fill' || ink.closed });
  if (ink.kind === 'fill') return `<path d="${d}" stroke="none" fill="${greyOf(ink.grey)}"/>`;
  const { width, dash, cap, grey } = pens[ink.pen];
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  const colour = grey > 0 ? ` stroke="${greyOf(grey)}"` : '';
  return `<path d="${d}" stroke-width="${width}" stroke-linecap="${cap}"${dashes}${colour}/>`;
}

function textElement({ at, turn, size, bold, text }: Extract<Ink, { kind: 'words' }>, direction: Direction): string {
  const [x, y] = [formatMm(at.x), formatMm(at.y)];
  const degrees = formatMm((turn * 180) / Math.PI);
  const turned = degrees === '0' ? '' : ` transform="rotate(${degrees} ${x} ${y})"`;
  const font = `font-family="Helvetica, Arial, sans-serif" font-size="${formatMm(size * MM_PER_PT)}"`;
  const weight = bold ? ' font-weight="bold"' : '';
  // Its place is the left end, whichever way it runs.
  const runs = direction === 'rtl' ? ' direction="rtl" text-anchor="end"' : '';
  return `<text x="${x}" y="${y}"${turned} ${font}${weight}${runs} fill="#000" stroke="none">${escaped(text)}</text>`;
}

/** Widths to reckon with where the viewer's own font writes. */
export const widthOf: TextWidth = (text, size, bold) => {
  const wide = text.match(WIDE)?.length ?? 0;
  return (wide + (text.length - wide) * (bold ? LETTER_SHARE.bold : LETTER_SHARE.plain)) * size * MM_PER_PT;
};
/** Letters as wide as they are high. */
const WIDE = /[\u2e80-\u9fff\uac00-\ud7a3\uf900-\ufaff\uff01-\uff60]/g;

function greyOf(grey: number): string {
  const level = Math.round(grey * 255);
  return `rgb(${level},${level},${level})`;
}
