import { afterAll, beforeAll, expect, test } from 'vitest';
import { openSite, phone, type Site } from './browser';
import { Maker } from './maker';
import { saved } from './two-phones';

let site: Site;
beforeAll(async () => {
  site = await openSite({ keeps: false });
});
afterAll(() => site.close());

const newMaker = async () => new Maker((await site.visit(phone)).page, site.address);

test('a backup file brought to another phone is a backup of what is there: nobody is asked for one at once', async () => {
  const [here, there] = [await newMaker(), await newMaker()];
  await here.borrow('Bramble');
  await here.at('settings/backup');
  const file = { name: 'backup.json', mimeType: 'application/json', buffer: await saved(here.page, 'Save a backup') };
  await here.page.getByText(/on its way to your downloads/).waitFor();

  await there.at('settings/backup');
  await there.page.locator('input[type=file]').setInputFiles(file);
  await there.press('Add it to what is here');
  await there.page.getByText(/^Done/).waitFor();
  await there.toys();
  await there.page.locator('.toy-row').filter({ hasText: 'Bramble' }).waitFor();
  await there.page.waitForTimeout(500);
  expect(await there.page.getByText(/without a backup/).count()).toBe(0);
});

test('beside toys that the file does not hold it is no backup of them', async () => {
  const [here, there] = [await newMaker(), await newMaker()];
  await here.borrow('Bramble');
  await here.at('settings/backup');
  const file = { name: 'backup.json', mimeType: 'application/json', buffer: await saved(here.page, 'Save a backup') };
  await there.borrow('Sorrel');
  await there.at('settings/backup');
  await there.page.locator('input[type=file]').setInputFiles(file);
  await there.press('Add it to what is here');
  await there.page.getByText(/^Done/).waitFor();
  await there.toys();
  await there.page.getByText(/without a backup/).waitFor();
});
