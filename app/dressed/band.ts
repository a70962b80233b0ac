import { type Point, point } from '../body/point';
import type { Part } from '../measuring/figure';
import { bothHalves, cloth, corner, stitches } from './cloth';
import type { Band } from './clothes';
import { OFF, type Wearer } from './wearer';

/** A bodice on straps: how low it ends, and its parts. */
export function bandParts(band: Band, { form, down, trunkAt, view }: Wearer): { parts: Part[]; low: number } {
  const low = form.waistHeight;
  const top = Math.min(Math.max(low - down(band.high), form.shoulderHeight + 8), low - 8);
  const half = (y: number) => trunkAt(y) + OFF;
  const ahead = view === 'front';
  const centre = top + (ahead ? Math.max(-26, Math.min(down(band.dip), 0.6 * (low - top))) : 0);
  const peak = ahead && band.peak > 0 ? Math.max(down(band.peak), 9) : 0;
  const upper: Point[] =
    band.round && ahead
      ? [point(0, top - 2), point(0.4 * half(top), top), point(0.8 * half(top), top + 0.35 * (low - top))]
      : peak > 0
        ? [
            point(0, centre),
            ...corner(point(peak, centre)),
            point(peak + 0.25 * (half(top) - peak), top - 4),
            ...corner(point(half(top), top)),
          ]
        : [point(0, centre + 0.1 * half(top)), ...corner(point(half(top), top))];
  const shown = !band.round || ahead;
  const sides = [
    point(half((top + low) / 2), (top + low) / 2),
    ...corner(point(half(low), low)),
    point(0, low + 0.12 * half(low)),
  ];
  const parts = shown
    ? [
        cloth(bothHalves([...upper, ...sides])),
        stitches([
          ...upper.map(({ x, y }) => point(-0.93 * x, y + 3)).reverse(),
          ...upper.slice(1).map(({ x, y }) => point(0.93 * x, y + 3)),
        ]),
      ]
    : [];
  return {
    parts: [
      ...strapParts(band, {
        top: shown ? centre : low - 4,
        peak,
        form,
        view,
        half: half(top),
        wide: Math.max(down(band.strapWide) / 2, 4),
      }),
      ...parts,
    ],
    low,
  };
}

type Strapped = Pick<Wearer, 'form' | 'view'> & {
  readonly top: number;
  readonly peak: number;
  readonly half: number;
  readonly wide: number;
};

export function strapParts({ straps }: Pick<Band, 'straps'>, { top, peak, form, view, half, wide }: Strapped): Part[] {
  if (straps === 'none') return [];
  const strip = (from: Point, to: Point): Part => {
    const ends = [
      point(from.x - wide / 2, from.y + 3),
      point(from.x + wide / 2, from.y + 3),
      point(to.x + wide / 2, to.y),
      point(to.x - wide / 2, to.y),
    ];
    return cloth(ends.flatMap(corner));
  };
  const foot = peak > 0 ? peak - wide / 2 : Math.min(0.55 * half, form.shoulderHalf);
  const end =
    straps === 'neck'
      ? point(form.neckHalf * 0.8, -2)
      : point(Math.min(form.shoulderHalf - 2, form.neckHalf + 10), form.shoulderHeight * 0.6);
  if (straps === 'neck' && view === 'back') return [];
  const cross = straps === 'crossed' && view === 'back';
  const from = point(cross ? -foot : foot, top + 3);
  const [one, two] = [strip(from, end), strip(point(-from.x, from.y), point(-end.x, end.y))];
  return [one, two];
}
