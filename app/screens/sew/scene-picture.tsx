import { type Part, placeNames, type Scene } from '../../drafting/guide';
import { useWords } from '../../parts';
import { pathData } from '../shared/pieces/piece-drawing';
import { useSize } from '../shared/use-size';
import { apartIn } from './apart';
import './scene.css';

/** The room a picture has on a small phone, px: names and numbers are sized for it, and grow with more. */
const IN_HAND = { width: 330, height: 210 } as const;
const MOST_GROWTH = 1.5;
const MARGIN_PX = 18;
const NUMBER_PX = 9;
/** Rings may touch, and lie on each other no further than this leaves their numbers free, in radii. */
const LEAST_APART = 1.75;
const LETTERS_PX = 14;
/** A letter is about so wide, as a share of its height. */
const LETTER_SHARE = 0.58;
const SMALLEST_SHARE = 0.7;
/** From the middle of a letter down to the line it stands on, as a share of its height. */
const BASELINE_SHARE = 0.35;

/** A step's pieces on the table: what is sewn now, what has been sewn, and what meets. */
export function ScenePicture({ scene, text }: { readonly scene: Scene; readonly text: string }) {
  const { say } = useWords();
  const { width, height, parts, ties, threads } = scene;
  const [svg, { width: across, height: high }] = useSize<SVGSVGElement>(IN_HAND);
  const growth = Math.min(MOST_GROWTH, Math.max(1, Math.min(across / IN_HAND.width, high / IN_HAND.height)));
  const margin = 2 * MARGIN_PX * growth;
  const mm = Math.max(width / (across - margin), height / (high - margin));
  const px = mm * growth;
  const meets = apartIn(scene.meets, LEAST_APART * NUMBER_PX * px);
  const nameOf = ({ piece }: Part) => say(`piece.${piece}`);
  const aside = { x: (across * mm - width) / 2, y: (high * mm - height) / 2 };
  const writing = {
    widthOf: (part: Part) => nameOf(part).length * LETTER_SHARE * LETTERS_PX * px,
    letters: LETTERS_PX * px,
    smallest: SMALLEST_SHARE,
    ring: NUMBER_PX * px,
    edge: { left: -aside.x, right: width + aside.x, top: -aside.y, bottom: height + aside.y },
  };
  const names = placeNames({ ...scene, meets }, writing);
  return (
    <svg
      class="scene"
      ref={svg}
      viewBox={[-aside.x, -aside.y, across * mm, high * mm].map((each) => each.toFixed(1)).join(' ')}
      role="img"
      aria-label={text}
    >
      {parts.map((part, index) => (
        <PartDrawing key={`${part.piece} ${index}`} part={part} px={px} />
      ))}
      {threads.map(({ seam, path }) => (
        <path key={seam} class="scene-thread" d={pathData(path)} />
      ))}
      {ties.map((tie) => (
        <path key={pathData(tie)} class="scene-tie" d={pathData(tie)} />
      ))}
      {meets.map(({ number, at }) => (
        <g key={`${number} ${at.x} ${at.y}`} class="scene-meet">
          <circle cx={at.x} cy={at.y} r={NUMBER_PX * px} />
          <text x={at.x} y={at.y + 4.5 * px} font-size={12.5 * px}>
            {number}
          </text>
        </g>
      ))}
      {names.map(({ at, share, beside }, index) => (
        <text
          key={`${parts[index]?.piece} ${index}`}
          class={`scene-name ${beside ? 'beside' : ''}`}
          x={at.x}
          y={at.y + BASELINE_SHARE * LETTERS_PX * share * px}
          font-size={LETTERS_PX * share * px}
        >
          {parts[index] && nameOf(parts[index])}
        </text>
      ))}
    </svg>
  );
}

function PartDrawing({ part, px }: { readonly part: Part; readonly px: number }) {
  const lines = (look: string, paths: Part['now']) =>
    paths.map((path) => <path key={`${look}${pathData(path)}`} class={`scene-${look}`} d={pathData(path)} />);
  return (
    <g>
      {part.layers > 1 && (
        <path class="scene-cloth under" d={pathData(part.outline, true)} transform={`translate(${5 * px} ${5 * px})`} />
      )}
      <path class="scene-cloth" d={pathData(part.outline, true)} />
      {lines('middle', [part.middle])}
      {lines('line', part.lines)}
      {lines('sewn', part.sewn)}
      {lines('also', part.also)}
      {lines('now', part.now)}
      {lines('stitch', part.now)}
      {lines('tick', part.ticks)}
      {lines('fold', part.folds)}
    </g>
  );
}
