import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findMeasure, measures } from '../../app/body';
import { bodyFrom, demoCards, settle } from '../../app/measuring';

describe('readings settled', () => {
  it('takes the mean of two, and asks for a third when they are more than 4 mm or 4 % apart', () => {
    expect(settle([100, 104])).toEqual({ value: 102, spread: 4, ask: false });
    expect(settle([100, 104.2])).toMatchObject({ ask: true });
    expect(settle([400, 416])).toMatchObject({ value: 408, ask: false });
    expect(settle([400, 417])).toMatchObject({ ask: true });
  });
  it('then takes the median, and asks no more', () => {
    expect(settle([100, 130, 102])).toEqual({ value: 102, spread: 30, ask: false });
    expect(settle([100, 130, 102, 104])).toEqual({ value: 103, spread: 30, ask: false });
  });
  it('has nothing to say without readings', () => expect(settle([])).toBeNull());
});

describe('the body of a card', () => {
  const told = (readings: object) => bodyFrom({ toy: { body: 'upright', traits: {} }, readings });

  it('works out the other width from the girth, and the girth from both', () => {
    expect(told({ 'body-girth': [430], 'front-width': [220] }).sizes['back-width']).toMatchObject({
      value: 210,
      from: 'derived',
    });
    expect(told({ 'back-width': [210], 'front-width': [220] }).sizes['body-girth']).toMatchObject({
      value: 430,
      from: 'derived',
    });
    expect(told({ 'body-girth': [430], 'front-width': [440] }).sizes['back-width']?.from).toBe('estimate');
  });

  it('marks what was read off a photograph, with the give stated there', () => {
    const readings = { 'side-inset': [30], 'head-girth': [430] };
    const { sizes } = bodyFrom({ toy: { body: 'upright', traits: {} }, readings, fromPhoto: { 'side-inset': 3 } });
    expect(sizes['side-inset']).toEqual({ value: 30, from: 'photo', give: 3 });
    expect(sizes['head-girth']?.from).toBe('tape');
  });

  it('knows every measure of the kind as soon as one is taken, marked by where it comes from', () => {
    const body = told({ 'head-girth': [431.8] });
    for (const { id, typical } of measures) if (typical.upright) expect(body.sizes[id]?.value, id).toBeGreaterThan(0);
    expect(body.sizes['head-girth']?.from).toBe('tape');
    expect(body.sizes['paw-girth']?.from).toBe('estimate');
    expect(told({}).sizes).toEqual({});
  });
});

describe('demo toys', () => {
  it('are all the files of their folder, each a whole card', () => {
    const files = readdirSync('assets/demo').filter((name) => name.endsWith('.json'));
    expect(files.length).toBe(demoCards.length);
    expect(new Set(demoCards.map((card) => card.toy.name)).size).toBe(demoCards.length);
    for (const card of demoCards) {
      expect(card).toMatchObject({ format: 'hemling-card', version: 1 });
      for (const id of Object.keys(card.readings)) expect(findMeasure(id), id).toBeDefined();
    }
  });
});
