import type { Traits } from '../../app/body';
import type { Draw, Readings } from './form';
import { ellipseArc, ellipsePerimeter } from './solids';

/**
 * A head as an ellipsoid (half axes, mm). `forward`: how far before its middle the hood's edge should sit (share of
 * `deep`); `chin`: what stays open of that ring (share); `brim`: how high a hat's brim sits (share of `high`).
 */
export type HeadForm = {
  readonly across: number;
  readonly deep: number;
  readonly high: number;
  readonly forward: number;
  readonly chin: number;
  readonly brim: number;
  /** Width of an ear where it joins (mm), how much thicker it gets, and its place from the middle (share of `across`). */
  readonly ear: { readonly base: number; readonly thick: number; readonly inset: number; readonly behind: number };
};

/** How far round the nape lies below the back of the head: about 45°. */
const NAPE = 0.8;

export function measureHead(head: HeadForm, ears: Traits['ears']): Readings {
  const forward = Math.asin(head.forward);
  const ring = Math.cos(forward);
  const brim = Math.asin(head.brim);
  return {
    'head-girth': ellipsePerimeter(head.across, head.deep),
    'face-edge': ellipsePerimeter(head.across * ring, head.high * ring) * (1 - head.chin),
    'crown-arc': ellipseArc(head.high, head.deep, -Math.PI / 2 - NAPE, forward),
    'hood-depth': ellipseArc(head.across, head.deep, -Math.PI / 2, forward),
    'over-head': ellipseArc(head.across, head.high, brim, Math.PI - brim),
    ...(ears === 'none' ? {} : earReadings(head)),
  };
}

function earReadings({ ear, across, deep }: HeadForm): Readings {
  return {
    'ear-base': ear.base,
    'ear-girth': 2.15 * ear.base * ear.thick,
    'ear-inset': across * ear.inset,
    'ear-from-face-edge': deep * ear.behind,
  };
}

export function headForm(across: number, { wide }: Draw): HeadForm {
  return {
    across,
    deep: across * wide(0.82, 1.1),
    high: across * wide(0.85, 1.15),
    forward: Math.min(0.9, wide(0.12, 0.5)),
    chin: Math.min(0.6, wide(0.12, 0.25)),
    brim: Math.min(0.9, wide(0.15, 0.55)),
    ear: {
      base: across * wide(0.5, 1.05),
      thick: wide(0.9, 1.35),
      inset: wide(0.45, 1.1),
      behind: wide(0.25, 0.65),
    },
  };
}
