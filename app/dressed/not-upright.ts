import type { Body } from '../body';
import { type Point, point } from '../body/point';
import { bareHead, bareStage, type Part, type Stage, withParts } from '../measuring/figure';
import { cloth, corner } from './cloth';
import type { Clothes } from './clothes';
import { coatParts } from './coat';
import { coatFromSide } from './coat-side';
import { hatParts } from './hat';
import { coveredEars, hoodParts } from './hood';
import { hungParts } from './hung';
import { tunicParts } from './tunic';

/** A toy that is not upright, from one of its ends, in what goes round its neck or, on four legs, its body. */
export function notUpright({ hung, hat, coat, hood, tunic }: Clothes, body: Body, side: 'front' | 'back'): Stage {
  const stage = bareStage(body.kind, body.traits, body.sizes, side);
  const end = stage.places.neckEnd ?? point(0, 0);
  const hem = stage.places.bibHem ?? point(0, 60);
  const known = body.sizes['bib-length']?.value ?? 85;
  const scale = (hem.y - end.y) / known;
  const down = (mm: number) => mm * scale;
  const worn = coat ? coatParts(coat, stage, side, down) : null;
  const hangs = hung
    ? hungParts(hung, {
        crease: end.y,
        half: end.x,
        shoulder: end.x * 1.4,
        down,
        round: (girth) => (girth * scale) / 5,
        lowest: groundOf(stage) - 6,
        ground: groundOf(stage) - 4,
        view: side,
      })
    : tunic
      ? tunicParts(tunic, stage, side)
      : [];
  const head = stage.parts.findIndex(({ name }) => name === 'head');
  const before = body.kind === 'round' ? stage.parts.findIndex(({ name }) => name === 'cheek') : head;
  const cut = before < 0 ? stage.parts.length : before;
  const trunk = stage.parts.findIndex(({ name }) => name === 'trunk');
  const seamOfTrunk = stage.parts.findIndex(({ name }, index) => index > trunk && name === 'seam');
  const legs = stage.parts.findLastIndex(({ name }) => name === 'front-leg' || name === 'front-leg-left');
  const on = (after: number) =>
    after === seamOfTrunk ? (worn?.trunk ?? []) : after === legs ? (worn?.legs ?? []) : [];
  const neck = hood && coat ? [cloth(neckOf(end, stage.places.chin ?? end))] : [];
  const parts = stage.parts.flatMap((part, index) => [
    ...(index === cut ? [...hangs, ...neck] : []),
    part,
    ...on(index),
  ]);
  const dressed = cut === stage.parts.length ? [...parts, ...hangs] : parts;
  if (hood && body.kind === 'four-legged') {
    const over = hoodParts(hood, { head: bareHead(body.traits, body.sizes), view: side, stage });
    return withParts(stage, underHood(dressed, over, hood.earsOut));
  }
  return withParts(stage, hat ? [...dressed, ...hatParts(hat, stage, side)] : dressed);
}

/** A toy on four legs from its side in a coat: over the trunk, under the legs that are near. */
export function fromSide({ coat, hood }: Clothes, body: Body): Stage {
  const stage = bareStage(body.kind, body.traits, body.sizes, 'side');
  const { napeThread, coatEnd } = stage.places;
  if (!coat || !napeThread || !coatEnd) return stage;
  const scale = (napeThread.x - coatEnd.x) / (body.sizes['back-length']?.value ?? 300);
  const worn = coatFromSide({ ...coat, hood: hood !== null }, stage, (mm) => mm * scale);
  const isNear = ({ name }: Part) => ['hind-leg', 'hind-foot', 'front-leg', 'front-foot'].includes(name);
  const first = stage.parts.findIndex(isNear);
  const last = stage.parts.findLastIndex(isNear);
  const parts = stage.parts.flatMap((part, index) => [
    ...(index === first ? worn.trunk : []),
    part,
    ...(index === last ? worn.legs : []),
  ]);
  return withParts(stage, hood ? underHood(parts, worn.head, hood.earsOut) : parts);
}

/** A hood is drawn last but for ears that come through it; those it covers are bumps of cloth behind all. */
function underHood(parts: readonly Part[], hood: readonly Part[], earsOut: boolean): Part[] {
  const isEar = ({ name }: Part) => name.startsWith('ear');
  const ears = parts.filter(isEar);
  const rest = parts.filter((part) => !isEar(part));
  return earsOut ? [...rest, ...hood, ...ears] : [...coveredEars(ears), ...rest, ...hood];
}

/** Up from the coat to the hood. */
const neckOf = ({ x, y }: Point, chin: Point): Point[] =>
  [point(-1.05 * x, y + 3), point(-x, chin.y - 6), point(x, chin.y - 6), point(1.05 * x, y + 3)].flatMap(corner);

/** Where the table is. */
const groundOf = ({ parts }: Stage): number =>
  Math.max(...parts.filter(({ name }) => name === 'ground').flatMap(({ points }) => points.map(({ y }) => y)));
