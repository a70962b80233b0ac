import type { Flag, Mm } from '../../body';
import type { Ears, Hoods } from '../heads/choices';
import { maker } from './maker';
import type { Wearer } from './wearer';

/** Width of the strip of a three-part hood, as a share of the head's girth: at first, at its narrowest and at its widest (common practice, no source). */
const STRIP_SHARE = 0.18;
export const NARROWEST_STRIP_SHARE = 0.1;
const WIDEST_STRIP_SHARE = 0.26;
const NARROWEST_STRIP_MM = 14;
/** And no wider than this share of the face edge and of the depth: the sides must keep some of both. */
const WIDEST_OF_FACE = 0.4;
const WIDEST_OF_DEPTH = 0.8;
/** The tape lies where the edge will: no more than this is added to it (common practice, no source). */
const FACE_EASE = 0.02;

/** The seam beside a strip may move this far, as shares of the strip's usual half width, to pass over the ears. */
const OVER_EARS = [0.6, 1.5] as const;
/** An opening is this much longer than the ear is wide or flat, and a firm ear passes with so much room. */
const EAR_OVER = 1.1;
const FIRM_EAR_MM = 6;

/** The front edges leave this share of the neck free under the chin, within limits, mm (common practice, no source). */
const CHIN_SHARE = 0.14;
const CHIN_MM = { least: 20, most: 40 } as const;

/**
 * A hood over the head, strip and all: face edge and depth eased, the crown as the tape has it. `strip` is the width of the strip
 * of three parts, 0 in two; `chinGap` half of what is left free under the chin, 0 where the front edges meet.
 */
export const hoodSizes = maker(
  ['neck'],
  ['hoodFace', 'hoodDepth', 'hoodCrown', 'hoodRound', 'napeRise', 'strip', 'chinGap'],
  (wearer: Wearer<Hoods & Ears>, { neck }) => {
    const face = wearer.of('face-edge') * (1 + FACE_EASE);
    const depth = wearer.surface('hood-depth');
    const usual = Math.max(wearer.of('head-girth') * STRIP_SHARE, NARROWEST_STRIP_MM);
    const strip = wearer.choices.ears === 'open' ? overEars(wearer, usual) : usual;
    const gap = Math.min(Math.max(neck * CHIN_SHARE, CHIN_MM.least), CHIN_MM.most);
    return {
      sizes: {
        hoodFace: face,
        hoodDepth: depth,
        hoodCrown: wearer.of('crown-arc'),
        hoodRound: 0.6,
        napeRise: 0.12,
        strip: wearer.choices.hood === 'three' ? Math.min(strip, widestOf(face, depth)) : 0,
        chinGap: wearer.choices.chin === 'meet' ? 0 : gap / 2,
      },
      stops: tooDeep(face, depth),
    };
  },
);

const widestOf = (face: Mm, depth: Mm): Mm => Math.min(face * WIDEST_OF_FACE, depth * WIDEST_OF_DEPTH);

/** How wide a strip of three parts may become at most, where its crown would stand up. */
export function widestStrip(
  wearer: Pick<Wearer, 'of'>,
  { hoodFace, hoodDepth }: Record<'hoodFace' | 'hoodDepth', Mm>,
): Mm {
  return Math.min(wearer.of('head-girth') * WIDEST_STRIP_SHARE, widestOf(hoodFace, hoodDepth));
}

/** Deeper than this many face edges no head is, and no hood can be drawn. */
const DEEPEST_OF_FACE = 3;

function tooDeep(face: Mm, depth: Mm): Flag[] {
  const values = { depth, face };
  return depth > face * DEEPEST_OF_FACE
    ? [{ code: 'hood-too-deep', severity: 'impossible', measures: ['hood-depth', 'face-edge'], values }]
    : [];
}

/** Twice the way from the middle of the head to the middle of an ear, as far as a strip can be that wide. */
function overEars(wearer: Wearer, usual: Mm): Mm {
  const [least, most] = OVER_EARS;
  const ear = 2 * wearer.of('ear-inset') + wearer.of('ear-base');
  return Math.min(Math.max(ear, usual * least), usual * most);
}

/** Openings for the ears: in the seams beside a strip, or slits in a hood of two parts. */
export const earSizes = maker([], ['ear', 'earFrom', 'earInset'], (wearer) => {
  const [base, girth] = [wearer.of('ear-base'), wearer.of('ear-girth')];
  const length = Math.max(base, girth / 2) * EAR_OVER;
  const open = wearer.traits.stuffing === 'soft' ? length : Math.max(length, (girth + FIRM_EAR_MM) / 2);
  return {
    sizes: {
      ear: open,
      earFrom: wearer.of('ear-from-face-edge'),
      earInset: wearer.of('ear-inset'),
    },
  };
});
