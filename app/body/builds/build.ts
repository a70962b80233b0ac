import type { BodyKind } from '../kinds';
import type { Group, Lean } from '../measure';
import type { MeasureId } from '../measures';
import type { Mm } from '../units';

/**
 * One build of a body kind: toys alike in their proportions. A kind's average fits nobody; what is measured weighs its
 * builds against each other. Adding a build is adding a file and naming it in the list.
 */
export type Build = {
  /** As the trait `build` names it, where it can be named. */
  readonly id: string;
  readonly kind: BodyKind;
  /** How many toys of the kind are built so (share), before anything is measured: from memory. */
  readonly share: number;
  /** The girth all others are told by, on a middling toy of this build: chest, or the fullest of a round toy, mm. */
  readonly girth: Mm;
  /** Measures as shares of that girth. What is not told follows its group, times the catalogue's own proportion. */
  readonly proportions: { readonly [M in MeasureId]?: number };
  readonly groups: { readonly [G in Group]?: number };
  /** How much less (or more) toys of this build differ in what measures lean on than all toys do (factor; 1 where left out). */
  readonly sway: { readonly [L in Lean]?: number };
  /** Usual for this build alone: a firm head on a soft body speaks for it. */
  readonly head?: 'firm';
  /** Ears that stand out speak against it. */
  readonly ears?: 'none';
};

/** Within one build heads, trunks and limbs differ about half as much as over all toys: from memory, no source. */
export const usualSway: Build['sway'] = {
  head: 0.6,
  trunk: 0.6,
  length: 1.1,
  limb: 0.8,
  arm: 0.9,
  leg: 0.8,
  stride: 1.1,
};
