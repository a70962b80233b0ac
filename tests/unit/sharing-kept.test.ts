import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Card, usualTraits } from '../../app/body';
import { demoCards } from '../../app/measuring';
import { cardWith, optionalParts, partsIn } from '../../app/screens/share/chosen';
import { checkCard, decodeCode, encodeCard, writeCard } from '../../app/sharing';
import * as store from '../../app/storage';
import small from '../photos/small-pictures.json';

beforeEach(() => store.openStore());
afterEach(() => store.forgetEverything());

const order = { garment: 'hooded-top', choices: { opening: 'front' }, fit: 'easy' };

test('a card that is kept and sent on says the same, its day included', async () => {
  for (const card of demoCards) {
    const given = { ...card, toy: { ...card.toy, traits: { ...usualTraits, ...card.toy.traits } }, orders: [order] };
    const { id } = await store.addCard(given);
    const sent = await store.cardOf(id, card.unit);
    expect(JSON.parse(writeCard(sent))).toEqual(JSON.parse(writeCard(given)));
    expect(checkCard(sent)).toEqual({ ok: true, card: sent, skipped: [] });
  }
});

test('a card goes by link without losing a reading’s last bit', () => {
  for (const card of demoCards) {
    const read = decodeCode(encodeCard(card, 4000).fragment);
    expect(read.ok && JSON.parse(writeCard(read.card))).toEqual(JSON.parse(writeCard(card)));
  }
});

test('what is not chosen stays at home; name, kind and day always go', () => {
  const whole: Card = {
    format: 'hemling-card',
    version: 1,
    toy: { name: 'Bramble', body: 'upright', traits: { tail: true } },
    unit: 'cm',
    taken: '2026-11-20',
    note: 'Soft.',
    readings: { 'head-girth': [1, 2, 3, 4, 5, 6] },
    corrections: { chest: 2 },
    orders: [order],
    photo: `data:image/jpeg;base64,${small['baseline.jpg']}`,
  };
  expect(partsIn(whole)).toEqual(optionalParts);
  expect(checkCard(cardWith(whole, new Set(optionalParts)))).toMatchObject({ ok: true, card: { photo: whole.photo } });
  const bare = cardWith(whole, new Set());
  expect(partsIn(bare)).toEqual([]);
  expect(bare).toEqual({
    ...{ format: 'hemling-card', version: 1, toy: { name: 'Bramble', body: 'upright', traits: {} } },
    ...{ unit: 'cm', taken: '2026-11-20', note: '', readings: {} },
  });
  for (const part of optionalParts) expect(partsIn(cardWith(whole, new Set([part])))).toEqual([part]);
});
