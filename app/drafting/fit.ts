import type { Body, SizeId } from '../body';
import type { Adjustment, FitRow } from './draft-types';
import type { Drawing } from './drawing/draw';
import { active, type Garment } from './rows/garment';
import { LEAST_EASE_MM, MOST_OVER } from './sizes/ease';

/** Ease this little under nothing is rounding, mm. */
const ROUNDED_MM = 0.001;

/** Every place of the fit table: the body's girth or length, the garment's, and why it may be under the body. */
export function fitOf(garment: Garment, drawing: Drawing): FitRow[] {
  return placesOf(garment, drawing).map(({ place, measure, garment: finished, why }) => {
    const known = drawing.wearer.known(measure);
    const length = finished(drawing);
    const guessed = known.from === 'estimate' && length - known.value < LEAST_EASE_MM ? 'not-measured' : null;
    const reason = why?.(drawing) ?? guessed;
    return {
      place,
      body: known.value,
      garment: length,
      ease: length - known.value,
      from: known.from,
      ...(reason ? { why: reason } : {}),
    };
  });
}

/** The rows that count for this kind of body. */
function placesOf(garment: Garment, { choices, wearer }: Drawing) {
  return active(garment.fit, choices).filter(({ bodies }) => bodies?.includes(wearer.kind) ?? true);
}

/** Measured girths wider than the fit asked for, each with its reason; what was learnt from trying on is no news. */
export function widerThanAsked(
  garment: Garment,
  drawing: Drawing,
  { corrections }: Pick<Body, 'corrections'>,
): Adjustment[] {
  return placesOf(garment, drawing).flatMap(({ place, measure, garment: finished, asked, because }) => {
    if (!asked || !because || !drawing.wearer.taken(measure)) return [];
    const wanted = asked(drawing);
    const by = finished(drawing) - wanted - (corrections[place as SizeId] ?? 0);
    return by > wanted * MOST_OVER
      ? [{ code: `${place}-wider`, by, because: because(drawing), check: [measure] as const }]
      : [];
  });
}

/** A chest widened beyond this share of what was asked, so that its side reaches what lies below, is no garment for this toy. */
const MOST_WIDENED = 1.75;

/** The chest's row, where its side cannot reach round what lies below but by making a tent of it. */
export function tentOf(garment: Garment, drawing: Drawing): { readonly asked: number; readonly chest: number } | null {
  const row = placesOf(garment, drawing).find(({ place }) => place === 'chest');
  const [asked, chest] = [row?.asked?.(drawing) ?? 0, row?.garment(drawing) ?? 0];
  return row?.because?.(drawing) === 'lean' && chest > asked * MOST_WIDENED ? { asked, chest } : null;
}

/**
 * Places that no garment may have: without any girth, or under the body's without a word why. Always our own fault; but for a
 * body whose corrections were learnt from trying on, which may well take ease away.
 */
export function misfits(fit: readonly FitRow[], { corrections }: Pick<Body, 'corrections'>): readonly FitRow[] {
  const corrected = Object.keys(corrections).length > 0;
  return fit.filter(({ garment, ease, why }) => !(garment > 0) || (ease < -ROUNDED_MM && !why && !corrected));
}
