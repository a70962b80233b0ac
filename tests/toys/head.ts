import type { Traits } from '../../app/body';
import type { Draw, Readings } from './form';
import { ellipseArc, ellipsePerimeter, type Place, tape, taut } from './solids';

/**
 * A head as an ellipsoid (half axes, mm). `forward`: how far before its middle the hood's edge should sit (share of
 * `deep`); `chin`: what stays open under it (share of the neck, on four legs of the ring round the face); `brim`: how high
 * a hat's brim sits (share of `high`).
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

/** Where a head meets its trunk: the girth of the crease, and how low that lies before and behind, mm. */
export type Crease = { readonly girth: number; readonly front: number; readonly behind: number };

/** `crease`: left out of toys on four legs, whose heads stand before their necks. */
export function measureHead(head: HeadForm, ears: Traits['ears'], crease?: Crease): Readings {
  const forward = Math.asin(head.forward);
  const brim = Math.asin(head.brim);
  return {
    'head-girth': ellipsePerimeter(head.across, head.deep),
    'face-edge': crease ? fromNeck(head, crease) : onFace(head, Math.cos(forward)),
    'crown-arc': ellipseArc(head.high, head.deep, -Math.PI / 2 - NAPE, forward),
    'hood-depth': ellipseArc(head.across, head.deep, -Math.PI / 2, forward),
    'over-head': ellipseArc(head.across, head.high, brim, Math.PI - brim),
    ...(ears === 'none' ? {} : earReadings(head)),
  };
}

const onFace = ({ across, high, chin }: HeadForm, ring: number) =>
  ellipsePerimeter(across * ring, high * ring) * (1 - chin);

/** Places a tape over a head is followed by. */
const FOLLOWED = 200;

/**
 * From the neck beside the chin over the top of the face and down again, the tape taut from the crease to the cheek. The
 * nape lies on the crease, and the head leans as that does.
 */
export function fromNeck({ across, deep, high, forward, chin }: HeadForm, { girth, front, behind }: Crease): number {
  const round = girth / (2 * Math.PI);
  const lean = Math.atan2(front - behind, 2 * round);
  const up = high * Math.sin(NAPE);
  const beside = (girth * chin) / 2;
  const [y, z] = [front + up * Math.cos(lean), Math.sqrt(Math.max(0, round ** 2 - beside ** 2)) - up * Math.sin(lean)];
  const [downTo, backTo] = [-high * Math.sqrt(1 - forward ** 2) - y, deep * forward - z];
  const long = Math.hypot(downTo, backTo);
  const places = Array.from({ length: FOLLOWED }, (_, n): Place => {
    const share = (n + 1) / FOLLOWED;
    const [low, out] = [(y + downTo * share) / high, (z + backTo * share) / deep];
    return [long * share, across * Math.sqrt(Math.max(0, 1 - low ** 2 - out ** 2))];
  });
  return 2 * tape(taut([[0, beside], ...places]));
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
