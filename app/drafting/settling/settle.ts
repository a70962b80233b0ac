import type { Body, Flag } from '../../body';
import type { Adjustment } from '../draft-types';
import type { Choices } from '../heads';
import { active, type Garment } from '../rows/garment';
import { finishedSizes } from '../sizes/finished';
import type { Sizes } from '../sizes/maker';
import type { Wearer } from '../sizes/wearer';
import { type Matched, match } from './match';
import { type Opened, openingFor, type Ways } from './openings';

/** Making it another way can call for another way again; no garment goes round more often. */
const MOST_CHANGES = 8;
/** Slits this nearly as long are one. */
const SLIT_ALIKE_MM = 0.01;

export type SettledGarment = {
  readonly matched: Matched;
  readonly opened: Opened;
  readonly adjustments: readonly Adjustment[];
  readonly stopped: readonly Flag[];
};

/** The choices as asked, but for those that make no sense for this toy; and what is said of the change. */
export function suit(
  garment: Garment,
  asked: Choices,
  { kind, traits }: Pick<Body, 'kind' | 'traits'>,
): Pick<SettledGarment, 'adjustments'> & { choices: Choices } {
  const rows = garment.unsuited.filter((row) => asked[row.choice] === row.from && row.when(traits, asked, kind));
  return {
    choices: { ...asked, ...Object.fromEntries(rows.map((row) => [row.choice, row.to])) },
    adjustments: rows.flatMap(({ code, choice }) => (code ? [{ code, by: 0, because: choice, check: [] }] : [])),
  };
}

/**
 * Settles what the maker left to us: sizes, then the opening, then the seams; made another way, from the start, wherever
 * one of the garment's rows says that another way is better.
 */
export function settleGarment(
  garment: Garment,
  asked: Choices,
  dress: (choices: Choices) => Wearer<Choices>,
  corrections: Body['corrections'],
): SettledGarment {
  const changes: Adjustment[] = [];
  let choices: Choices = Object.fromEntries(
    Object.entries(asked).map(([name, value]) => [name, value === 'auto' ? (garment.auto[name] ?? value) : value]),
  );
  for (let round = 0; ; round++) {
    const made = finishedSizes(dress(choices), active(garment.sizes, choices), corrections);
    const { opened, matched } = opensAndMatches(garment, { choices, asked, sizes: made.sizes }, dress);
    const change = garment.instead.find(
      (row) =>
        choices[row.choice] === row.from &&
        (asked[row.choice] === 'auto' || !row.onlyAuto) &&
        row.when(matched.drawing, matched.failed?.what ?? null),
    );
    if (!change || round === MOST_CHANGES) {
      const adjustments = [...changes, ...made.adjustments, ...matched.adjustments];
      return { matched, opened, adjustments, stopped: made.stops };
    }
    choices = { ...choices, [change.choice]: change.to };
    changes.push({
      code: change.code,
      by: 0,
      because: change.because ?? change.choice,
      check: change.check,
    });
  }
}

/** Opened as its sizes ask for, its seams matched; and once more where its finished edges turn out narrower. */
function opensAndMatches(
  garment: Garment,
  { choices, asked, sizes }: { choices: Choices; asked: Choices; sizes: Sizes },
  dress: (choices: Choices) => Wearer<Choices>,
): Pick<SettledGarment, 'opened' | 'matched'> {
  const ways = waysOf(garment, choices, asked);
  const made = ({ opening, slit }: Opened) =>
    match(garment, { wearer: dress({ ...choices, ...(garment.choices.opening ? { opening } : {}) }), slit }, sizes);
  const first = openingFor(ways, dress(choices), sizes);
  const matched = made(first);
  const opened = openingFor(ways, dress(choices), sizes, matched.drawing);
  const wider = opened.opening !== first.opening || (opened.slit ?? 0) > (first.slit ?? 0) + SLIT_ALIKE_MM;
  return { opened, matched: wider ? made(opened) : matched };
}

/** How a garment may be opened, with these choices: the opening itself as it was asked for. */
function waysOf(garment: Garment, choices: Choices, asked: Choices): Ways {
  const wish = String(asked.opening ?? 'none');
  const offered = garment.choices.opening;
  const settled = { ...choices, opening: wish };
  return {
    passages: active(garment.passages, settled),
    centre: active(garment.centre, settled),
    offered: offered?.kind === 'one' ? offered.of : [],
    wish,
    opensAt: garment.opensAt ?? 'front',
    opensFirmAt: garment.opensFirmAt ?? garment.opensAt ?? 'front',
    fully: choices.dresser === 'small-child',
    closedBy: String(choices.closedBy ?? 'hook-and-loop'),
  };
}
