import type { Body, BodyKind, Known, MeasureId, Mm, Scale, Traits } from '../../body';
import { beneath } from './beneath';
import type { Cloth } from './cloths';
import { easedGirth, easedLength, LEAST_EASE_MM } from './ease';

/** A body as the size makers see it: its measures, the choices, the fit and the cloth, ready to be eased. */
export type Wearer<C extends object = object> = {
  readonly kind: BodyKind;
  readonly traits: Traits;
  readonly cloth: Cloth;
  readonly share: number;
  readonly choices: C;
  /** What is the same on every toy of about this size: how wide hems, strips and laps are sewn. */
  readonly scale: Scale;
  /** Hem allowance at a straight edge, mm: what a side or sleeve must at least leave room for. */
  readonly hem: Mm;
  /** What of a soft part's girth an opening has to give when it is pushed through. */
  readonly softPass: number;
  /** How thick the cloth of what is worn beneath is, mm; 0 over nothing. */
  readonly beneath: Mm;
  /** A measure as it was taken. */
  readonly known: (id: MeasureId) => Known;
  /** The same over what is worn beneath. */
  readonly of: (id: MeasureId) => Mm;
  readonly taken: (id: MeasureId) => boolean;
  /** Eased girth of a measure; `seams` lengthwise seams cross it. */
  readonly girth: (id: MeasureId, seams: number, least?: Mm) => Mm;
  readonly surface: (id: MeasureId, least?: Mm) => Mm;
};

type Settings<C extends object> = Pick<Wearer<C>, 'cloth' | 'share' | 'choices' | 'scale' | 'hem' | 'softPass'> & {
  readonly beneath?: Mm;
};

/**
 * Throws a RangeError for a measure that the garment's `needs` do not name, or the body lacks: what is drafted from must be
 * what was asked for.
 */
export function wearerOf<C extends object>(
  body: Pick<Body, 'kind' | 'traits' | 'sizes'>,
  needed: ReadonlySet<MeasureId>,
  settings: Settings<C>,
): Wearer<C> {
  const asked = (id: MeasureId) => {
    if (!needed.has(id)) throw new RangeError(`measure not among the needs: ${id}`);
    return body.sizes[id];
  };
  const known = (id: MeasureId): Known => {
    const found = asked(id);
    if (!found) throw new RangeError(`measure not known: ${id}`);
    return found;
  };
  const thick = settings.beneath ?? 0;
  const over = (id: MeasureId) => beneath(id, thick);
  const of = (id: MeasureId) => known(id).value + over(id);
  return {
    ...settings,
    beneath: thick,
    kind: body.kind,
    traits: body.traits,
    known,
    of,
    taken: (id) => ['tape', 'photo'].includes(asked(id)?.from ?? ''),
    girth: (id, seams, least = LEAST_EASE_MM) =>
      easedGirth(known(id).value, settings.share, settings.cloth, least, seams) + over(id),
    surface: (id, least = LEAST_EASE_MM) => easedLength(of(id), settings.share, least),
  };
}
