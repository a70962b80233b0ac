import { type BodyKind, findMeasure, type Knowns, type Traits, type View } from '../../body';
import type { Point } from '../../body/point';
import { seen } from './camera';
import { type Figure, type Frame, WIDE } from './drawing';
import { figureOf, wholeOf } from './figure-of';
import { fourLeggedForm } from './four-legged/form';
import type { HeadForm } from './head/form';
import { sheets } from './kinds';
import type { Part, Stage } from './stage';
import { sizeOf } from './stretch';
import { armOf } from './upright/arm';
import { uprightFacing } from './upright/facing';
import { uprightForm } from './upright/form';
import { legsOf } from './upright/legs';
import { trunkOutline } from './upright/trunk';

export type Bare = ReturnType<typeof bareUpright>;

/** An upright toy without its tapes, for whoever draws something on it; `size` is how large it is, 1 the typical toy. */
export function bareUpright(traits: Traits, knowns: Knowns, view: 'front' | 'back') {
  const own = withoutHems(knowns);
  const form = uprightForm(traits, own);
  const trunk = trunkOutline(form);
  const stage: Stage = uprightFacing(form, view);
  const legs = legsOf(form, view);
  return {
    form,
    trunk,
    arm: armOf(form, trunk, traits.arms),
    legs,
    stage,
    view,
    size: sizeOf('upright', own),
  };
}

/** A toy of any kind from the side it is known by when clothes are spoken of: its front or its back. */
export function bareStage(kind: BodyKind, traits: Traits, knowns: Knowns, view: View): Stage {
  return sheets[kind][view].stage(traits, knowns);
}

/** The head of a four-legged toy, for what is drawn over it. */
export const bareHead = (traits: Traits, knowns: Knowns): HeadForm => fourLeggedForm(traits, knowns).head;

/** A stage as a picture that shows all of it. */
export function stagePicture(stage: Stage, view: View, frame: Frame = WIDE): Figure {
  return figureOf(seen(stage, wholeOf(stage), frame, false), view, frame, {
    now: null,
  });
}

/** Where the places that tapes speak of lie in that picture, in the frame's units; those of one side at the viewer's right. */
export const stageSpots = (stage: Stage, frame: Frame): Readonly<Record<string, Point>> =>
  seen(stage, wholeOf(stage), frame, false).places;

/** Parts of a stage exchanged for others. */
export const withParts = (stage: Stage, parts: readonly Part[]): Stage => ({
  ...stage,
  parts,
});

/** What hangs is chosen, and says nothing of the toy: a short skirt makes no short legs. */
const HUNG = ['waist-to-hem', 'inside-leg-length', 'cape-length', 'bib-length', 'scarf-length'];
/** How far down a top reaches says how long a trunk is only while nothing better does. */
const TOPS = ['body-length', 'back-body-length', 'side-length'];
const TRUNKS = ['body-rise', 'crotch-length', 'body-loop'] as const;

function withoutHems(knowns: Knowns): Knowns {
  const told = TRUNKS.some((id) => knowns[id] && knowns[id].from !== 'estimate');
  return Object.fromEntries(
    Object.entries(knowns).filter(([id]) => findMeasure(id) && !HUNG.includes(id) && !(told && TOPS.includes(id))),
  );
}
