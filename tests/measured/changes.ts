import { type Card, type TraitId, type Traits, traitValues } from '../../app/body';
import type { Draft } from '../../app/drafting/draft-types';
import { type Choice, type Garment, garments } from '../../app/drafting/garments';
import { offered } from '../../app/drafting/heads';
import { toJson } from '../../app/drafting/output';
import { type Chosen, made } from './made';

/** Traits that change how a toy is measured and drawn by other measures are judged by those; these are read by drafting. */
export const readTraits: readonly TraitId[] = ['arms', 'neck', 'legs', 'posture', 'stuffing', 'tail'];

/** What of a draft is a maker's to see: not what she chose. */
export function shown(draft: Draft | null): string {
  return draft ? JSON.stringify({ ...toJson(draft), order: null, toy: null }) : 'refused';
}

/** Garments and traits whose other values leave every draft of these cards as it is. */
export function idleTraits(cards: readonly Card[], garment: Garment): string[] {
  return readTraits.filter((trait) =>
    cards.every((card) => {
      const drafts = traitValues[trait].map((value) => shown(made(withTrait(card, trait, value), garment.id)));
      return new Set(drafts).size === 1;
    }),
  );
}

function withTrait(card: Card, trait: TraitId, value: Traits[TraitId]): Card {
  return { ...card, toy: { ...card.toy, traits: { ...card.toy.traits, [trait]: value } } };
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

/** Choices that are asked though none of the values offered beside the others changes a draft of these cards. */
export function idleOffers(cards: readonly Card[], garment: Garment): string[] {
  const draws = new Map<string, string>();
  const draw = (card: Card, choices: Chosen): string => {
    const key = JSON.stringify([card.toy.name, Object.entries(choices).sort()]);
    const drawn = draws.get(key) ?? shown(made(card, garment.id, { choices }));
    draws.set(key, drawn);
    return drawn;
  };
  return settings(garment, '').flatMap((others) =>
    offered(garment, others)
      .filter(({ name, choice, value }) => {
        const more = valuesOf(choice).filter((each) => each !== value);
        return cards.every((card) =>
          more.every((each) => draw(card, others) === draw(card, { ...others, [name]: each })),
        );
      })
      .map(({ name }) => `${JSON.stringify(others)} ${name}`),
  );
}

function same(card: Card, garment: Garment, others: Chosen, name: string, value: Value): boolean {
  const [usual, other] = [others, { ...others, [name]: value }].map((choices) =>
    shown(made(card, garment.id, { choices })),
  );
  return usual === other;
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
