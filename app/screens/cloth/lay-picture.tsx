import type { LaidCut, Stuff } from '../../drafting/cloth';
import { useWords } from '../../parts';

type LayPictureProps = { readonly laid: readonly LaidCut[]; readonly length: number; readonly stuff: Stuff };

/** Around the cloth, as a share of its width. */
const EDGE_SHARE = 0.03;

/** The pieces as they lie on the cloth: its selvages left and right, its length down, in mm. */
export function LayPicture({ laid, length, stuff }: LayPictureProps) {
  const { say } = useWords();
  const scrap = 'scrap' in stuff ? stuff.scrap : null;
  const width = scrap ? Math.max(...scrap.map(({ y }) => y)) : 'width' in stuff ? stuff.width : 0;
  const long = scrap ? Math.max(...scrap.map(({ x }) => x)) : length;
  const edge = width * EDGE_SHARE;
  const turned = (x: number, y: number): string => `${(width - y).toFixed(1)} ${x.toFixed(1)}`;
  const size = Math.max(10, width / 26);
  return (
    <svg
      class="lay-picture"
      viewBox={`${-edge} ${-edge} ${width + 3 * edge} ${long + 2 * edge}`}
      role="img"
      aria-label={say('lay.picture', { count: laid.length })}
    >
      {scrap ? (
        <path class="lay-cloth" d={`M${scrap.map(({ x, y }) => turned(x, y)).join('L')}Z`} />
      ) : (
        <rect class="lay-cloth" width={width} height={long} />
      )}
      {laid.map(({ outline }, index) => (
        <path key={index} class="lay-piece" d={`M${outline.map(({ x, y }) => turned(x, y)).join('L')}Z`} />
      ))}
      {laid.map(({ number, spot }, index) => (
        <text key={index} class="lay-number" x={width - spot.y} y={spot.x} font-size={size}>
          {number}
        </text>
      ))}
      <path
        class="lay-grain"
        d={`M${width + 1.4 * edge} 0v${Math.min(long, 6 * edge)}m${-edge / 2} ${-edge}l${edge / 2} ${edge}l${edge / 2} ${-edge}`}
      />
    </svg>
  );
}
