/**
 * Toys dressed: what a draft looks like worn, drawn on this toy's own figure from the draft's finished sizes. Shapes as
 * data; no colours, no words, no page, and no picture of any one garment: whatever has these pieces is drawn.
 */
import type { Body } from '../body';
import type { Draft } from '../drafting/draft-types';
import {
  bareUpright,
  type Figure,
  type Frame,
  type Part,
  type Stage,
  stagePicture,
  stageSpots,
  WIDE,
  withParts,
} from '../measuring/figure';
import { bandParts } from './band';
import type { Clothes } from './clothes';
import { hatParts } from './hat';
import { coveredEars, hoodParts } from './hood';
import { hungParts } from './hung';
import { legParts } from './legs';
import { fromSide, notUpright } from './not-upright';
import { outfitOf } from './outfit-of';
import { skirtParts } from './skirt';
import { sleeveParts, wristParts } from './sleeve';
import { sockParts } from './sock';
import { gathersUnder, topParts } from './top';
import { hemOf, type Wearer, wearerOf } from './wearer';

type End = 'front' | 'back';
export type Side = End | 'side';

/** The two sides a toy is shown from, the one that says most first: a coat on four legs from its side, if nothing else is worn. */
export function sidesOf(body: Body, draft: Draft | null): readonly [Side, Side] {
  const { coat, hung, hat } = draft ? outfitOf(draft, body) : NOTHING;
  return coat && !hung && !hat ? ['side', 'front'] : ['front', 'back'];
}

/** The toy in what a draft makes, seen from one side; bare without one. `body` is the one it was drafted for. */
export function dressed(body: Body, draft: Draft | null, side: Side, frame: Frame = WIDE): Figure {
  const clothes = draft ? outfitOf(draft, body) : NOTHING;
  return stagePicture(stageOf(clothes, body, side), side, frame);
}

/** Where the places that trying on speaks of lie in that picture from the front, in its frame's units; the hem where the cloth ends. */
export function dressedSpots(body: Body, draft: Draft | null, frame: Frame): ReturnType<typeof stageSpots> {
  const stage = stageOf(draft ? outfitOf(draft, body) : NOTHING, body, 'front');
  const ends = stage.parts
    .filter(({ look }) => look === 'cloth')
    .flatMap(({ points }) => points.filter(({ x }) => Math.abs(x) < NEAR_MIDDLE).map(({ y }) => y));
  const { hem } = stage.places;
  const places = hem && ends.length > 0 ? { ...stage.places, hem: { ...hem, y: Math.max(...ends) } } : stage.places;
  return stageSpots({ ...stage, places }, frame);
}

/** In toy units: within the trunk, where no sleeve hangs. */
const NEAR_MIDDLE = 40;

function stageOf(clothes: Clothes, body: Body, side: Side): Stage {
  if (side === 'side') return fromSide(clothes, body);
  return body.kind === 'upright' ? uprightIn(clothes, body, side) : notUpright(clothes, body, side);
}

/** A hem this far down the trunk lies over a sitting toy's legs, one higher up behind them. */
const LAP = 0.93;

const NOTHING: Clothes = {
  top: null,
  band: null,
  sleeve: null,
  hood: null,
  hat: null,
  skirt: null,
  legs: null,
  hung: null,
  wrist: null,
  coat: null,
  sock: null,
  tunic: null,
};

/** What a garment lays over each of the toy's parts. */
type Layers = {
  readonly [L in 'arms' | 'trunk' | 'legs' | 'feet' | 'lap' | 'neck' | 'head']: readonly Part[];
};

function uprightIn(clothes: Clothes, body: Body, side: End): Stage {
  const wearer = wearerOf(bareUpright(body.traits, body.sizes, side));
  const { stage } = wearer;
  const layers = layersOf(clothes, wearer);
  const parts = clothes.hood ? hooded(stage.parts, clothes.hood.earsOut) : stage.parts;
  return withParts(stage, laid(parts, layers));
}

function layersOf({ top, band, sleeve, hood, hat, skirt, legs, hung, wrist, sock }: Clothes, wearer: Wearer): Layers {
  const { form } = wearer;
  const worn = band ? bandParts(band, wearer) : null;
  const hem = top ? hemOf(wearer, top.levels.at(-1)?.down ?? 0) : form.waistHeight;
  const waist = worn?.low ?? hem;
  const trousers = legs ? legParts(legs, waist, wearer) : null;
  const shirt = top
    ? topParts(top, { sleeved: sleeve !== null, raglan: sleeve?.raglan ?? false, hooded: hood !== null }, wearer)
    : [];
  const under = skirt ? skirtParts(skirt, waist, wearer) : [];
  const gathers = skirt?.falls === 'gathers' && !skirt.band ? gathersUnder(wearer.trunkAt(waist), waist, 8) : [];
  const bodice = [...shirt, ...(worn?.parts ?? [])];
  const overLap = skirt !== null || hem > LAP * form.trunkHeight;
  return {
    arms: [...(sleeve ? sleeveParts(sleeve, wearer) : []), ...(wrist ? wristParts(wrist, wearer) : [])],
    legs: trousers?.tubes ?? [],
    feet: sock ? sockParts(sock, wearer) : [],
    trunk: [...(trousers?.seat ?? []), ...(overLap ? [] : bodice)],
    lap: overLap ? [...under, ...gathers, ...bodice] : [],
    neck: hung ? hungParts(hung, neckOf(wearer)) : [],
    head: [
      ...(hood ? hoodParts(hood, { ...wearer, head: form.head }) : []),
      ...(hat ? hatParts(hat, wearer.stage, wearer.view) : []),
    ],
  };
}

function neckOf({ form, down, half, legs, view }: Wearer) {
  const { neckHalf, shoulderHalf, armRootHalf, trunkHeight } = form;
  return {
    crease: 0,
    half: neckHalf,
    shoulder: shoulderHalf + 1.6 * armRootHalf,
    down,
    round: half,
    lowest: trunkHeight,
    ground: legs.ground,
    view,
  };
}

const at = (parts: readonly Part[], names: readonly string[]): number =>
  parts.findLastIndex(({ name }) => names.includes(name));

/** Clothes among the toy's parts: each layer after what it lies on, before what it goes under. */
function laid(parts: readonly Part[], layers: Layers): Part[] {
  const head = parts.findIndex(({ name }) => name === 'head');
  const trunk = at(parts.slice(0, head), ['trunk', 'edge', 'seam']);
  const places: readonly (readonly [number, readonly Part[]])[] = [
    [at(parts, ['arm', 'arm-left', 'pad']), layers.arms],
    [at(parts, ['leg', 'leg-left']), layers.legs],
    [at(parts, ['leg', 'leg-left', 'foot', 'foot-left', 'foot-pad']), layers.feet],
    [trunk, layers.trunk],
    [Math.max(trunk, at(parts, ['leg', 'leg-left', 'leg-seam', 'tail'])), layers.lap],
    [head - 1, layers.neck],
    [parts.length - 1, layers.head],
  ];
  return parts.flatMap((part, index) => [
    part,
    ...places.flatMap(([after, clothes]) => (after === index ? clothes : [])),
  ]);
}

/** Ears under a hood are bumps of cloth behind it; ears through it are drawn last. */
function hooded(parts: readonly Part[], out: boolean): Part[] {
  const isEar = ({ name }: Part) => name.startsWith('ear');
  const rest = parts.filter((part) => !isEar(part));
  const ears = parts.filter(isEar);
  return out ? [...rest, ...ears] : [...coveredEars(ears), ...rest];
}
