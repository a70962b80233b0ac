import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { untilStill } from './browser';
import { eachPhone } from './each-phone';

/** With windows of its own, for it shows a PDF. */
const her = eachPhone({ windows: true });

describe('ways back', () => {
  test('any step can be left in one tap, for the toy’s page', async () => {
    await her.atStep('chest-girth');
    await her.maker.press(/Leave it for now/);
    await her.maker.heading('Bramble');
  });

  test('the pattern leads to its numbers, and those to the toy, never into a step', async () => {
    await her.maker.borrow('Bramble');
    await her.maker.press('Make something');
    await her.maker.choose(/hooded top/i);
    await her.maker.go('pattern', 'Put it on paper');
    await her.maker.press('Back');
    await her.maker.heading('Look it over');
    await her.maker.press('Back');
    await her.maker.heading('Bramble');
  });

  test('a finished garment opens at its pattern, another where its numbers are', async () => {
    await her.maker.borrow('Bramble');
    await her.maker.press('Make something');
    await her.maker.choose(/tee/i);
    await her.page.goBack();
    await her.maker.choose(/cape/i);
    await her.maker.press(/^Next/);
    await her.maker.at(her.page.url().split('#/')[1]?.split('/').slice(0, 2).join('/') ?? '');
    await her.maker.heading('Bramble');
    await her.maker.press(/^Tee/);
    await her.maker.heading(/tee/i);
    await her.maker.named('Put it on paper').waitFor({ timeout: 60_000 });
  });

  test('the way back stays in sight however far a page is read', async () => {
    await her.maker.borrow('Bramble');
    await her.page.evaluate(() => scrollTo(0, document.body.scrollHeight));
    const box = await her.page.getByRole('link', { name: 'Back' }).boundingBox();
    expect(box?.y).toBeGreaterThanOrEqual(0);
  });
});

describe('on the toy’s page a number', () => {
  const open = (name: string) => her.page.locator('.reading summary', { hasText: name }).click();
  const row = (name: string) => her.page.locator('.reading', { hasText: name });

  test('is measured again, and its history says which is in use and when', async () => {
    await her.maker.borrow('Bramble');
    await open('Chest girth');
    await row('Chest girth').getByRole('button', { name: 'Measure again' }).click();
    await row('Chest girth').getByRole('textbox').fill('15 1/4');
    await her.maker.press('Keep this number');
    await row('Chest girth').locator('summary b', { hasText: '15¼' }).waitFor();
    const lines = await row('Chest girth').locator('li').allTextContents();
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(/\d:\d\d.*in use.*15¼/);
    expect(lines[1]).not.toContain('in use');
  });

  test('that something asks for is measured at its step, and leads back', async () => {
    await her.maker.borrow('Bramble');
    const toy = her.page.url();
    await her.maker.press('Make something');
    await her.maker.choose(/hooded top/i);
    await her.page.goto(toy);
    await open('Chest girth');
    await row('Chest girth').getByRole('link', { name: 'Measure again' }).click();
    await her.maker.field().waitFor();
    await her.maker.press(/^Back to:/);
    await her.maker.heading('Bramble');
  });
});

test('a browser that prints PDFs itself opens its printer window; where it will not, the file is still there to save', async () => {
  // The printer's window itself cannot be shown here: it is counted, and then refuses.
  await her.page.addInitScript(() => {
    window.print = () => {
      const asked = Number(sessionStorage.getItem('asked') ?? 0) + 1;
      sessionStorage.setItem('asked', String(asked));
      if (asked > 1) throw new Error('no printer');
    };
  });
  await her.maker.borrow('Bramble');
  await her.maker.press('Make something');
  await her.maker.choose(/tee/i);
  await her.maker.go('print', 'Save the PDF');
  await her.page.getByText(/Printing opens the printer’s window/).waitFor();
  await her.page.getByRole('button', { name: 'Print', exact: true }).click();
  await her.page.waitForFunction(() => sessionStorage.getItem('asked') === '1');
  const [frame] = await her.page.locator('iframe').all();
  expect(await frame?.getAttribute('src')).toMatch(/^blob:/);
  await her.page.getByRole('button', { name: 'Print', exact: true }).click();
  await her.page.getByText(/printer’s window did not open/).waitFor();
  expect(await her.page.locator('iframe').count()).toBe(1);
  const coming = her.page.waitForEvent('download');
  await her.maker.press('Save the PDF');
  await coming;
});

test('how to print is said before the button, and where the file went after it', async () => {
  await her.maker.borrow('Bramble');
  await her.maker.press('Make something');
  await her.maker.choose(/tee/i);
  await her.maker.go('print', 'Save the PDF');
  const advice = await her.page.getByText(/^Print at “actual size”/).boundingBox();
  const button = await her.maker.named('Save the PDF').boundingBox();
  expect((advice?.y ?? 0) + (advice?.height ?? 0)).toBeLessThan(button?.y ?? 0);
  const coming = her.page.waitForEvent('download');
  await her.maker.press('Save the PDF');
  const name = (await coming).suggestedFilename();
  await her.page
    .getByRole('status')
    .filter({ hasText: `${name} is in your downloads` })
    .waitFor();
  await her.maker.named('Open it to print').waitFor();
  expect(await her.page.getByText('220').count()).toBe(0);
  await her.page.getByRole('button', { name: 'Look at page 1' }).click();
  await her.maker.named('Save only this page').waitFor();
  await her.maker.press('Close');
  await her.page.getByText('More ways to print').click();
  await her.page.getByRole('radio', { name: 'cards to draw round' }).click();
  await her.page.getByText(/pages? (is|are) ready/).waitFor();
  const drawn = her.page.waitForEvent('download');
  await her.page.getByRole('button', { name: /A file to cut or project/ }).click();
  const svg = await readFile(await (await drawn).path(), 'utf8');
  // The app lets nobody parse what it did not make; an empty page does.
  const empty = await her.page.context().newPage();
  const read = await empty.evaluate((text) => {
    const root = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
    const layers = ['cut', 'seam', 'marks', 'words'].map((id) => root.querySelector(`#${id}`)?.childElementCount ?? -1);
    return { width: root.getAttribute('width'), box: root.getAttribute('viewBox'), layers };
  }, svg);
  expect(read.box?.split(' ')[2]).toBe(read.width?.replace('mm', ''));
  expect(read.layers[0]).toBeGreaterThan(2);
  expect(read.layers[1]).toBe(0);
  const written = her.page.waitForEvent('download');
  await her.page.getByRole('button', { name: /A page to read/ }).click();
  const file = await written;
  expect(file.suggestedFilename()).toMatch(/\.html$/);
  await empty.setContent(await readFile(await file.path(), 'utf8'));
  expect(await empty.getByRole('heading', { level: 1 }).textContent()).toContain('Bramble');
  expect(await empty.getByRole('img').count()).toBeGreaterThan(4);
});

test('where a file beside the pattern went is said at the foot of the screen', async () => {
  await her.maker.borrow('Bramble');
  await her.maker.press('Make something');
  await her.maker.choose(/tee/i);
  await her.maker.go('cloth', /That will do|Save as a PDF/);
  await her.maker.enoughCloth();
  const coming = her.page.waitForEvent('download');
  await her.maker.press('Save as a PDF');
  const name = (await coming).suggestedFilename();
  await her.page.locator('.notice', { hasText: `${name} is in your downloads` }).waitFor();
});

test('a second toy of a name is told apart from the first', async () => {
  for (const name of ['Thistle', 'Thistle']) {
    await her.maker.at('new');
    await her.page.getByRole('textbox').fill(name);
    await her.maker.press('Next');
    await her.maker.heading(/kind of body/);
  }
  await her.maker.toys();
  expect(await her.page.locator('.toy-row b').allTextContents()).toEqual(['Thistle 2', 'Thistle']);
});

describe('what is told in passing', () => {
  test('waits until the first number is kept and she is done with the step; then it lies over no button', async () => {
    const notice = her.page.locator('.notice');
    await her.atStep('chest-girth');
    expect(await notice.count()).toBe(0);
    await her.maker.type('16');
    await her.maker.next();
    await her.page.waitForFunction(async () => (await indexedDB.databases()).length > 0);
    await her.maker.step('body-girth');
    expect(await notice.count()).toBe(0);
    await her.maker.press(/Leave it for now/);
    await notice.waitFor();
    await untilStill(her.page);
    const told = await notice.boundingBox();
    const button = await her.maker.named('Make something else').boundingBox();
    expect((button?.y ?? 0) + (button?.height ?? 0)).toBeLessThanOrEqual(told?.y ?? 0);
    await her.page.evaluate(() => scrollTo(0, document.body.scrollHeight));
    const last = await her.maker.named('Remove this toy').boundingBox();
    expect((last?.y ?? 0) + (last?.height ?? 0)).toBeLessThanOrEqual(button?.y ?? 0);
  });
});

test('a screen just opened begins at its top', async () => {
  await her.maker.borrow('Bramble');
  await her.page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await her.maker.press('Share its card');
  await her.maker.heading(/Share/);
  await untilStill(her.page);
  expect(await her.page.evaluate(() => scrollY)).toBe(0);
});

test('a toy is found by its name without its accents', async () => {
  await her.maker.open();
  for (const name of ['Äpfelchen', 'Birne', 'Dattel', 'Feige', 'Kirsche', 'Quitte', 'Traube']) {
    await her.maker.at('new');
    await her.page.getByRole('textbox').fill(name);
    await her.maker.press('Next');
    await her.maker.heading(/kind of body/);
  }
  await her.maker.toys();
  await her.page.getByRole('searchbox').fill('apfel');
  await her.page.waitForFunction(() => document.querySelectorAll('.toy-row').length === 1);
  expect(await her.page.locator('.toy-row b').textContent()).toBe('Äpfelchen');
});

test('the pattern says what passes, each once and with one number', async () => {
  await her.maker.borrow('Bramble');
  await her.maker.press('Make something');
  await her.maker.choose(/hooded top/i);
  await her.maker.go('pattern', 'Put it on paper');
  const said = await her.page.locator('.passes, .stuck').allTextContents();
  expect(said.map((each) => /^The (head|paw)/.exec(each)?.[1])).toEqual(['head', 'paw']);
  for (const each of said) expect(each.match(/\d\u00a0in\b|[⅛¼⅜½⅝¾⅞]\u00a0in\b/gu), each).toHaveLength(1);
});

test('whom else it fits speaks of other toys only where there are others', async () => {
  const none = her.page.getByText(/^None of your other toys/);
  const ask = async () => {
    await her.maker.named('Put it on paper').waitFor({ timeout: 60_000 });
    await her.page.getByText('Whom else does it fit?').click();
    await her.page.getByText(/^For a label/).waitFor();
  };
  await her.maker.borrow('Bramble');
  await her.maker.press('Make something');
  await her.maker.choose(/tee/i);
  await her.maker.go('pattern');
  const pattern = her.page.url();
  await ask();
  await untilStill(her.page);
  expect(await none.count()).toBe(0);
  await her.maker.at('new');
  await her.maker.name('Thistle');
  await her.page.goto(pattern);
  await ask();
  await none.waitFor();
});
