import type { Body, MeasureId, Mm } from '../../body';
import type { Draft, FitRow } from '../../drafting/draft-types';

/** What is measured at each place of the fit table. */
const MEASURED: Readonly<Record<string, MeasureId>> = {
  neck: 'neck-girth',
  chest: 'chest-girth',
  tummy: 'body-girth',
  hem: 'hem-girth',
  waist: 'waist-girth',
  hip: 'hip-girth',
  'over-arms': 'over-arms-girth',
  bicep: 'upper-arm-girth',
  armhole: 'arm-root-girth',
  cuff: 'paw-girth',
  face: 'face-edge',
  'hood-depth': 'hood-depth',
  crown: 'crown-arc',
};

/** Another toy has at least this share of room, or as little as the toy it was drawn for. */
const LEAST_ROOM = 0.02;
/** It hangs on no toy by more than this much more than on the one it was drawn for, and by no more than half of this anew. */
const MOST_MORE = 1.15;
const MOST_ROOM = 1.25;

export type Range = { readonly least: Mm; readonly most: Mm };

/** Whether a garment as drafted for `own` can be worn by `other`: room at every place, not much too much, and it goes on. */
export function canWear(draft: Draft, own: Body, other: Body): boolean {
  if (other.kind !== own.kind) return false;
  const fits = draft.fit.every((row) => {
    const measure = MEASURED[row.place];
    const size = measure && other.sizes[measure]?.value;
    if (!measure) return true;
    const { least, most } = rangeOf(row);
    return size !== undefined && size >= least && size <= most;
  });
  return (
    fits &&
    draft.openings.every(({ passes, needs, gives }) => {
      const [mine, theirs] = [own.sizes[passes]?.value, other.sizes[passes]?.value];
      return mine !== undefined && theirs !== undefined && (theirs * needs) / mine <= gives;
    })
  );
}

/** What a place of the garment fits, from the smallest toy to the largest, mm. */
export function rangeOf({ body, garment, ease }: FitRow): Range {
  const loosest = Math.max(MOST_ROOM, (MOST_MORE * garment) / body);
  return { least: garment / loosest, most: garment - Math.min(ease, LEAST_ROOM * body) };
}

/** For a label: the chest it fits (the waist, the neck where there is none), and the largest head that passes. */
export function labelOf(draft: Draft, own: Body): { place: string; range: Range; head: Mm | null } | null {
  const row = ['chest', 'waist', 'neck', 'cuff'].flatMap(
    (place) => draft.fit.find((each) => each.place === place) ?? [],
  )[0];
  const head = own.sizes['head-girth']?.value;
  const passed = draft.openings.filter(({ passes }) => passes === 'head-girth');
  const largest =
    head && passed.length > 0 ? Math.min(...passed.map(({ needs, gives }) => (head * gives) / needs)) : null;
  return row ? { place: row.place, range: rangeOf(row), head: largest } : null;
}
