import type { NoteRow } from '../../rows/rows';
import { hasGusset, hasLegs, type LegNames, leavesTail, STEEPEST_TURNED } from './leg-names';
import { tailInside } from './leg-tail';

/** A leg this much wider than the thigh asks for is said to be wide. */
const WIDE_TOP = 1.35;
/** And a hem so much wider than the top. */
const WIDE_HEM = 1.05;
/** So low may a crotch hang before it is said, and so much of it be a gusset, mm and share. */
const HANGS_MM = 6;
const MOST_GUSSET = 0.25;
/** A tail's slit shorter than it should be by this much is said, mm. */
const MISSING_MM = 1;

/** What is worth telling of a pair of legs. */
export const legNotes: readonly NoteRow<LegNames>[] = [
  {
    code: 'waist-steep',
    measures: ['body-rise', 'crotch-length'],
    told: ({ sizes: { legRaised, legHalfHip }, choices }) =>
      choices.waist === 'turned' && legRaised > STEEPEST_TURNED * legHalfHip ? { raised: legRaised } : null,
  },
  {
    code: 'leg-wide',
    measures: ['thigh-girth', 'hip-girth'],
    told: ({ sizes: { legTop, legLeast } }) => (legTop > WIDE_TOP * legLeast ? { top: legTop, thigh: legLeast } : null),
    when: hasLegs,
  },
  {
    code: 'feet-over-legs',
    measures: ['foot-girth', 'thigh-girth'],
    told: ({ sizes: { legHem, legTop } }) => (legHem > WIDE_HEM * legTop ? { hem: legHem, top: legTop } : null),
    when: hasLegs,
  },
  {
    code: 'crotch-hangs',
    measures: ['crotch-length', 'body-rise'],
    told: ({ sizes: { crotchHangs } }) => (crotchHangs > HANGS_MM ? { by: crotchHangs } : null),
    when: hasLegs,
  },
  {
    code: 'crotch-off-gusset',
    measures: ['crotch-length', 'body-rise'],
    told: ({ sizes: { gussetLength, crotchSeam } }) =>
      gussetLength > MOST_GUSSET * crotchSeam ? { gusset: gussetLength, seam: crotchSeam } : null,
    when: hasGusset,
  },
  tailInside,
  {
    code: 'tail-slit-short',
    measures: ['tail-girth', 'tail-base-girth', 'waist-to-tail'],
    told: ({ sizes: { tailMissing, tailLong } }) =>
      tailMissing > MISSING_MM ? { by: tailMissing, slit: tailLong } : null,
    when: leavesTail,
  },
];
