import type { Say, Unit } from '../../body';
import type { Draft } from '../draft-types';
import type { Direction } from '../faces';
import { formatMm, type Point, toSvg as pathData } from '../geometry';
import { emptyBoard } from '../packing';
import { outlineOf } from '../pieces/outline';
import { figureOf } from '../sheets/figure';
import { type Form, formed } from '../sheets/forms';
import { withMarks } from '../sheets/marks';
import { printRooms } from '../sheets/prints';
import { type Ink, type Layer, MM_PER_PT, pens, type TextWidth } from './ink';
import { hasNap, labelOf } from './label';
import { type Label, labelBeside, labelInside, roomBeside } from './label-room';
import type { Forms } from './labels-ink';
import { escaped } from './markup';
import { pieceInk } from './piece-ink';
import { inRows, type Place } from './svg-rows';

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
  const ways = { say, form, units };
  const { places, width, height } = inRows(
    shown.pieces.map((piece, index) => {
      const figure = figureOf(piece, index, false);
      const [alone] = inRows([{ ...figure, labelBeside: undefined }]).places;
      const label = alone && placed({ told, shown }, alone, ways);
      return { ...figure, labelBeside: label && !label.inside ? label.beside : undefined };
    }),
  );
  const ink = places.flatMap((place) => placedInk({ told, shown }, place, ways));
  const groups = layers.map((layer) => {
    const drawn = ink.filter((each) => each.layer === layer).map((each) => svgOf(each, direction));
    return `<g id="${layer}" fill="none" stroke="#000" stroke-linejoin="round">\n${drawn.join('\n')}\n</g>`;
  });
  const [w, h] = [formatMm(width), formatMm(height)];
  const head = `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}">`;
  return `${head}\n${groups.join('\n')}\n</svg>\n`;
}

type Ways = Required<Pick<SvgOptions, 'form' | 'units'>> & { readonly say: Say };

/** A piece in its place, and its label where it fits inside, else the room it takes beside: letters may be wider than those of a printed page. */
function placed({ told, shown }: Forms, { figure, turned, x, y }: Place, { say, form, units }: Ways) {
  const piece = shown.pieces[figure.piece];
  const labelled = told.pieces[figure.piece];
  if (!piece || !labelled) return undefined;
  const { whole } = figure;
  const to = (p: Point): Point => ({ x: p.x - turned.rows.left + x, y: p.y - turned.rows.top + y });
  const paragraphs = labelOf({ draft: told, piece: labelled, whole, form, units }, say);
  const outline = outlineOf(piece.seamLine, whole).map(to);
  const { width, height } = turned.rows;
  const lines = withMarks(emptyBoard(x + width, y + height), piece, whole, to);
  const inside = figure.labelBeside ? undefined : labelInside(paragraphs, outline, lines, widthOf);
  const beside = roomBeside(paragraphs, printRooms.usual.labels[0].width, widthOf);
  return { piece, whole, to, paragraphs, outline, lines, inside, beside };
}

function placedInk(forms: Forms, place: Place, ways: Ways): readonly Ink[] {
  const here = placed(forms, place, ways);
  if (!here) return [];
  const { piece, whole, to, paragraphs, outline, lines, inside } = here;
  const { room } = place.turned;
  const kept = room && { ...room, x: room.x + place.x, y: room.y + place.y };
  const drawn = pieceInk({ piece, whole, nap: hasNap(forms.told), to }, ways.say, widthOf);
  const words = drawn.filter((ink) => ink.kind === 'words');
  const label: Label =
    inside ?? labelBeside(paragraphs, { outline, lines }, { page: () => lines, room: kept }, widthOf);
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
