import type { BodyKind, Knowns, MeasureId, Traits, View } from '../../body';
import { fourLeggedFacing } from './four-legged/facing';
import { fourLeggedForm } from './four-legged/form';
import { fourLeggedSide } from './four-legged/side';
import { fourLeggedFrontTapes, fourLeggedSideTapes } from './four-legged/tapes';
import type { TapeRow } from './lay';
import { roundFacing } from './round/facing';
import { roundForm } from './round/form';
import { roundSide } from './round/side';
import { roundBackTapes, roundFrontTapes, roundSideTapes } from './round/tapes';
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

const sheet = <Pose extends string = never>(
  stage: (traits: Traits, knowns: Knowns, pose?: Pose) => Stage,
  tapes: { readonly [M in MeasureId]?: TapeRow<string, string, Pose> },
): Sheet => ({ stage: (traits, knowns, pose) => stage(traits, knowns, pose as Pose | undefined), tapes });

type Sides = { readonly [V in View]: Sheet };

const upright: Sides = {
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

const fourLegged: Sides = {
  front: sheet((traits, knowns) => fourLeggedFacing(fourLeggedForm(traits, knowns), 'front'), fourLeggedFrontTapes),
  back: sheet((traits, knowns) => fourLeggedFacing(fourLeggedForm(traits, knowns), 'back'), {}),
  side: sheet((traits, knowns) => fourLeggedSide(fourLeggedForm(traits, knowns)), fourLeggedSideTapes),
};

const round: Sides = {
  front: sheet((traits, knowns) => roundFacing(roundForm(traits, knowns), 'front'), roundFrontTapes),
  back: sheet((traits, knowns) => roundFacing(roundForm(traits, knowns), 'back'), roundBackTapes),
  side: sheet((traits, knowns) => roundSide(roundForm(traits, knowns)), roundSideTapes),
};

/** Every kind of toy from every side. */
export const sheets: { readonly [K in BodyKind]: Sides } = { upright, 'four-legged': fourLegged, round };

/** The side a measure is taken from on a toy that looks so, and its row; null when no side of the kind knows it. */
export function findTape(
  kind: BodyKind,
  { posture }: Pick<Traits, 'posture'>,
  measure: MeasureId,
): { view: View; row: TapeRow<string, string, string> } | null {
  for (const view of ['front', 'side', 'back'] as const) {
    const row = sheets[kind][view].tapes[measure];
    if (row && (row.only ?? posture) === posture) return { view, row };
  }
  return null;
}

/** The side a toy that looks so is turned to for a measure; null where its kind has no such measure. */
export const viewOf = (kind: BodyKind, traits: Pick<Traits, 'posture'>, measure: MeasureId): View | null =>
  findTape(kind, traits, measure)?.view ?? null;
