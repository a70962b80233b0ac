// The plane of the card as one photograph shows it.

import { BANK_CARD_MM } from '../../body';
import { distance, subtract } from '../../body/point';
import { costOf, type Fit, fitView, type Prior } from './fit';
import type { Spot } from './space';
import { mirrored, type View, viewOf } from './view';

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
export const GIVE_SPREADS = 2.1;
/** A card seen smaller than this says too little about the rest of the picture. */
const LEAST_CARD_PX = 40;
const CORNERS = 4;
/** A view so much less likely than the likeliest is passed over. */
const LEAST_SHARE = 0.001;

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
  corners: readonly Spot[],
  picture: Picture,
  tap: number = USUAL_TAP_PX,
): SeenPlane | { readonly ok: false; readonly code: PhotoFault } {
  const middle = { x: picture.width / 2, y: picture.height / 2 };
  if (corners.length !== CORNERS) return { ok: false, code: 'photo.not-a-card' };
  const taps = corners.map((corner) => subtract(corner, middle));
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
  const weighed = fits.map((fit) => ({ ...fit, share: Math.exp((best - fit.cost) / 2) }));
  const likely = weighed.filter((fit) => fit.share > LEAST_SHARE);
  const all = likely.reduce((sum, { share }) => sum + share, 0);
  if (likely.length === 0) return { ok: false, code: 'photo.not-a-card' };
  return { ok: true, middle, tap, fits: likely.map((fit) => ({ ...fit, share: fit.share / all })) };
}

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
