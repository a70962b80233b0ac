import { threads } from './bonds';
import type { Panel } from './panels';
import { dotted, plus, type Spot, spot, spotAt } from './space';
import type { Triangle } from './triangles';
import type { Worn } from './worn';

export type Strained = {
  readonly panel: Panel;
  readonly triangle: Triangle;
  readonly corners: readonly [Spot, Spot, Spot];
  /** How much longer it is in its longest direction, a share. */
  readonly strain: number;
};

/** Every triangle as it lies, and how much it is drawn out in the direction it is drawn out most. */
export function strained({ panels, cloth, of }: Pick<Worn, 'panels' | 'cloth' | 'of'>): Strained[] {
  return panels.panels.flatMap((panel) =>
    panel.triangles.map((triangle): Strained => {
      const [a, b, c] = triangle.map((point) => spotAt(cloth.places, of[panel.first + point] ?? 0)) as [
        Spot,
        Spot,
        Spot,
      ];
      const [along, across] = threads(panel.points, triangle, { x: 1, y: 0 });
      const drawn = (shares: readonly number[]) =>
        [a, b, c].reduce((sum, each, n) => plus(sum, each, shares[n] ?? 0), spot(0, 0, 0));
      const [u, v] = [drawn(along), drawn(across)];
      const [uu, vv, uv] = [dotted(u, u), dotted(v, v), dotted(u, v)];
      const most = (uu + vv) / 2 + Math.sqrt(((uu - vv) / 2) ** 2 + uv * uv);
      return { panel, triangle, corners: [a, b, c], strain: Math.sqrt(most) - 1 };
    }),
  );
}
