import type { BodyKind, Knowns, MeasureId, Traits, View } from '../../body';
import type { TapeRow } from './lay';
import type { Stage } from './stage';
import type { Held } from './upright/arm';
import { uprightBackTapes } from './upright/back-tapes';
import { uprightFacing } from './upright/facing';
import { uprightForm } from './upright/form';
import { uprightFrontTapes } from './upright/front-tapes';
import { type SideHeld, uprightSide } from './upright/side';
import { uprightSideTapes } from './upright/side-tapes';

type Tapes = { readonly [M in MeasureId]?: TapeRow<string, string, string> };

/** One side of one kind of toy: how it is drawn, and the tapes that are laid there. */
type Sheet = { readonly stage: (traits: Traits, knowns: Knowns, pose?: string) => Stage; readonly tapes: Tapes };

const sheet = <Pose extends string>(
  stage: (traits: Traits, knowns: Knowns, pose?: Pose) => Stage,
  tapes: { readonly [M in MeasureId]?: TapeRow<string, string, Pose> },
): Sheet => ({ stage: (traits, knowns, pose) => stage(traits, knowns, pose as Pose | undefined), tapes });

const upright: { readonly [V in View]: Sheet } = {
  front: sheet<Held>(
    (traits, knowns, pose) => uprightFacing(uprightForm(traits, knowns), 'front', pose),
    uprightFrontTapes,
  ),
  back: sheet<Held>(
    (traits, knowns, pose) => uprightFacing(uprightForm(traits, knowns), 'back', pose),
    uprightBackTapes,
  ),
  side: sheet<SideHeld>((traits, knowns, pose) => uprightSide(uprightForm(traits, knowns), pose), uprightSideTapes),
};

/** Every kind of toy from every side. */
export const sheets: { readonly [K in BodyKind]: { readonly [V in View]: Sheet } } = {
  upright,
  'four-legged': upright,
  round: upright,
};

/** The side a measure is taken from, and its row; null when no side of the kind knows it. */
export function findTape(
  kind: BodyKind,
  measure: MeasureId,
): { view: View; row: TapeRow<string, string, string> } | null {
  for (const view of ['front', 'side', 'back'] as const) {
    const row = sheets[kind][view].tapes[measure];
    if (row) return { view, row };
  }
  return null;
}
