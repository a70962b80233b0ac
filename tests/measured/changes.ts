import { createHash } from 'node:crypto';
import { type Card, type TraitId, type Traits, traitValues, usualTraits } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { type Choice, type Garment, garments } from '../../app/drafting/garments';
import { offered } from '../../app/drafting/heads';
import { toJson } from '../../app/drafting/output';
import { type Chosen, made } from './made';

/** What of a draft is a maker's to see: not what she chose. */
export function shown(draft: Draft | null): string {
  return draft ? JSON.stringify({ ...toJson(draft), order: null, toy: null }) : 'refused';
}

const fingerprints = new Map<string, string>();

/** A fingerprint of what is drawn; each draft is made once, however often it is compared. */
function drawn(card: Card, garment: Garment, choices: Chosen = {}): string {
  const key = JSON.stringify([garment.id, card.toy, Object.entries(choices).sort()]);
  const known = fingerprints.get(key) ?? digest(shown(made(card, garment.id, { choices })));
  fingerprints.set(key, known);
  return known;
}

const digest = (text: string) => createHash('sha1').update(text).digest('base64');

/** Looks that a garment says it is cut by, and that change none of these cards' drafts, as its choices come or as one of `settings` has them. */
export function idleLooks(cards: readonly Card[], garment: Garment, settings: readonly Chosen[] = []): TraitId[] {
  return garment.looks.filter((trait) =>
    [{}, ...settings].every((choices) =>
      cards.every((card) =>
        otherLooks(card, trait).every(
          (value) => drawn(withTraits(card, { [trait]: value }), garment, choices) === drawn(card, garment, choices),
        ),
      ),
    ),
  );
}

/** Toys whose draft changes with looks that the garment does not name, all of them changed at once. */
export function strayLooks(cards: readonly Card[], garment: Garment): string[] {
  const strays = traitIds.filter((trait) => !garment.looks.includes(trait));
  return cards
    .filter((card) => {
      const others = Object.fromEntries(strays.map((trait) => [trait, otherLooks(card, trait)[0]]));
      return drawn(withTraits(card, others), garment) !== drawn(card, garment);
    })
    .map(({ toy }) => toy.name);
}

const traitIds = Object.keys(traitValues) as TraitId[];

function otherLooks({ toy }: Card, trait: TraitId): readonly Traits[TraitId][] {
  const { [trait]: own = usualTraits[trait] } = toy.traits;
  return traitValues[trait].filter((value) => value !== own);
}

function withTraits(card: Card, traits: Partial<Traits>): Card {
  return { ...card, toy: { ...card.toy, traits: { ...card.toy.traits, ...traits } } };
}

type Value = string | boolean | number;

export function valuesOf(choice: Choice): readonly Value[] {
  if (choice.kind === 'one') return choice.of;
  return choice.kind === 'yes' ? [true, false] : [choice.min, choice.max];
}

/** Choice values, as `choice value`, that leave every draft of these cards as their fallback makes it, beside any of the other choices tried. */
export function idleValues(cards: readonly Card[], garment: Garment): string[] {
  return Object.entries(garment.choices).flatMap(([name, choice]) =>
    valuesOf(choice)
      .filter((value) => value !== choice.fallback)
      .filter((value) =>
        settings(garment, name).every((others) => cards.every((card) => same(card, garment, others, name, value))),
      )
      .map((value) => `${name} ${value}`),
  );
}

/** Choices that are asked though none of the values offered beside one of the others changes a draft of these cards. */
export function idleOffers(cards: readonly Card[], garment: Garment): string[] {
  return [{}, ...farthest(garment)].flatMap((others) =>
    offered(garment, others)
      .filter(({ name, choice, value }) => {
        const more = valuesOf(choice).filter((each) => each !== value);
        return cards.every((card) =>
          more.every((each) => drawn(card, garment, others) === drawn(card, garment, { ...others, [name]: each })),
        );
      })
      .map(({ name }) => `${JSON.stringify(others)} ${name}`),
  );
}

function same(card: Card, garment: Garment, others: Chosen, name: string, value: Value): boolean {
  return drawn(card, garment, others) === drawn(card, garment, { ...others, [name]: value });
}

/** Of each choice the value farthest from the one it comes with, alone: every value beside every other takes a processor for minutes. */
function farthest(garment: Garment): Chosen[] {
  return Object.entries(garment.choices).flatMap(([name, choice]) => {
    const value = valuesOf(choice).findLast((each) => each !== choice.fallback);
    return value === undefined ? [] : [{ [name]: value }];
  });
}

/** The other choices as they come, and each of their values alone. */
function settings(garment: Garment, name: string): Chosen[] {
  const others = Object.entries(garment.choices).filter(([other]) => other !== name);
  return [
    {},
    ...others.flatMap(([other, choice]) =>
      valuesOf(choice)
        .filter((value) => value !== choice.fallback)
        .map((value) => ({ [other]: value })),
    ),
  ];
}

export const upright = garments.filter((garment) => garment.bodies.includes('upright'));
