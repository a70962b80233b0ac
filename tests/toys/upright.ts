import type { MeasureId, Traits } from '../../app/body';
import { ellipseArc, ellipsePerimeter } from './solids';

/**
 * An upright toy as solids: an ellipsoid for the head, an egg of ellipses for the trunk, tubes for the arms. Half axes
 * and lengths in mm; shares are plain ratios. Readings are taken from the solids, not from the app's own model.
 */
export type UprightForm = {
  readonly head: { readonly across: number; readonly deep: number; readonly high: number };
  /** How far before the middle of the head the hood's edge should sit (share of `deep`), and the chin left open (share of the ring). */
  readonly face: { readonly forward: number; readonly chin: number };
  /** Fullest half axes, and the girth at other heights as a share of the fullest. */
  readonly trunk: {
    readonly across: number;
    readonly deep: number;
    readonly chest: number;
    readonly hem: number;
    /** Share of the fullest girth that lies in front of the side lines. */
    readonly front: number;
  };
  /** Neck girth as a share of the chest girth. */
  readonly neck: number;
  /** From the shoulder's neck end over the tummy to the hem; and the back's share of it. */
  readonly length: number;
  readonly back: number;
  readonly arm: {
    /** Shoulder end to underarm as a share of `length`; front-to-back thickness of the root as a share of that. */
    readonly depth: number;
    readonly thick: number;
    /** How far the pattern's arm end lies in, as a share of half the root girth less the depth. */
    readonly inset: number;
    readonly upper: number;
    readonly paw: number;
    /** Sleeve length; and how much shorter the underarm is, as a share of the depth. */
    readonly length: number;
    readonly cap: number;
  };
  readonly slope: number;
};

export type Readings = { readonly [M in MeasureId]?: number };

/** What an exact tape would read, mm. No shoulder of under 5 mm is read: there is none to hold a tape to. */
export function measureUpright(form: UprightForm): { readings: Readings; shoulders: Traits['shoulders'] } {
  const { head, face, trunk, arm } = form;
  const forward = Math.asin(face.forward);
  const ring = Math.cos(forward);
  const girth = ellipsePerimeter(trunk.across, trunk.deep);
  const chest = girth * trunk.chest;
  const neckHalf = (chest * form.neck) / 5.3;
  const depth = form.length * arm.depth;
  const root = ellipsePerimeter(depth / 2, (depth / 2) * arm.thick);
  const inset = Math.max(3, (root / 2 - depth) * arm.inset);
  const shoulder = (chest / 4 - inset - neckHalf) / Math.cos(form.slope);
  const drop = Math.max(0, shoulder) * Math.sin(form.slope);
  const readings = {
    'head-girth': ellipsePerimeter(head.across, head.deep),
    'face-edge': ellipsePerimeter(head.across * ring, head.high * ring) * (1 - face.chin),
    'crown-arc': ellipseArc(head.high, head.deep, -Math.PI / 2 - 0.6, forward),
    'hood-depth': ellipseArc(head.across, head.deep, -Math.PI / 2, forward),
    'neck-girth': chest * form.neck,
    'chest-girth': chest,
    'body-girth': girth,
    'front-width': girth * trunk.front,
    'back-width': girth * (1 - trunk.front),
    'hem-girth': girth * trunk.hem,
    'side-inset': inset,
    'armhole-depth': depth,
    'arm-root-girth': root,
    'upper-arm-girth': root * arm.upper,
    'paw-girth': root * arm.upper * arm.paw,
    'body-length': form.length,
    'back-body-length': form.length * form.back,
    'side-length': (form.length - depth - drop) * (0.6 + 0.4 * form.back),
    'front-neck-drop': neckHalf * 1.15,
    'back-neck-drop': neckHalf * 0.32,
    'arm-length': arm.length,
    'underarm-length': Math.max(arm.length - depth * arm.cap, arm.length * 0.3),
  } as const;
  if (shoulder < 5) return { readings, shoulders: 'none' };
  return { readings: { ...readings, 'shoulder-length': shoulder }, shoulders: form.slope < 0.12 ? 'square' : 'sloped' };
}
