import 'fake-indexeddb/auto';
import { afterEach, expect, test } from 'vitest';
import { judge, type Say } from '../../app/body';
import { bodyFrom } from '../../app/measuring';
import { putRight, remedyOf } from '../../app/screens/shared/making/remedy';
import * as store from '../../app/storage';

afterEach(() => store.forgetEverything());

const say: Say = (code) => code;
const hand = { unit: 'cm', locale: 'en' } as const;
const flag = (values: Record<string, number>, measures: readonly string[] = ['chest-girth', 'front-width']) =>
  ({ code: 'swapped', severity: 'unlikely', measures, values }) as Parameters<typeof remedyOf>[0];

test('two swapped readings are put right by each taking the other’s number', async () => {
  const remedy = remedyOf(flag({ offer: 400, otherOffer: 220 }), say, hand, 'chest-girth');
  expect(remedy?.words).toBe('screen.flag.swap');
  const { id } = await store.saveToy({ name: 'Bramble', kind: 'upright' });
  await store.saveReading(id, 'chest-girth', 220);
  await store.saveReading(id, 'front-width', 400);
  if (remedy) await putRight(id, remedy);
  const readings = await store.readingsOf(id);
  expect(readings['chest-girth']?.map(({ mm }) => mm)).toEqual([400]);
  expect(readings['front-width']?.map(({ mm }) => mm)).toEqual([220]);
  expect((await store.historyOf(id)).map(({ mm }) => mm)).toEqual([220, 400, 400, 220]);
});

test('the rules’ own flag of two swapped readings offers each the other’s number', () => {
  const readings = {
    'head-girth': [430],
    'neck-girth': [250],
    'chest-girth': [215],
    'front-width': [400],
    'body-girth': [430],
    'hip-girth': [420],
    'waist-girth': [390],
    'upper-arm-girth': [150],
    'paw-girth': [140],
  };
  const swapped = judge(bodyFrom({ toy: { body: 'upright', traits: {} }, readings }), {}).find(
    ({ code }) => code === 'swapped',
  );
  const remedy = swapped && remedyOf(swapped, say, hand);
  expect(new Map(remedy?.meant.map(({ measure, mm }) => [measure, mm]))).toEqual(
    new Map([
      ['chest-girth', 400],
      ['front-width', 215],
    ]),
  );
});

test('one likely number is offered by its length, with the measure’s name where it is another’s', () => {
  const one = flag({ offer: 400 }, ['chest-girth']);
  expect(remedyOf(one, say, hand, 'chest-girth')).toMatchObject({
    words: 'screen.flag.use',
    meant: [{ measure: 'chest-girth', mm: 400 }],
  });
  expect(remedyOf(one, say, hand, 'neck-girth')?.words).toBe('screen.flag.other-use');
});

test('where nothing is offered there is no remedy', () => {
  expect(remedyOf(flag({}), say, hand)).toBeNull();
});
