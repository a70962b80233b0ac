import type { Body } from './body';
import type { Flag } from './flag';
import { type MeasureId, measures } from './measures';
import type { Breach, Rule, RuleContext } from './rule';
import { LONGEST_MM, type Mm } from './units';

/** A side seam shorter than this under the armhole cannot be sewn (common practice, no source). */
const LEAST_SIDE_MM = 10;
/** Front and back may miss the girth by this before one of the three must be wrong: a tape slips, fur squashes. */
const WIDTHS_OFF_SHARE = 0.2;
const WIDTHS_OFF_MM = 20;

const geometry = 'geometry';
const practice = 'common practice, no source';

/** Ruler measures and the girth they lie in: a closed loop is at least twice any straight line across it. */
const rulersIn: readonly (readonly [MeasureId, MeasureId])[] = [
  ['armhole-depth', 'arm-root-girth'],
  ['side-inset', 'chest-girth'],
];

/** The rule table, impossible first. Adding a row adds a flag; its words are `flag.<code>` in locales. */
export const rules: readonly Rule[] = [
  {
    code: 'not-a-length',
    severity: 'impossible',
    measures: [],
    why: 'zero, below zero, not a number or over 3 m is no measure of a toy',
    source: geometry,
    broken: (body) =>
      measures.flatMap(({ id }): Breach[] => {
        const value = body.sizes[id]?.value;
        const fine = value === undefined || (value > 0 && value <= LONGEST_MM);
        return fine ? [] : [{ measures: [id], values: { value } }];
      }),
  },
  {
    code: 'armhole-takes-side',
    severity: 'impossible',
    measures: ['armhole-depth', 'body-length'],
    why: 'below the armhole there must be room for a side seam and the hem',
    source: practice,
    broken: (body, { hemAllowance }) =>
      compare(body, ['body-length', 'armhole-depth'], (length, depth) => {
        const side = length - depth;
        const least = hemAllowance + LEAST_SIDE_MM;
        return side < least && { length, depth, side, least };
      }),
  },
  ...(['front-width', 'back-width'] as const).map(
    (width): Rule => ({
      code: 'width-over-girth',
      severity: 'impossible',
      measures: [width, 'body-girth'],
      why: 'the width is a part of the girth',
      source: geometry,
      broken: (body) => compare(body, [width, 'body-girth'], (part, girth) => part >= girth && { width: part, girth }),
    }),
  ),
  {
    code: 'widths-off-girth',
    severity: 'impossible',
    measures: ['front-width', 'back-width', 'body-girth'],
    why: 'front and back together are the girth',
    source: `geometry; the limit is ${practice}`,
    broken: (body) =>
      compare(body, ['front-width', 'back-width', 'body-girth'], (front, back, girth) => {
        const off = Math.abs(front + back - girth);
        return off > Math.max(WIDTHS_OFF_SHARE * girth, WIDTHS_OFF_MM) && { front, back, girth, off };
      }),
  },
  ...rulersIn.map(
    ([ruler, girth]): Rule => ({
      code: 'ruler-over-half-girth',
      severity: 'impossible',
      measures: [ruler, girth],
      why: 'a closed loop is at least twice any straight line across it',
      source: geometry,
      broken: (body) =>
        compare(body, [ruler, girth], (across, round) => across > round / 2 && { across, girth: round }),
    }),
  ),
  {
    code: 'neckline-under-hem',
    severity: 'impossible',
    measures: ['front-neck-drop', 'body-length'],
    why: 'the neckline must end above the hem',
    source: geometry,
    broken: (body, { hemAllowance }) =>
      compare(body, ['front-neck-drop', 'body-length'], (drop, length) => {
        const least = hemAllowance + LEAST_SIDE_MM;
        return length - drop < least && { drop, length, least };
      }),
  },
  ...(['body-length', 'back-body-length', 'side-length'] as const).map((id) => hemTakesAll(id, 'hemAllowance')),
  ...(['arm-length'] as const).map((id) => hemTakesAll(id, 'cuffAllowance')),
];

function hemTakesAll(id: MeasureId, allowance: 'hemAllowance' | 'cuffAllowance'): Rule {
  return {
    code: 'hem-takes-all',
    severity: 'impossible',
    measures: [id],
    why: 'a hem no shorter than the piece leaves nothing of it',
    source: geometry,
    broken: (body, context) =>
      compare(body, [id], (length) => length <= context[allowance] && { length, hem: context[allowance] }),
  };
}

/** Hands the values of measures to `check` where all are known; its numbers, if any, are a breach. */
function compare(
  body: Body,
  ids: readonly MeasureId[],
  check: (...values: [Mm, Mm, Mm]) => Flag['values'] | false,
): readonly Breach[] {
  const [first, second = 0, third = 0] = ids.map((id) => body.sizes[id]?.value ?? Number.NaN);
  if (first === undefined || ids.some((id) => !body.sizes[id])) return [];
  const values = check(first, second, third);
  return values ? [{ values }] : [];
}

const usualContext: RuleContext = { hemAllowance: 12, cuffAllowance: 12 };

/**
 * Everything about a body's numbers worth saying, worked out anew each time, impossible first. `context` is what the
 * order says of hems; `context.measures` limits the judgement to what a garment uses.
 */
export function flagsOf(body: Body, context: Partial<RuleContext> = {}): readonly Flag[] {
  const whole = { ...usualContext, ...context };
  const judged = (ids: readonly MeasureId[]) => ids.every((id) => body.sizes[id] && (whole.measures?.has(id) ?? true));
  const told = (ids: readonly MeasureId[]) => ids.some((id) => body.sizes[id]?.from !== 'estimate');
  const certain = (ids: readonly MeasureId[]) => ids.every((id) => body.sizes[id]?.from !== 'estimate');
  return rules.flatMap(({ code, severity, broken, measures: usual }) =>
    broken(body, whole).flatMap(({ measures: ids = usual, values }): Flag[] =>
      judged(ids) && (severity === 'impossible' ? certain(ids) : told(ids))
        ? [{ code, severity, measures: ids, values }]
        : [],
    ),
  );
}
