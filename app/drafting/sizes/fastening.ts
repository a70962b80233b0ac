import type { ByScale, Mm, Scale } from '../../body';
import { TAPE_MM } from './scale';

/** What closes an opening, and what is sewn on over it. */
export type Fastening = 'hook-and-loop' | 'zip' | 'snaps' | 'ribbon' | 'buttons';

/** How wide each is, and how far apart they stand; hook and loop and a zip run all along (common practice, no source). */
const WIDE_MM: Readonly<Record<Fastening, ByScale>> = {
  'hook-and-loop': TAPE_MM,
  zip: { small: 20, usual: 24, large: 30 },
  snaps: { small: 6, usual: 9, large: 12 },
  ribbon: { small: 4, usual: 6, large: 10 },
  buttons: { small: 8, usual: 11, large: 15 },
};
const APART_MM: Readonly<Record<Exclude<Fastening, 'hook-and-loop' | 'zip'>, ByScale>> = {
  snaps: { small: 25, usual: 40, large: 60 },
  ribbon: { small: 40, usual: 70, large: 100 },
  buttons: { small: 25, usual: 40, large: 60 },
};
/** The end of a zip's teeth stays so far from a seam that runs across them: no needle meets them (common practice, no source). */
const ZIP_CLEAR_MM: ByScale = { small: 3, usual: 5, large: 8 };
/** A ribbon is cut so long, what is sewn down included: no tie hangs free by more than 220 mm (`longestTie`). */
const TIE_MM: ByScale = { small: 120, usual: 180, large: 220 };
/** It takes two to tie. */
const RIBBONS_A_TIE = 2;

export type Fastened = {
  readonly length: Mm;
  readonly width: Mm;
  readonly count: number;
};

/** What closes an edge so long, mm: tape along all of it, or so many at even distances, one at each end. */
export function fastened(kind: Fastening, along: Mm, scale: Scale): Fastened {
  const width = WIDE_MM[kind][scale];
  // What is shorter than it is wide is cut square.
  if (kind === 'zip') return { length: along, width, count: 1 };
  if (kind === 'hook-and-loop') return { length: Math.max(along, width), width, count: 1 };
  const apart = APART_MM[kind][scale];
  const places = along < apart ? 1 : Math.ceil(along / apart) + 1;
  return kind === 'ribbon'
    ? { length: TIE_MM[scale], width, count: places * RIBBONS_A_TIE }
    : { length: width, width, count: places };
}

/** A button that is sewn on by itself, mm: of the smallest there are. */
export function smallButton(scale: Scale): Omit<Fastened, 'count'> {
  const width = WIDE_MM.buttons[scale];
  return { length: width, width };
}

/** A zip along an opening that is sewn to something at so many of its ends, mm. */
export const zipAlong = (opening: Mm, seamedEnds: 1 | 2, scale: Scale): Mm =>
  opening - seamedEnds * ZIP_CLEAR_MM[scale];

/** An elastic is a tenth shorter than what it goes round, and laps where its ends are joined (common practice, no source). */
const ELASTIC_SHARE = 0.9;
export const ELASTIC_JOIN_MM = 20;

/** Elastic to cut for a girth, or for a part of one whose ends are sewn in, mm. */
export function elasticFor(girth: Mm): Mm {
  return girth * ELASTIC_SHARE + ELASTIC_JOIN_MM;
}
