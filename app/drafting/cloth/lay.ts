import type { Mm } from '../../body';
import { distance, type Point, rotate, shrunk } from '../geometry';
import {
  type Fitted,
  type Found,
  type Place,
  packFields,
  packStrip,
  type Ring,
  ROUNDING_MM,
  ringArea,
  type Shape,
  type Stock,
  type Strip,
  shapeOf,
  stockOf,
} from '../packing';
import type { Cut } from './cuts';
import { numbersOf, spotOn } from './numbers';
import { outsideOf } from './outside';

/** Scissors pass between two pieces, mm (common practice, no source). */
const BETWEEN_MM = 2;

/** Outlines are followed from outside within this, mm: hardly wider than a chalk line. */
const SLACK_MM = 0.4;

/** A scrap's outline with its grain along x, none of it left of or above 0. `give`: how far off it may be, mm. */
type Scrap = { readonly scrap: Ring; readonly give?: Mm };

/**
 * What the cloth is: sold by its width, or a scrap. `nap`: all pieces lie the same way. What is laid on a scrap lies on it
 * wherever its edge is within its give, and what cannot lie on it cannot anywhere within.
 */
export type Stuff = ({ readonly width: Mm } | Scrap) & { readonly nap: boolean };

/**
 * A cut on the cloth: its outline where it lies, x along the grain from one end, y from one selvage, mm. Copies of a piece
 * share a `number`, and `spot` is where on the cut it may be written.
 */
export type LaidCut = {
  readonly cut: Cut;
  readonly number: number;
  readonly turned: boolean;
  readonly outline: readonly Point[];
  readonly spot: Point;
};

/**
 * `fits`: with the lay and the length it takes. `cannot`: more area than there is, or a piece longer or wider than the
 * cloth. `searching`: not found so far, `left` had no room; when the search ends there, the answer is not found.
 */
export type Answer =
  | { readonly kind: 'fits'; readonly length: Mm; readonly laid: readonly LaidCut[] }
  | { readonly kind: 'cannot'; readonly why: 'area' | 'size'; readonly cut: Cut }
  | { readonly kind: 'searching'; readonly left: readonly Cut[] };

/** Answers that only get better, the first at once; stop asking when it takes too long. Same seed, same answers. */
export function* layOnCloth(cuts: readonly Cut[], stuff: Stuff, seed: number): Generator<Found<Answer>, void, void> {
  const impossible = cannot(cuts, stuff);
  if (impossible) return yield { steps: 0, best: impossible };
  const outlines = [...new Set(cuts.map(({ outline }) => outline))];
  const turns = stuff.nap ? [0] : [0, Math.PI];
  const own = outlines.flatMap((outline) => turns.map((turn) => outline.map((p) => rotate(p, turn))));
  const sure = 'scrap' in stuff ? sureOf(stuff) : [];
  if ('scrap' in stuff && sure.length === 0) return yield { steps: 0, best: { kind: 'searching', left: cuts } };
  const around = outsideOf(sure);
  const shapes = [...own.map((ring) => shapeOf([ring], SLACK_MM)), ...around.map((ring) => shapeOf([ring], 0))];
  const stock = stockOf(shapes, BETWEEN_MM);
  const pieces = cuts.map(({ outline }) => {
    const first = outlines.indexOf(outline) * turns.length;
    return { turns: turns.map((_, turn) => first + turn) };
  });
  const fixed = around.map((_, index) => placeOf(stock, own.length + index));
  const numbers = numbersOf(cuts);
  const spots = outlines.map(spotOn).flatMap((spot) => turns.map((turn) => rotate(spot, turn)));
  const laid = (places: readonly Place[]): readonly LaidCut[] =>
    places.map((place, index) => {
      const [spot = { x: 0, y: 0 }, ...outline] = movedTo(stock, place, [
        spots[place.shape] as Point,
        ...(own[place.shape] as Ring),
      ]);
      const turned = place.shape !== pieces[index]?.turns[0];
      return { cut: cuts[index] as Cut, number: numbers[index] ?? 0, turned, outline, spot };
    });
  const search: Generator<Found<Strip | Fitted>, void, void> = 'scrap' in stuff
    ? packFields({ stock, pieces, fixed }, [boxOf(sure)], seed)
    : packStrip({ stock, pieces }, stuff.width, seed);
  let [before, answer]: [Strip | Fitted | undefined, Answer] = [undefined, { kind: 'searching', left: cuts }];
  for (const { steps, best } of search) {
    if (best !== before) answer = answerOf(best, laid, cuts);
    before = best;
    yield { steps, best: answer };
  }
}

function answerOf(
  best: Strip | Fitted,
  laid: (places: readonly Place[]) => readonly LaidCut[],
  cuts: readonly Cut[],
): Answer {
  if (!best.places)
    return { kind: 'searching', left: 'left' in best ? best.left.map((index) => cuts[index] as Cut) : [] };
  const outlines = laid(best.places);
  const ends = outlines.flatMap(({ outline }) => outline.map((p) => p.x));
  return { kind: 'fits', length: 'length' in best ? best.length : Math.max(0, ...ends), laid: outlines };
}

/** What can be known before any search: a piece longer or wider than the cloth, or more area than there is. */
function cannot(cuts: readonly Cut[], stuff: Stuff): Answer | undefined {
  const give = ('scrap' in stuff && stuff.give) || 0;
  const room = 'scrap' in stuff ? sizeOf(stuff.scrap) : { length: Infinity, width: stuff.width };
  const tooLarge = cuts.find(({ outline }) => {
    const size = sizeOf(outline);
    return size.length > room.length + 2 * give + ROUNDING_MM || size.width > room.width + 2 * give + ROUNDING_MM;
  });
  if (tooLarge) return { kind: 'cannot', why: 'size', cut: tooLarge };
  const area = cuts.map(({ outline }) => Math.abs(ringArea(outline)));
  const there =
    'scrap' in stuff ? Math.abs(ringArea(stuff.scrap)) + give * (roundOf(stuff.scrap) + Math.PI * give) : Infinity;
  const largest = cuts[area.indexOf(Math.max(...area))];
  const whole = area.reduce((sum, each) => sum + each, 0);
  return largest && whole > there ? { kind: 'cannot', why: 'area', cut: largest } : undefined;
}

/** What of a scrap is cloth for certain; nothing where all of it may be off. */
const sureOf = ({ scrap, give = 0 }: Scrap): Ring => (give > 0 ? shrunk(scrap, give) : scrap);

const roundOf = (ring: Ring): Mm =>
  ring.reduce((sum, p, index) => sum + distance(p, ring[(index + 1) % ring.length] ?? p), 0);

function sizeOf(ring: Ring): { readonly length: Mm; readonly width: Mm } {
  const { left, top, right, bottom } = boxOf(ring);
  return { length: right - left, width: bottom - top };
}

function boxOf(ring: Ring) {
  const [xs, ys] = [ring.map((p) => p.x), ring.map((p) => p.y)];
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** Where a shape lies that is not moved. */
function placeOf({ shapes }: Stock, shape: number): Place {
  const { left, top } = shapes[shape] as Shape;
  return { shape, x: left, y: top };
}

function movedTo({ shapes }: Stock, { shape, x, y }: Place, ring: Ring): readonly Point[] {
  const { left, top } = shapes[shape] as Shape;
  return ring.map((p) => ({ x: p.x - left + x, y: p.y - top + y }));
}
