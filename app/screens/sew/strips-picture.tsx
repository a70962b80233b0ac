import { formatLength } from '../../body';
import { CHECK_STRIPS_MM } from '../../drafting/guide';
import { useWords } from '../../parts';
import './strips.css';

const MARGIN_MM = 6;

/** Three strips sewn side by side, and where the middle one is measured. */
export function StripsPicture() {
  const { hand } = useWords();
  const { width, length, seam } = CHECK_STRIPS_MM;
  const inside = width - 2 * seam;
  const outer = width - seam;
  const stops = [outer, outer + inside];
  const whole = 2 * outer + inside;
  return (
    <svg
      class="strips"
      viewBox={`${-MARGIN_MM} ${-MARGIN_MM} ${whole + 2 * MARGIN_MM} ${length + 2 * MARGIN_MM}`}
      aria-hidden="true"
    >
      <path class="strip-cloth" d={`M0 0h${whole}v${length}H0z`} />
      <path class="strip-seam" d={stops.map((x) => `M${x} 0v${length}`).join('')} />
      <path class="strip-tape" d={`M${outer} ${length / 2}h${inside}`} />
      <text x={whole / 2} y={length / 2 - 6}>
        {formatLength(inside, hand)}
      </text>
    </svg>
  );
}
