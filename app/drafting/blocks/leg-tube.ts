import { waistLine } from '../curves/crotch';
import { hermite, line, type Path, type Point, point, reversePath } from '../geometry';
import { block } from './block';
import { bibLines, bibPlace, lapped, tailLines, withTail } from './leg';

/** Of the chord, how far the centre seams run straight at either end. */
const STRAIGHT = 1 / 3;

/**
 * Half a tube round two legs that are sewn together, front at the left, back at the right; x from its middle, y down from the
 * front waist. Its centre seams run from waist to hem and look like the gap between two legs. Sizes in mm: `legHalfHip` half the
 * finished hip, `legRaised` how far the back rises above the front, `tubeHem` half the hem, `tubeLength` from waist to hem.
 */
export const legTube = block({
  sizes: ['legHalfHip', 'legRaised', 'tubeHem', 'tubeLength'],
  optional: ['legOpen', 'tailAbove', 'tailLong', 'tailLap', ...bibPlace],
  edges: ['waist', 'opening', 'back-above', 'tail-closure', 'tail-end', 'tail', 'back-crotch', 'hem', 'front-crotch'],
  lines: ['bib-place', 'strap-place', 'centre-line'],
  draw: ({ legHalfHip, legRaised, tubeHem, tubeLength, ...places }) => {
    const [front, back] = [point(-legHalfHip / 2, 0), point(legHalfHip / 2, -legRaised)];
    const [frontHem, backHem] = [point(-tubeHem / 2, tubeLength), point(tubeHem / 2, tubeLength)];
    const waist = waistLine(front, back);
    const behind = plumb(back, backHem);
    const before = reversePath(plumb(front, frontHem));
    return {
      edges: {
        waist: lapped(waist, places.tailLap),
        ...withTail(behind, places),
        hem: [line(backHem, frontHem)],
        'front-crotch': before,
      },
      lines: { ...bibLines(waist, before, places), ...tailLines(behind, places) },
    };
  },
});

/** Down from the waist, plumb at both ends. */
function plumb(from: Point, to: Point): Path {
  const down = point(0, 1);
  return [hermite(from, down, to, down, STRAIGHT, STRAIGHT)];
}
