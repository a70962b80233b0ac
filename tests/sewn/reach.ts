import type { Panel } from './panels';

export const lowest = ({ points }: Pick<Panel, 'points'>): number => Math.max(...points.map(({ y }) => y));

/** Where edges so named lie on the cloth, left to right, on average. */
export const mean = (panel: Panel, named: RegExp) => {
  const xs = [...panel.edges]
    .filter(([name]) => named.test(name))
    .flatMap(([, edge]) => edge.map(({ point }) => panel.points[point]?.x ?? 0));
  return xs.reduce((sum, x) => sum + x, 0) / Math.max(1, xs.length);
};
/** 1 where the front lies to the right on the cloth. */
export const front = (panel: Panel) => (mean(panel, /^front/u) > mean(panel, /^back/u) ? 1 : -1);
export const face = (panel: Panel) => (mean(panel, /^face/u) > mean(panel, /^crown|^back/u) ? 1 : -1);

/** How far a panel reaches left and right at a height. */
export function rows({ points, edges }: Panel) {
  const count = 1 + Math.max(...[...edges.values()].flat().map(({ point }) => point));
  const outline = points.slice(0, count);
  return (y: number) => {
    const kept = Math.max(Math.min(...outline.map((p) => p.y)) + 0.01, Math.min(lowest({ points: outline }) - 0.01, y));
    const xs = outline.flatMap((a, n) => {
      const b = outline[(n + 1) % outline.length] ?? a;
      return a.y > kept !== b.y > kept ? [a.x + ((b.x - a.x) * (kept - a.y)) / (b.y - a.y)] : [];
    });
    return { from: Math.min(...xs), to: Math.max(...xs, Math.min(...xs) + 1) };
  };
}
