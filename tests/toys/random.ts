import { type Card, LONGEST_MM, type MeasureId, type Mm, measureIds, SHORTEST_MM, type Traits } from '../../app/body';
import { measureUpright, type Readings, type UprightForm } from './upright';

/** `nasty`: bodies no maker has, that must still never break anything. `full`: no reading left out. */
export type RandomToy = { readonly nasty?: boolean; readonly full?: boolean };

type Random = () => number;
type Between = (low: number, high: number) => number;

/** How far a tape over fur strays (share, one standard deviation). */
const TAPE_SPREAD = 0.012;

/**
 * A card of a random plausible toy, 18 cm to 1 m tall: a body of solids with random proportions, read by an unsteady
 * hand and rounded as a tape is. Some readings are left out unless `full`. `random` gives numbers in [0, 1).
 */
export function randomCard(random: Random, kind: 'upright', { nasty = false, full = false }: RandomToy = {}): Card {
  const between: Between = (low, high) => low + (high - low) * random();
  if (nasty && random() < 0.5) return card(random, kind, {}, nastyReadings(random));
  const stretch = nasty ? 2.2 : 1;
  const wide: Between = (low, high) => {
    const middle = Math.sqrt(low * high);
    return middle * (between(low, high) / middle) ** stretch;
  };
  const form = uprightForm(between, wide);
  const measured = measureUpright(form);
  const arms = form.arm.cap > 0.3 ? 'down' : form.arm.cap > 0.15 ? 'forward' : 'out';
  return card(random, kind, { shoulders: measured.shoulders, arms }, handRead(random, measured.readings, full));
}

function uprightForm(between: Between, wide: Between): UprightForm {
  const height = 180 * (1000 / 180) ** between(0, 1);
  const head = height * wide(0.11, 0.21);
  const trunk = height * wide(0.1, 0.2);
  return {
    head: { across: head, deep: head * wide(0.82, 1.1), high: head * wide(0.85, 1.15) },
    face: { forward: Math.min(0.9, wide(0.12, 0.5)), chin: Math.min(0.6, wide(0.12, 0.25)) },
    trunk: {
      across: trunk,
      deep: trunk * wide(0.72, 1.02),
      chest: wide(0.84, 0.99),
      hem: wide(0.86, 1.03),
      front: Math.min(0.7, wide(0.47, 0.55)),
    },
    neck: Math.min(1.1, wide(0.55, 0.84)),
    length: height * wide(0.3, 0.42),
    back: Math.min(1.1, wide(0.86, 0.98)),
    arm: {
      depth: Math.min(0.7, wide(0.4, 0.54)),
      thick: wide(0.5, 1),
      inset: wide(0.85, 1.2),
      upper: wide(0.88, 1.08),
      paw: wide(0.78, 1.15),
      length: height * wide(0.2, 0.4),
      cap: between(0, 1) < 0.75 ? wide(0.32, 0.62) : wide(0.04, 0.3),
    },
    slope: between(0, 0.35),
  };
}

/** Which readings a maker may well skip or not know how to take. */
const sometimesLeftOut: ReadonlySet<string> = new Set<MeasureId>([
  'crown-arc',
  'neck-girth',
  'hem-girth',
  'back-width',
  'shoulder-length',
  'side-inset',
  'arm-root-girth',
  'paw-girth',
  'back-body-length',
  'side-length',
  'front-neck-drop',
  'back-neck-drop',
]);

type CardReadings = Partial<Record<MeasureId, readonly Mm[]>>;

function handRead(random: Random, exact: Readings, full: boolean): CardReadings {
  const inches = random() < 0.5;
  const taken: CardReadings = {};
  for (const id of measureIds) {
    const value = exact[id];
    if (value === undefined || (!full && sometimesLeftOut.has(id) && random() < 0.3)) continue;
    taken[id] = [rounded(value * (1 + TAPE_SPREAD * normal(random)), inches)];
  }
  return taken;
}

/** As read from a tape: to the sixteenth of an inch or the millimetre, within what a card may hold. */
function rounded(value: Mm, inches: boolean): Mm {
  const step = inches ? 25.4 / 16 : 1;
  return Math.min(LONGEST_MM, Math.max(SHORTEST_MM, Math.round(value / step) * step));
}

/** Readings without any body behind them: each within what a card may hold, few or many, some equal. */
function nastyReadings(random: Random): CardReadings {
  const share = random();
  const around = SHORTEST_MM * (LONGEST_MM / SHORTEST_MM) ** random();
  const taken: CardReadings = {};
  for (const id of measureIds) {
    if (random() > share) continue;
    const strays = SHORTEST_MM * (LONGEST_MM / SHORTEST_MM) ** random();
    taken[id] = [random() < 0.5 ? around : strays];
  }
  return taken;
}

function card(random: Random, body: Card['toy']['body'], traits: Partial<Traits>, readings: CardReadings): Card {
  const stuffing = random() < 0.7 ? 'soft' : 'firm';
  const ears = (['none', 'side', 'top'] as const)[Math.floor(random() * 3)] ?? 'none';
  return {
    format: 'hemling-card',
    version: 1,
    toy: { name: 'Random', body, traits: { stuffing, ears, tail: random() < 0.3, ...traits } },
    unit: random() < 0.5 ? 'in' : 'cm',
    taken: '2026-11-20',
    note: '',
    readings,
  };
}

/** A standard normal number from two uniform ones (Box and Muller 1958). */
function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/** Small seeded generator (mulberry32, public domain): the same seed gives the same toys everywhere. */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
