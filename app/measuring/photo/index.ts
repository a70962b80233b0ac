/**
 * A measured guess from a photograph in which a bank-size card lies in the plane of what is measured: four corners of
 * the card and two points are tapped, and the distance comes with its uncertainty. Straight lengths only: nothing
 * that goes round or over a toy can be seen this way. Pure: pictures are looked at elsewhere.
 */
import { BANK_CARD_MM, type Known, type Mm } from '../../body';
import { distance } from '../../body/point';
import { costOf, type Fit, fitView, type Prior, slopesOf } from './fit';
import { solveLinear } from './linear';
import type { Spot } from './space';
import { laidOn, mirrored, type View, viewOf } from './view';

/** A finger with a magnifying glass, or the keys, hits a point of the picture to about this (px, one standard deviation). */
export const USUAL_TAP_PX = 1.2;

/** Phones' main cameras: 26 mm in terms of 35 mm film (36 × 24 mm), give or take a fifth; from memory. */
const FOCAL_PER_DIAGONAL = 26 / Math.hypot(36, 24);
const FOCAL_SPREAD = 0.2;
/** Taken as it is, or zoomed in twice: beyond that the toy does not fit in. */
const ZOOMS = [1, 2];
/** Held flat-on, but freely: about 20° either way, mostly. */
const LEAN_SPREAD = 0.35;

/** Give is stated at this many standard deviations: nine in ten lie within, some more for what is not modelled (lenses bend lines). */
const GIVE_SPREADS = 2.1;
/** A card seen smaller than this says too little about the rest of the picture. */
const LEAST_CARD_PX = 40;

export type PhotoFault = 'photo.not-a-card' | 'photo.card-too-small';

/** The plane of the card as one photograph shows it, perhaps in two ways that fit nearly alike. */
export type SeenPlane = {
  readonly ok: true;
  readonly middle: Spot;
  readonly tap: number;
  readonly fits: readonly (Fit & { readonly share: number })[];
};

type Picture = { readonly width: number; readonly height: number };

/**
 * Finds the plane from the four corners of the card as tapped, in order round it, either way, from any (px from the
 * picture's upper left). `tap` is how far taps miss, px.
 */
export function seePlane(
  corners: readonly [Spot, Spot, Spot, Spot],
  picture: Picture,
  tap: number = USUAL_TAP_PX,
): SeenPlane | { readonly ok: false; readonly code: PhotoFault } {
  const middle = { x: picture.width / 2, y: picture.height / 2 };
  const taps = corners.map((corner) => from(middle, corner));
  const bends = taps.map((spot, at) => bend(taps[(at + 3) % 4] ?? spot, spot, taps[(at + 1) % 4] ?? spot));
  if (!bends.every((each) => each > 0) && !bends.every((each) => each < 0))
    return { ok: false, code: 'photo.not-a-card' };
  const sides = taps.map((spot, at) => distance(spot, taps[(at + 1) % 4] ?? spot));
  if (Math.min(...sides) < LEAST_CARD_PX) return { ok: false, code: 'photo.card-too-small' };
  const focal = FOCAL_PER_DIAGONAL * Math.hypot(picture.width, picture.height);
  const priors = ZOOMS.map((zoom) => ({
    focal: focal * zoom,
    focalSpread: FOCAL_SPREAD,
    leanSpread: LEAN_SPREAD,
    tap,
  }));
  const cards = layings((bends[0] ?? 0) > 0);
  const fits = priors.flatMap((prior) => fitsOf(cards, taps, prior));
  const best = Math.min(...fits.map((fit) => fit.cost));
  const weights = fits.map((fit) => Math.exp((best - fit.cost) / 2));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const shared = fits.map((fit, at) => ({ ...fit, share: (weights[at] ?? 0) / all }));
  if (shared.length === 0) return { ok: false, code: 'photo.not-a-card' };
  return { ok: true, middle, tap, fits: shared.filter((fit) => fit.share > 0.001) };
}

/**
 * The straight distance between two points tapped in the plane (px from the picture's upper left), marked as from a
 * photo. Null where one lies beyond the plane's horizon. The give covers the taps and the camera; not a toy that bulges
 * out of the card's plane, which reads too large by its height over the camera's distance.
 */
export function distanceOn({ fits, middle, tap }: SeenPlane, first: Spot, second: Spot): Known | null {
  const [a, b] = [from(middle, first), from(middle, second)];
  const readings = fits.flatMap((fit) => {
    const value = distanceIn(fit.view, a, b);
    return value === null ? [] : [{ share: fit.share, value, variance: varianceOf(fit, a, b, tap) }];
  });
  if (readings.length < fits.length || readings.length === 0) return null;
  const value = readings.reduce((sum, each) => sum + each.share * each.value, 0);
  const variance = readings.reduce((sum, each) => sum + each.share * (each.variance + (each.value - value) ** 2), 0);
  return { value, from: 'photo', give: GIVE_SPREADS * Math.sqrt(variance) };
}

const from = (middle: Spot, { x, y }: Spot): Spot => ({ x: x - middle.x, y: y - middle.y });
const bend = (before: Spot, at: Spot, after: Spot) =>
  (at.x - before.x) * (after.y - at.y) - (at.y - before.y) * (after.x - at.x);

/** The card's corners in mm as they may have been tapped: from a long side or from a short one. */
function layings(clockwise: boolean): readonly (readonly Spot[])[] {
  const { width, height } = BANK_CARD_MM;
  return [
    [width, height],
    [height, width],
  ].map(([across = 0, along = 0]) => {
    const ring = [
      { x: 0, y: 0 },
      { x: across, y: 0 },
      { x: across, y: along },
      { x: 0, y: along },
    ];
    return clockwise ? ring : ring.map(({ x, y }) => ({ x: across - x, y }));
  });
}

/** The likeliest view of the likelier laying, and its mirror image, each fitted from where it starts. */
function fitsOf(cards: readonly (readonly Spot[])[], taps: readonly Spot[], prior: Prior): readonly Fit[] {
  const starts = cards.flatMap((card) => {
    const view = viewOf(card, taps, prior.focal);
    return view ? [{ card, view, cost: costOf(view, card, taps, prior) }] : [];
  });
  const [start] = starts.sort((a, b) => a.cost - b.cost);
  if (!start) return [];
  const { card, view } = start;
  const [one, other] = [fitView(view, card, taps, prior), fitView(mirrored(view), card, taps, prior)];
  return apartEnough(one.view, other.view) ? [one, other] : [one.cost <= other.cost ? one : other];
}

const apartEnough = (a: View, b: View) =>
  a.right.some((part, at) => Math.abs(part - (b.right[at] ?? 0)) > 0.01) ||
  a.down.some((part, at) => Math.abs(part - (b.down[at] ?? 0)) > 0.01);

function distanceIn(view: View, a: Spot, b: Spot): Mm | null {
  const [one, other] = [laidOn(view, a), laidOn(view, b)];
  return one && other ? distance(one, other) : null;
}

/** First-order: what the view's looseness and the two taps' own misses do to the distance. */
function varianceOf(fit: Fit, a: Spot, b: Spot, tap: number): number {
  const read = (view: View, p = a, q = b) => distanceIn(view, p, q) ?? 0;
  const slopes = slopesOf((view) => [read(view)], fit.view).map(([slope = 0]) => slope);
  const loose = solveLinear(fit.hold, slopes) ?? slopes.map(() => 0);
  const ofView = slopes.reduce((sum, slope, at) => sum + slope * (loose[at] ?? 0), 0);
  const nudges = [
    { x: 0.5, y: 0 },
    { x: 0, y: 0.5 },
  ];
  const ofTaps = nudges.flatMap(({ x, y }) => {
    const around = (spot: Spot, sign: number) => ({ x: spot.x + sign * x, y: spot.y + sign * y });
    return [
      read(fit.view, around(a, 1)) - read(fit.view, around(a, -1)),
      read(fit.view, a, around(b, 1)) - read(fit.view, a, around(b, -1)),
    ];
  });
  return ofView + tap ** 2 * ofTaps.reduce((sum, slope) => sum + slope ** 2, 0);
}
