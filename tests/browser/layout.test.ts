import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { FONTS } from '../../.config/fonts.mjs';
import type { MeasureId } from '../../app/body';
import { type GarmentId, heads } from '../../app/drafting/catalogue';
import { asking, bodyFrom, demoCards } from '../../app/measuring';
import { needsOf } from '../../app/screens/shared/making/making';
import en from '../../locales/en.json';
import { openSite, phone, type Site } from './browser';
import { familiesOf, fonts } from './fonts';
import { layoutFaults } from './layout-faults';
import { Maker } from './maker';

/** Smaller than this a finger misses, CSS pixels (WCAG 2.2 asks for 24; we for twice that, and for 44 on the narrowest). */
const TOUCH = 48;

type Window = { readonly width: number; readonly height: number; readonly touch?: number };

const windows: readonly Window[] = [
  { width: 360, height: 640 },
  { width: 640, height: 360 },
  { width: 568, height: 320 },
  { width: 320, height: 568, touch: 44 },
  { width: 1280, height: 800 },
];

/** As long as a name may be, in letters as wide as they come and without a space to break at. */
const LONG_NAME = 'MW'.repeat(40);

/** Numbers that raise a doubt: in the other unit, far from the others, and wider than the toy is round. */
const doubtful: readonly (readonly [MeasureId, typed: string])[] = [
  ['chest-girth', '19 cm'],
  ['neck-girth', '17'],
  ['front-width', '30'],
];

/** Toys to try, that stand on two legs and on four: on four only in the letters that take the most room. */
const toys = { narrow: ['Bramble'], wide: ['Bramble', 'Sorrel'] } as const;

describe.each(fonts)('in letters that are %s', (font) => {
  let site: Site;
  beforeAll(async () => {
    site = await openSite({ font, keeps: false });
  });
  afterAll(() => site.close());

  test('the browser draws with these letters and no others', async () => {
    const { page, close } = await site.visit(phone);
    await page.goto(site.address);
    await page.locator('h1').waitFor();
    expect(await familiesOf(page, 'h1')).toEqual([FONTS[font].family]);
    await close();
  });

  test('what says to turn the toy to its side lies beside its ears', async () => {
    const { page, close } = await site.visit({ ...phone, locale: 'en-US' });
    const maker = new Maker(page, site.address);
    await maker.borrow('Bramble');
    await maker.press('Make something');
    await maker.choose(/hooded top/i);
    await maker.step('crown-arc');
    await page.locator('.step-turn').waitFor();
    expect(await page.evaluate(coveredByTurn)).toBe(0);
    await close();
  });

  test('a doubt fits every window, whatever the toy is called', async () => {
    const { page, wrong, close } = await site.visit({ ...phone, locale: 'en-US' });
    const maker = new Maker(page, site.address);
    await maker.at('card');
    await page.locator('input[type=file]').setInputFiles(cardNamed(LONG_NAME));
    await maker.press('Keep it');
    await maker.press('Make something');
    await maker.choose(/hooded top/i);
    const found: string[] = [];
    for (const [measure, typed] of doubtful) {
      await maker.step(measure);
      await maker.heading(en.measure[measure].name);
      await maker.type(typed);
      await maker.press(/^Next:/);
      await page.locator('.doubt').waitFor();
      found.push(...(await faultsInWindows(page)).map((fault) => `${measure}, ${fault}`));
    }
    expect(found).toEqual([]);
    expect(wrong).toEqual([]);
    await close();
  });

  test.each(toys[font])('every measuring step of %s fits every window, and all keys stay in one place', async (toy) => {
    const { page, wrong, close } = await site.visit(phone);
    const maker = new Maker(page, site.address);
    const keys = new Set<string>();
    const found: string[] = [];
    await maker.borrow(toy);
    const steps = await everyStep(maker, toy);
    for (const [measure, address] of steps) {
      await page.goto(address);
      await maker.heading(en.measure[measure].name);
      found.push(...(await faultsInWindows(page, keys)).map((fault) => `${measure}, ${fault}`));
    }
    expect(found).toEqual([]);
    expect([...keys]).toHaveLength(windows.length);
    expect(steps.size).toBeGreaterThan(10);
    expect(wrong).toEqual([]);
    await close();
  });
});

/** The address of every step that is asked of a toy for one garment or another. */
async function everyStep(maker: Maker, name: string): Promise<ReadonlyMap<MeasureId, string>> {
  const { page } = maker;
  const toy = page.url();
  const steps = new Map<MeasureId, string>();
  for (const [garment, measures] of fewest(askedOf(name))) {
    await page.goto(`${toy}/make`);
    await maker.choose(new RegExp(`^${en.garment[garment].name}`));
    const address = page.url().replace(/choices$/, 'measure');
    for (const measure of measures) steps.set(measure, `${address}/${measure}`);
  }
  return steps;
}

type Asked = readonly (readonly [GarmentId, readonly MeasureId[]])[];

/** What each garment asks of a toy to try, made as it is usually made. */
function askedOf(name: string): Asked {
  const card = demoCards.find(({ toy }) => toy.name === name);
  if (!card) throw new Error(`no toy called ${name}`);
  const body = bodyFrom(card);
  return heads
    .filter(({ bodies }) => bodies.includes(body.kind))
    .map((row) => [row.id, asking(body, needsOf(row, body, { garment: row.id })).asked]);
}

/** As few garments as ask for all of it, each with what none before it asks for. */
function fewest(all: Asked): Asked {
  const left = all.map(([id, measures]) => [id, measures] as const);
  const [most] = left.sort(([, one], [, other]) => other.length - one.length);
  if (!most || most[1].length === 0) return [];
  const others = left.map(([id, measures]) => [id, measures.filter((each) => !most[1].includes(each))] as const);
  return [most, ...fewest(others)];
}

/** Bramble's card, of a toy that is called so. */
function cardNamed(name: string) {
  const card = JSON.parse(readFileSync(new URL('../../assets/demo/bramble.json', import.meta.url), 'utf8'));
  const buffer = Buffer.from(JSON.stringify({ ...card, toy: { ...card.toy, name } }));
  return { name: 'card.json', mimeType: 'application/json', buffer };
}

/** In the page: at how many places of the note to turn the toy something of the toy lies under it. */
function coveredByTurn(): number {
  const box = document.querySelector('.step-turn')?.getBoundingClientRect();
  if (!box) return -1;
  const steps = Array.from({ length: 24 }, (_, step) => (step + 0.5) / 24);
  const places = steps.flatMap((x) => steps.map((y) => [box.left + box.width * x, box.top + box.height * y] as const));
  return places.filter(([x, y]) => document.elementsFromPoint(x, y).some((each) => each.matches('.toy-figure path')))
    .length;
}

/** What is wrong in any of the windows, each named. Where the keys lie in each is added to `keys`. */
async function faultsInWindows(page: Page, keys = new Set<string>()): Promise<readonly string[]> {
  const found: string[] = [];
  for (const window of windows) {
    await resize(page, window);
    const faults = await page.evaluate(layoutFaults, window.touch ?? TOUCH);
    found.push(...faults.map((fault) => `${window.width} × ${window.height}: ${fault}`));
    keys.add(`${window.width} × ${window.height}: ${await page.evaluate(placesOfKeys)}`);
  }
  return found;
}

/** Makes the window so large and waits until the page has been laid out and drawn in it. */
async function resize(page: Page, { width, height }: Window): Promise<void> {
  await page.setViewportSize({ width, height });
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
}

const placesOfKeys = () =>
  [...document.querySelectorAll('.key')]
    .map((key) => key.getBoundingClientRect())
    .map(({ left, top }) => `${Math.round(left)},${Math.round(top)}`)
    .join(' ');
