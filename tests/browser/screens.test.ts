import { afterAll, beforeAll, expect, test } from 'vitest';
import type { MeasureId } from '../../app/body';
import { demoCards } from '../../app/measuring';
import { openSite, phone, type Site } from './browser';
import { Maker } from './maker';

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

test('a doubt leads to the other measure and back', async () => {
  const { page, close } = await site.visit(phone);
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.press('Make something');
  await maker.choose(/hooded top/i);
  await maker.step('front-width');
  await maker.type('20');
  await maker.press(/^Next:/);
  await maker.press('Check: Body girth');
  await maker.press(/^Back to: Front width/);
  await page.waitForURL(/measure\/front-width$/);
  await expect.poll(() => maker.field().inputValue()).toBe('20');
  await close();
});

test('"keep it" puts a doubt aside for good, as long as the number stays', async () => {
  const { page, close } = await site.visit(phone);
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.press('Make something');
  await maker.choose(/hooded top/i);
  await maker.step('neck-girth');
  await maker.type('17');
  await maker.press(/^Next:/);
  const keep = page.getByRole('button', { name: /^Keep / });
  await keep.waitFor();
  const left = page.waitForURL((url) => !url.href.endsWith('neck-girth'));
  while (page.url().endsWith('neck-girth')) await keep.click({ timeout: 1000 }).catch(() => left);
  await left;
  await maker.step('neck-girth');
  await maker.next();
  await maker.step('neck-girth');
  await maker.type('18');
  await maker.press(/^Next:/);
  await keep.waitFor();
  await close();
});

test('a slip of the unit is put right in one tap', async () => {
  const { page, close } = await site.visit({ ...phone, locale: 'en-US' });
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.press('Make something');
  await maker.choose(/hooded top/i);
  await maker.step('chest-girth');
  const right = await maker.field().inputValue();
  await maker.type(`${right} cm`);
  await maker.press(/^Next:/);
  await maker.press(`It is ${right} in`);
  await page.getByText('saved', { exact: true }).waitFor();
  expect(await maker.field().inputValue()).toBe(right);
  await maker.next();
  await close();
});

test('a toy that was removed comes back with one tap', async () => {
  const { page, close } = await site.visit(phone);
  const maker = new Maker(page, site.address);
  await maker.borrow('Bramble');
  await maker.press('Remove this toy');
  await maker.press('Undo');
  await maker.heading('Your toys');
  await maker.press('Bramble');
  await page.getByText('Head girth').waitFor();
  await close();
});

test('first projects and what needs no sewing can be asked for, and still are on the way back', async () => {
  const { page, close } = await site.visit(phone);
  const maker = new Maker(page, site.address);
  const tile = (name: RegExp) => maker.named(name).first();
  await maker.borrow('Bramble');
  await maker.press('Make something');
  await page.getByRole('radio', { name: 'First projects' }).click();
  await tile(/^Hooded top/).waitFor({ state: 'hidden' });
  await tile(/^Simple top/).waitFor();
  await page.getByRole('radio', { name: 'No sewing' }).click();
  await tile(/^Simple top/).waitFor({ state: 'hidden' });
  await tile(/^Felt vest/).waitFor();
  await maker.choose(/^Scarf/);
  await page.goBack();
  await tile(/^Felt vest/).waitFor();
  expect(await tile(/^Simple top/).count()).toBe(0);
  await close();
});

test('a number passed over is named where all are looked over, however little it tells; no page counts steps as numbers', async () => {
  const { page, close } = await site.visit(phone);
  const maker = new Maker(page, site.address);
  await page.goto(`${site.address}#/card`);
  await page.locator('input[type=file]').setInputFiles(cardWithout('height'));
  await maker.press('Keep it');
  await maker.press('Make something');
  await maker.choose(/hooded top/i);
  await maker.go('wishes', 'Look it over');
  await page.getByRole('link', { name: /^One left/ }).waitFor();
  await maker.press('Look it over');
  await page.getByText(/One is estimated from the rest/).waitFor();
  await page.getByRole('link', { name: 'Height', exact: true }).click();
  await page.waitForURL(/measure\/height\?then=review$/);
  await close();
});

/** The file of a toy's card on which one number was left out. */
function cardWithout(measure: MeasureId) {
  const [card] = demoCards;
  const text = JSON.stringify({ ...card, readings: { ...card?.readings, [measure]: undefined } });
  return { name: 'card.json', mimeType: 'application/json', buffer: Buffer.from(text) };
}
