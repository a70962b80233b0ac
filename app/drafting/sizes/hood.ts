import type { Mm } from '../../body';
import type { Ears, Hoods } from '../heads/choices';
import { maker } from './maker';
import type { Wearer } from './wearer';

/** Width of the strip of a three-part hood, as a share of the head's girth, and of that at the nape (common practice). */
const STRIP_SHARE = 0.18;
const NAPE_SHARE = 0.6;
const NARROWEST_STRIP_MM = 14;
/** A little more than half the face edge, so that the hood's edge frames the face (common practice, no source). */
const LEAST_FACE_EASE_MM = 6;

/** The seam beside a strip may move this far, as shares of the strip's usual half width, to pass over the ears. */
const OVER_EARS = [0.6, 1.5] as const;
/** An opening is this much longer than the ear is wide or flat, and a firm ear passes with so much room. */
const EAR_OVER = 1.1;
const FIRM_EAR_MM = 6;

/** A hood over the head: face edge, depth and crown eased; strip widths for three parts. */
export const hoodSizes = maker(
  [],
  ['hoodFace', 'hoodFront', 'hoodDepth', 'hoodCrown', 'hoodRound', 'napeRise', 'stripFace', 'stripNape'],
  (wearer: Wearer<Hoods & Ears>) => {
    const face = wearer.surface('face-edge', LEAST_FACE_EASE_MM);
    const three = wearer.choices.hood === 'three';
    const usual = three ? Math.min(Math.max(wearer.of('head-girth') * STRIP_SHARE, NARROWEST_STRIP_MM), face * 0.4) : 0;
    const open = wearer.choices.ears === 'open';
    const strip = open ? Math.min(overEars(wearer, usual), face * 0.4) : usual;
    return {
      sizes: {
        hoodFace: face,
        hoodFront: (face - strip) / 2,
        hoodDepth: wearer.surface('hood-depth'),
        hoodCrown: wearer.surface('crown-arc'),
        hoodRound: 0.6,
        napeRise: 0.12,
        stripFace: strip / 2,
        stripNape: (strip * NAPE_SHARE) / 2,
      },
    };
  },
);

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
