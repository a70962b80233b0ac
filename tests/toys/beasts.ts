import type { Card, Traits } from '../../app/body';
import { cardOf, head } from './builds';
import { type FourLeggedForm, measureFourLegged } from './four-legged';
import { measureRound, type RoundForm } from './round';

/** Invented toys that do not stand upright, read off their solids to the millimetre: on four legs, and round. */

const tail = { root: 0.18, thick: 1.2 };

/** 35 cm from nape to tail. */
const dog: FourLeggedForm = {
  head: head(62, { ear: { base: 50, thick: 1.1, inset: 0.8, behind: 0.4 } }),
  across: 72,
  high: 78,
  length: 350,
  coat: 0.9,
  belly: 0.93,
  neck: 0.66,
  leg: { thick: 0.36, gap: 0.45, foot: 1.1, length: 95 },
  throat: 0.24,
  nape: 0.34,
  under: 0.75,
  tail,
};

/** Long, low, on short legs. */
const dachshund: FourLeggedForm = {
  head: head(38, { ear: { base: 40, thick: 1, inset: 0.9, behind: 0.5 } }),
  across: 40,
  high: 44,
  length: 330,
  coat: 0.92,
  belly: 0.95,
  neck: 0.7,
  leg: { thick: 0.38, gap: 0.5, foot: 1.15, length: 38 },
  throat: 0.18,
  nape: 0.26,
  under: 0.8,
  tail,
};

/** A thin neck on a thick barrel, on long legs. */
const horse: FourLeggedForm = {
  head: head(44, { ear: { base: 22, thick: 1, inset: 0.6, behind: 0.5 } }),
  across: 66,
  high: 74,
  length: 250,
  coat: 0.95,
  belly: 1.05,
  neck: 0.6,
  leg: { thick: 0.3, gap: 0.4, foot: 0.95, length: 150 },
  throat: 0.3,
  nape: 0.4,
  under: 0.8,
  tail: { root: 0.2, thick: 1.4 },
};

const ear = { base: 0.3, thick: 1, inset: 0.4 };
const egg: RoundForm = {
  height: 220,
  half: 80,
  deep: 80,
  full: 0.4,
  top: 0.5,
  base: 0.5,
  brim: 0.65,
  neck: 0.72,
  waist: 0.96,
  hem: 0.9,
  wing: { base: 0.2, high: 0.5 },
  ear,
  tail,
};
const ball: RoundForm = {
  ...egg,
  height: 200,
  half: 100,
  deep: 100,
  full: 0.48,
  neck: 0.85,
  wing: { base: 0.3, high: 0.5 },
};
const penguin: RoundForm = {
  ...egg,
  height: 300,
  half: 85,
  deep: 78,
  full: 0.36,
  neck: 0.64,
  wing: { base: 0.34, high: 0.62 },
};

const fourLegged = (name: string, form: FourLeggedForm, ears: Traits['ears']): Card => {
  const measured = measureFourLegged(form, ears, true);
  return cardOf({ name, body: 'four-legged', measured, traits: { ears, tail: true, ...measured.traits } });
};
const round = (name: string, form: RoundForm): Card => {
  const measured = measureRound(form, 'none', false);
  return cardOf({ name, body: 'round', measured, traits: { ears: 'none', tail: false, ...measured.traits } });
};

export const beasts: readonly Card[] = [
  fourLegged('dog', dog, 'side'),
  fourLegged('dachshund', dachshund, 'side'),
  fourLegged('horse', horse, 'top'),
  round('egg', egg),
  round('ball', ball),
  round('penguin', penguin),
];
