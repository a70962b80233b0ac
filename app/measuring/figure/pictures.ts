import {
  type BodyKind,
  type Knowns,
  type TraitId,
  type Traits,
  type traitValues,
  typicalKnowns,
  usualTraits,
  type View,
} from '../../body';
import type { Point } from '../../body/point';
import { seen } from './camera';
import { type Figure, type Frame, WIDE } from './drawing';
import { figureOf, wholeOf } from './figure-of';
import { sheets } from './kinds';
import { squeezed, squeezedHead } from './squeezed';
import type { MarkId, Stage } from './stage';

/** Small pictures: for lists of toys, and to choose by. */
export const SMALL: Frame = { width: 120, height: 120 };

const FIRST_SIDE: Readonly<Record<BodyKind, View>> = { upright: 'front', 'four-legged': 'side', round: 'front' };

/** A toy for a list of toys: the side it is known by, whole, without threads and tape. */
export function portrait(kind: BodyKind, traits: Traits, knowns: Knowns): Figure {
  const view = FIRST_SIDE[kind];
  const stage = sheets[kind][view].stage(traits, knowns);
  return figureOf(seen(stage, wholeOf(stage), SMALL, false), view, SMALL, { now: null });
}

/** A toy of these looks with one trait as offered, near enough to see what the choice is about; the typical one where nothing is said. */
export function traitPicture<T extends TraitId>(
  kind: BodyKind,
  trait: T,
  value: (typeof traitValues)[T][number],
  looks: Traits = LIKELY[kind],
): Figure {
  if (trait === 'stuffing') return squeezed(value === 'soft', SMALL);
  if (trait === 'head') return squeezedHead(value === 'soft', SMALL);
  if (trait === 'build') return portrait(kind, { ...looks, ears: 'none' }, typicalKnowns(String(value)));
  const { view, shot } = SHOWN[kind][trait] ?? { view: FIRST_SIDE[kind], shot: 'whole' };
  const traits: Traits = { ...looks, [trait]: value };
  const stage = sheets[kind][view].stage(traits, {});
  return figureOf(seen(stage, shotOf(stage, shot), SMALL, false), view, SMALL, { now: null });
}

/** The things the maker puts on a toy of this kind before she measures, in order. */
export const marksOf: Readonly<Record<BodyKind, readonly MarkId[]>> = {
  upright: ['hood', 'neck', 'waist', 'shoulders', 'underarms', 'sides', 'hem'],
  'four-legged': ['neck', 'legs'],
  round: ['face', 'fullest'],
};

/** Step zero: the toy with those marks on it, a glow under what is put on now. The side line and a hood's edge are seen from the side. */
export function markPicture(
  kind: BodyKind,
  traits: Traits,
  knowns: Knowns,
  now: readonly MarkId[],
  frame: Frame = WIDE,
): Figure {
  const fromSide = kind === 'four-legged' || now.every((mark) => FROM_SIDE.includes(mark));
  const view = fromSide ? 'side' : 'front';
  const ofHead = now.length > 0 && now.every((mark) => mark === 'hood');
  const pose = kind === 'upright' && fromSide && !ofHead ? 'lifted' : undefined;
  const stage = sheets[kind][view].stage(traits, knowns, pose);
  return figureOf(seen(stage, shotOf(stage, ofHead ? 'head' : 'trunk'), frame, false), view, frame, { now });
}

const FROM_SIDE: readonly MarkId[] = ['sides', 'hood'];

type Shown = { readonly [T in TraitId]?: { readonly view: View; readonly shot: string } };

/** From where each trait is best seen; whole and from the first side where nothing is said. */
const SHOWN: Readonly<Record<BodyKind, Shown>> = {
  upright: {
    ears: { view: 'front', shot: 'face' },
    neck: { view: 'front', shot: 'trunk' },
    shoulders: { view: 'front', shot: 'trunk' },
    tail: { view: 'back', shot: 'seat' },
    posture: { view: 'side', shot: 'whole' },
  },
  'four-legged': { ears: { view: 'front', shot: 'face' } },
  round: { tail: { view: 'side', shot: 'whole' } },
};

/** What the typical toy of a picture looks like apart from the trait in question. */
const LIKELY: Readonly<Record<BodyKind, Traits>> = {
  upright: { ...usualTraits, ears: 'side', posture: 'stands' },
  'four-legged': { ...usualTraits, ears: 'side', posture: 'stands' },
  round: { ...usualTraits, ears: 'side' },
};

const shotOf = (stage: Stage, shot: string): readonly Point[] => stage.shots[shot] ?? wholeOf(stage);
