import type { Mm } from '../../body';

/** The largest sheet offered, A0, fills the picture; the small ones keep a size that can be seen. */
const FRAME = 60;
const LARGEST_MM = 1189;

export function PaperPicture({ width, height }: { readonly width: Mm; readonly height: Mm }) {
  const scale = (FRAME * Math.sqrt(height / LARGEST_MM)) / height;
  const [wide, high] = [width * scale, height * scale];
  const fold = Math.min(8, wide / 3);
  const left = (FRAME - wide) / 2;
  const top = FRAME - high;
  return (
    <svg viewBox={`-2 -2 ${FRAME + 4} ${FRAME + 4}`} aria-hidden="true" focusable="false">
      <path class="paper" d={`M${left} ${top}h${wide - fold}l${fold} ${fold}v${high - fold}h${-wide}z`} />
      <path class="paper-fold" d={`M${left + wide - fold} ${top}v${fold}h${fold}`} />
    </svg>
  );
}
