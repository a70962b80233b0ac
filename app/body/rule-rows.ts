import { mayLieApart } from './apart';
import { type MeasureId, measures } from './measures';
import { type Breach, GEOMETRY, PRACTICE, type Rule, row } from './rule';
import type { Suspicion } from './suspicion';
import { LONGEST_MM, type Mm } from './units';

/** A limit that is a share of a length, but never less than so many mm: a tape slips, fur squashes. */
export type Limit = { readonly share: number; readonly mm: Mm };
export const limitOf = ({ share, mm }: Limit, whole: Mm) => Math.max(share * whole, mm);

export const notALength: Rule = {
  code: 'not-a-length',
  severity: 'impossible',
  measures: [],
  why: 'zero, below zero, not a number or over 3 m is no measure of a toy',
  source: GEOMETRY,
  broken: ({ sizes }) =>
    measures.flatMap(({ id }): Breach[] => {
      const value = sizes[id]?.value;
      const fine = value === undefined || (value > 0 && value <= LONGEST_MM);
      return fine ? [] : [{ measures: [id], values: { value } }];
    }),
};

export const readingsApart: Rule = {
  code: 'readings-apart',
  severity: 'unlikely',
  measures: [],
  why: 'two readings of one measure should agree; a third decides',
  source: PRACTICE,
  broken: (_, { readings = {} }) =>
    measures.flatMap(({ id }): Breach[] => {
      const [first, second, ...more] = readings[id] ?? [];
      if (first === undefined || second === undefined || more.length > 0) return [];
      const apart = Math.abs(first - second);
      return apart > mayLieApart((first + second) / 2) ? [{ measures: [id], values: { first, second, apart } }] : [];
    }),
};

/** What the proportions of the other readings speak against, by the code of the suspicion. */
export function suspected(code: Suspicion['code']): Rule {
  return {
    code,
    severity: 'unlikely',
    measures: [],
    why: 'the other readings agree with each other, and not with this one',
    source: `proportions of the builds, as each says; ${PRACTICE}`,
    suspects: true,
    broken: ({ sizes }, { suspicions }) =>
      suspicions
        .filter((suspicion) => suspicion.code === code)
        .map(({ measures: ids, offers: [offer, otherOffer], expected }) => ({
          measures: ids,
          values: {
            value: (ids[0] && sizes[ids[0]]?.value) ?? 0,
            expected,
            ...(offer !== undefined && { offer }),
            ...(otherOffer !== undefined && { otherOffer }),
          },
        })),
  };
}

/** A part is less than the whole it is a part of. */
export const partOver = (code: string, part: MeasureId, whole: MeasureId): Rule =>
  row(
    code,
    'impossible',
    [part, whole],
    'a part is less than its whole',
    GEOMETRY,
    ([one, all]) => one >= all && { part: one, whole: all },
  );

export const rulerOver = (ruler: MeasureId, girth: MeasureId): Rule =>
  row(
    'ruler-over-half-girth',
    'impossible',
    [ruler, girth],
    'a closed loop is at least twice any straight line across it',
    GEOMETRY,
    ([across, round]) => across > round / 2 && { across, girth: round },
  );

export const hemTakesAll = (id: MeasureId): Rule =>
  row(
    'hem-takes-all',
    'impossible',
    [id],
    'a hem no shorter than the piece leaves nothing of it',
    GEOMETRY,
    ([length], { hemAllowance }) => length <= hemAllowance && { length, hem: hemAllowance },
  );

export const widthsOff = (severity: 'impossible' | 'unlikely', limit: Limit): Rule =>
  row(
    'widths-off-girth',
    severity,
    ['front-width', 'back-width', 'body-girth'],
    'front and back together are the girth; the girth governs, the widths share it',
    `${GEOMETRY}; the limit is ${PRACTICE}`,
    ([front, back, girth]) => {
      const off = Math.abs(front + back - girth);
      return off > limitOf(limit, girth) && { front, back, girth, off };
    },
  );

/** Something narrower or shorter than can be sewn. */
export const tooSmall = (code: string, severity: 'unlikely' | 'note', id: MeasureId, least: Mm): Rule =>
  row(code, severity, [id], 'smaller can hardly be sewn', PRACTICE, ([size]) => size < least && { size, least });
