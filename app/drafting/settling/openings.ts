import type { Flag, MeasureId, Mm, Traits } from '../../body';
import type { OpeningRow } from '../draft-types';
import type { Drawing } from '../drawing/draw';
import type { AnyNames, Centre, Passage } from '../rows/rows';
import type { Sizes } from '../sizes/maker';
import { passingGirth } from '../sizes/passing';
import type { Wearer } from '../sizes/wearer';

/** A slit's end must not be the tightest place. */
const SLIT_ROOM_MM = 10;
/** A slit over this share of the centre front is better opened all the way. */
const LONGEST_SLIT = 0.6;
/** A slit that is only wished for is this share of the centre front. */
const WISHED_SLIT = 0.3;
const LEAST_SLIT_MM = 20;

/** What is asked of a garment's opening: what must pass, the centre that a slit may run down, what is offered and what was wished. */
export type Ways = {
  readonly passages: readonly Passage<AnyNames>[];
  readonly centre: readonly Centre<AnyNames>[];
  readonly offered: readonly string[];
  readonly wish: string;
  readonly opensAt: 'front' | 'back';
  readonly opensFirmAt: 'front' | 'back';
  /** Small hands: whatever opens, opens all the way. */
  readonly fully: boolean;
  /** What closes it. */
  readonly closedBy: string;
};

export type Opened = {
  readonly opening: string;
  /** Null without a slit. */
  readonly slit: Mm | null;
  readonly rows: readonly OpeningRow[];
  readonly flags: readonly Flag[];
};

/** What passes, by which measure it does so most easily. */
type Passing = {
  readonly passage: Passage<AnyNames>;
  readonly measure: MeasureId;
  readonly needs: Mm;
  readonly gives: Mm;
};

/**
 * Does it go on, does it come off? What must pass, against the smallest openings on the way: stretch counts in full at an
 * open edge and half where it is seamed. Where the maker left it to us and it does not pass, a slit is added, or front or
 * back are opened; nothing stays closed on the word of an estimate. What she chose is kept, and what will not pass is said.
 * With a `drawing` it is the finished edges that count.
 */
export function openingFor(ways: Ways, wearer: Wearer<AnyNames['choices']>, sizes: Sizes, drawing?: Drawing): Opened {
  const { wish, offered } = ways;
  const passings = ways.passages.flatMap((passage) => passingOf(passage, wearer, sizes, drawing) ?? []);
  const centre = Math.max(0, ...ways.centre.map((each) => each.length(sizes)));
  const opens = passings.filter(({ passage }) => passage.opened || passage.slit);
  const guessed = opens.some(({ measure }) => wearer.known(measure).from === 'estimate');
  const tight = opens.filter((each) => each.gives < each.needs);
  const neckOnly = tight.every((each) => each.passage.slit);
  const slitNeeded = Math.max(0, ...tight.map((each) => (each.needs - each.gives) / 2 + SLIT_ROOM_MM));
  const longest = centre * LONGEST_SLIT;
  const room = neckOnly && slitNeeded <= longest && !guessed;
  // What cannot be bent does not get its arms into sleeves through a slit.
  const slits = room && offered.includes('slit') && wearer.traits.stuffing !== 'firm';
  const fully = ways.fully && opens.length > 0;
  const stays = tight.length === 0 && !guessed && !fully;
  const automatic = stays ? 'none' : slits && !fully ? 'slit' : openAllTheWay(ways, wearer.traits);
  const opening = wish === 'auto' ? automatic : wish;
  const wished = Math.max(slitNeeded, centre * WISHED_SLIT, LEAST_SLIT_MM);
  const slit = opening === 'slit' ? Math.min(wished, longest) : null;
  const rows = passings.map((each) => rowOf(each, { opening, slit, closedBy: ways.closedBy }, { wearer, sizes }));
  const blocked = rows.flatMap((row) => (row.gives < row.needs ? [willNotPass(row)] : []));
  return {
    opening,
    slit,
    rows,
    flags: [
      ...notes({
        wish,
        opening,
        slit,
        why: guessed ? 'guess' : fully ? 'hands' : null,
      }),
      ...blocked,
    ],
  };
}

function openAllTheWay({ offered, opensAt, opensFirmAt }: Ways, traits: Traits): string {
  const first = traits.stuffing === 'firm' ? opensFirmAt : opensAt;
  return offered.includes(first) ? first : (offered.find((each) => ['front', 'back'].includes(each)) ?? 'none');
}

/** Null for what only the drawn edge tells, before it is drawn. */
function passingOf(
  passage: Passage<AnyNames>,
  wearer: Wearer<AnyNames['choices']>,
  sizes: Sizes,
  drawing: Drawing | undefined,
): Passing | null {
  const gives = (drawing && passage.drawn?.(drawing)) ?? passage.gives?.(sizes, wearer);
  if (gives === undefined) return null;
  const ways = [passage.measure, ...(passage.or ? [passage.or] : [])].map((measure) => ({
    measure,
    needs: passingGirth(wearer, measure),
  }));
  const { measure, needs } = ways.reduce((least, each) => (each.needs < least.needs ? each : least));
  const stretch = wearer.cloth.stretch * (passage.seamed ? 0.5 : 1);
  return { passage, measure, needs, gives: gives * (1 + stretch) };
}

/** With the front or back open all the way, every place that this opens is as much wider as its row says. */
function rowOf(
  { passage, measure, needs, gives }: Passing,
  { opening, slit, closedBy }: Pick<Opened, 'opening' | 'slit'> & Pick<Ways, 'closedBy'>,
  { wearer, sizes }: { readonly wearer: Wearer<AnyNames['choices']>; readonly sizes: Sizes },
): OpeningRow {
  const opened = ['front', 'back'].includes(opening) ? passage.opened : undefined;
  const through = { passes: measure, through: passage.through, needs };
  if (opened) {
    const whole = typeof passage.whole === 'function' ? passage.whole(sizes) : passage.whole;
    const wide = Math.max(gives + opened(sizes), whole ? needs : 0);
    const { steppedInto } = passage;
    return steppedInto && wide < needs
      ? { ...through, passes: steppedInto, needs: passingGirth(wearer, steppedInto), gives: wide, closure: closedBy }
      : { ...through, gives: wide, closure: closedBy };
  }
  if (passage.slit && slit !== null) return { ...through, gives: gives + 2 * slit, closure: 'slit' };
  return { ...through, gives, closure: 'none' };
}

type Told = Pick<Opened, 'opening' | 'slit'> & {
  readonly wish: string;
  readonly why: 'guess' | 'hands' | null;
};

function notes({ wish, opening, slit, why }: Told): Flag[] {
  return wish === 'auto' && opening !== 'none'
    ? [
        {
          code: why ? `opening-for-${why}` : 'opening-added',
          severity: 'note',
          measures: ['head-girth', 'neck-girth'],
          values: { slit: slit ?? 0 },
        },
      ]
    : [];
}

function willNotPass(row: OpeningRow): Flag {
  return {
    code: 'will-not-pass',
    severity: 'unlikely',
    measures: [row.passes],
    values: { needs: row.needs, gives: row.gives },
  };
}
