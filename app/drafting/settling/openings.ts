import type { Flag, Mm } from '../../body';
import type { OpeningRow } from '../draft-types';
import { active, type Garment, type Passage } from '../rows/garment';
import type { Sizes, Wearer } from '../sizes/wearer';

/** Soft stuffing gives way by about a tenth; a firm head passes only with room to spare (common practice, no source). */
const SOFT_PASS = 0.9;
const FIRM_ROOM_MM = 5;
/** A slit's end must not be the tightest place. */
const SLIT_ROOM_MM = 10;
/** A slit over this share of the centre front is better opened all the way. */
const LONGEST_SLIT = 0.6;
/** A slit that is only wished for is this share of the centre front. */
const WISHED_SLIT = 0.3;
const LEAST_SLIT_MM = 20;

export type Opened = {
  readonly opening: string;
  readonly slitLength: Mm;
  readonly rows: readonly OpeningRow[];
  readonly flags: readonly Flag[];
};

type Passing = { readonly passage: Passage; readonly needs: Mm; readonly gives: Mm };

/**
 * Does it go on, does it come off? What must pass, against the smallest openings on the way: stretch counts in full at an
 * open edge and half where it is seamed. Where the maker left it to us and it does not pass, a slit is added, or the
 * front is opened; what she chose is kept, and what will not pass is said.
 */
export function openingFor(garment: Garment, wearer: Wearer, sizes: Sizes): Opened {
  const passings = active(garment.passages, wearer.choices).map((passage) => passingOf(passage, wearer, sizes));
  const wish = String(wearer.choices.opening ?? 'none');
  const centre = (sizes.frontLength ?? sizes.bandHeight ?? 0) - (sizes.frontNeckDrop ?? 0);
  const whole = centre + (sizes.skirtOpen ?? 0);
  const tight = passings.filter((each) => each.gives < each.needs);
  const neckOnly = tight.every((each) => each.passage.atNeck);
  const slitNeeded = Math.max(0, ...tight.map((each) => (each.needs - each.gives) / 2 + SLIT_ROOM_MM));
  const longest = centre * LONGEST_SLIT;
  const slits = neckOnly && slitNeeded <= longest && offers(garment).includes('slit');
  const automatic = tight.length === 0 ? 'none' : slits ? 'slit' : openAllTheWay(garment, wearer);
  const opening = wish === 'auto' ? automatic : wish;
  const wished = Math.max(slitNeeded, centre * WISHED_SLIT, LEAST_SLIT_MM);
  const slitLength = opening === 'slit' ? Math.min(wished, longest) : 0;
  const rows = passings.map((each) => rowOf(each, opening, slitLength, whole));
  const blocked = rows.flatMap((row, index) => (row.gives < row.needs ? [willNotPass(row, passings[index])] : []));
  return { opening, slitLength, rows, flags: [...notes(wish, opening, slitLength), ...blocked] };
}

/** Firm toys cannot be bent into a front opening. Hooded and collared tops open in front, others at the back. */
function openAllTheWay(garment: Garment, wearer: Wearer): string {
  const offered = offers(garment);
  const first = wearer.traits.stuffing === 'firm' ? 'back' : (garment.opensAt ?? 'front');
  return offered.includes(first) ? first : (offered.find((each) => ['front', 'back'].includes(each)) ?? 'none');
}

function offers(garment: Garment): readonly string[] {
  const choice = garment.choices.opening;
  return choice?.kind === 'one' ? choice.of : [];
}

function passingOf(passage: Passage, wearer: Wearer, sizes: Sizes): Passing {
  const girth = wearer.of(passage.measure);
  const needs = wearer.traits.stuffing === 'soft' ? girth * SOFT_PASS : girth + FIRM_ROOM_MM;
  const stretch = wearer.cloth.stretch * (passage.seamed ? 0.5 : 1);
  return { passage, needs, gives: passage.gives(sizes) * (1 + stretch) };
}

/** With the front or back open all the way, everything from neck to hem, or to the end of a skirt's opening, opens with it. */
function rowOf({ passage, needs, gives }: Passing, opening: string, slit: Mm, whole: Mm): OpeningRow {
  const open = passage.measure === 'head-girth' && ['front', 'back'].includes(opening);
  const slitHere = passage.atNeck && opening === 'slit';
  return {
    through: passage.through,
    needs,
    gives: open ? gives + 2 * whole : slitHere ? gives + 2 * slit : gives,
    closure: open ? 'hook-and-loop' : slitHere ? 'slit' : 'none',
  };
}

function notes(wish: string, opening: string, slitLength: Mm): Flag[] {
  return wish === 'auto' && opening !== 'none'
    ? [
        {
          code: 'opening-added',
          severity: 'note',
          measures: ['head-girth', 'neck-girth'],
          values: { slit: slitLength },
        },
      ]
    : [];
}

function willNotPass(row: OpeningRow, passing: Passing | undefined): Flag {
  return {
    code: 'will-not-pass',
    severity: 'unlikely',
    measures: passing ? [passing.passage.measure] : [],
    values: { needs: row.needs, gives: row.gives },
  };
}
