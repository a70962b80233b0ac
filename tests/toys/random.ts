import {
  type BodyKind,
  type Card,
  findMeasure,
  LONGEST_MM,
  type MeasureId,
  type Mm,
  measures,
  SHORTEST_MM,
  type Traits,
  type Unit,
} from '../../app/body';
import type { Draw, Measured, Readings } from './form';
import { fourLeggedForm, measureFourLegged } from './four-legged';
import { measureRound, roundForm } from './round';
import { normal, type Random } from './seeded';
import { measureUpright, uprightForm } from './upright';
import { ANY_BUILD, builtAs } from './upright-builds';

export { type Random, seeded } from './seeded';

/** `nasty`: bodies no maker has, that must still never break anything. `full`: no reading left out; `build`: how an upright toy is built. */
export type RandomToy = { readonly nasty?: boolean; readonly full?: boolean; readonly build?: string };

/** How far a tape over fur strays (share, one standard deviation). */
const TAPE_SPREAD = 0.012;

/** How much further apart the proportions of nasty bodies lie (power). */
const NASTY_STRETCH = 2.2;

const makers: {
  readonly [K in BodyKind]: (draw: Draw, ears: Traits['ears'], tail: boolean, build: string) => Measured;
} = {
  upright: (draw, ears, tail, build) => withArms(uprightForm(draw, builtAs(build)), ears, tail),
  'four-legged': (draw, ears, tail) => measureFourLegged(fourLeggedForm(draw), ears, tail),
  round: (draw, ears, tail) => measureRound(roundForm(draw), ears, tail),
};

/**
 * A card of a random plausible toy (upright: 18 cm to 1 m tall): a body of solids with random proportions, read by an
 * unsteady hand and rounded as a tape is. Some readings are left out unless `full`. `random` gives numbers in [0, 1).
 */
export function randomCard(
  random: Random,
  kind: BodyKind,
  { nasty = false, full = false, build = ANY_BUILD }: RandomToy = {},
): Card {
  if (nasty && random() < 0.5) return card(random, kind, {}, nastyReadings(random, kind), 'cm');
  const between: Draw['between'] = (low, high) => low + (high - low) * random();
  const wide: Draw['between'] = (low, high) => {
    const middle = Math.sqrt(low * high);
    return middle * (between(low, high) / middle) ** (nasty ? NASTY_STRETCH : 1);
  };
  const ears = (['none', 'side', 'top'] as const)[Math.floor(random() * 3)] ?? 'none';
  const tail = random() < 0.4;
  const { readings, traits } = makers[kind]({ between, wide }, ears, tail, build);
  const unit = random() < 0.5 ? 'in' : 'cm';
  return card(random, kind, { ears, tail, ...traits }, handRead(random, readings, STEP[unit], full), unit);
}

function withArms(form: Parameters<typeof measureUpright>[0], ears: Traits['ears'], tail: boolean): Measured {
  const { readings, traits } = measureUpright(form, ears, tail);
  const arms = form.arm.cap > 0.3 ? 'down' : form.arm.cap > 0.15 ? 'forward' : 'out';
  return { readings, traits: { ...traits, arms } };
}

/** Measures of the first garments, which nearly everybody takes; each of the others is left out as often as not. */
const mostlyTaken: ReadonlySet<string> = new Set<MeasureId>([
  'head-girth',
  'face-edge',
  'hood-depth',
  'chest-girth',
  'body-girth',
  'front-width',
  'armhole-depth',
  'upper-arm-girth',
  'body-length',
  'arm-length',
  'underarm-length',
]);

type CardReadings = Partial<Record<MeasureId, readonly Mm[]>>;

function handRead(random: Random, exact: Readings, step: Mm, full: boolean): CardReadings {
  const missed = random() * 0.9;
  const taken: CardReadings = {};
  for (const { id } of measures) {
    const value = exact[id];
    if (value === undefined || (!full && !mostlyTaken.has(id) && random() < missed)) continue;
    taken[id] = [rounded(value * (1 + TAPE_SPREAD * normal(random)), step)];
  }
  return taken;
}

/** As read from a tape: to the sixteenth of an inch or the millimetre, within what a card may hold. */
function rounded(value: Mm, step: Mm): Mm {
  return Math.min(LONGEST_MM, Math.max(SHORTEST_MM, Math.round(value / step) * step));
}

/** Readings without any body behind them: each within what a card may hold, few or many, some equal. */
function nastyReadings(random: Random, kind: BodyKind): CardReadings {
  const anyLength = () => SHORTEST_MM * (LONGEST_MM / SHORTEST_MM) ** random();
  const share = random();
  const around = anyLength();
  const taken: CardReadings = {};
  for (const { id } of measures) {
    if (!findMeasure(id)?.typical[kind] || random() > share) continue;
    taken[id] = [random() < 0.5 ? around : anyLength()];
  }
  return taken;
}

/** What a tape is read to. */
const STEP: { readonly [U in Unit]: Mm } = { in: 25.4 / 16, cm: 1 };

function card(random: Random, body: BodyKind, traits: Partial<Traits>, readings: CardReadings, unit: Unit): Card {
  const stuffing = random() < 0.7 ? 'soft' : 'firm';
  return {
    format: 'hemling-card',
    version: 1,
    toy: { name: 'Random', body, traits: { stuffing, ...traits } },
    unit,
    taken: '2026-11-20',
    note: '',
    readings,
  };
}
