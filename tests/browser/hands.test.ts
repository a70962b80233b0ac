import { describe, expect, test } from 'vitest';
import { eachPhone } from './each-phone';

const her = eachPhone();

/** To a step where a number was kept on an earlier visit. */
async function atKept(measure: string, typed: string): Promise<void> {
  await her.atStep(measure);
  await her.maker.type(typed);
  await her.page.getByText('saved', { exact: true }).waitFor();
  await her.maker.next();
  await her.page.reload();
  await her.maker.step(measure);
  await expect.poll(fieldText).not.toBe('');
}
const fieldText = () => her.maker.field().inputValue();

describe('a number kept before', () => {
  test('gives way to the first key pressed on it', async () => {
    await atKept('chest-girth', '7 1/2');
    expect(await fieldText()).toBe('7½');
    await her.maker.key('2');
    expect(await fieldText()).toBe('2');
    await her.maker.key('5');
    expect(await fieldText()).toBe('25');
  });

  test('gives way to what a keyboard types', async () => {
    await atKept('chest-girth', '7 1/2');
    await her.page.keyboard.type('19');
    expect(await fieldText()).toBe('19');
  });

  test('is moved by a nudge', async () => {
    await atKept('chest-girth', '7 1/2');
    await her.maker.press(/One sixteenth more/);
    expect(await fieldText()).toBe('7 9⁄16');
  });

  test('does not come back in silence where it was cleared', async () => {
    await atKept('chest-girth', '7 1/2');
    await her.maker.type('');
    await her.maker.press(/^Next:/);
    await her.page.locator('.wrong-words', { hasText: 'Skip keeps 7½ in' }).waitFor();
    expect(her.page.url()).toMatch(/chest-girth$/);
    await her.maker.press('Skip');
    await her.page.waitForURL((url) => !url.href.includes('chest-girth'));
  });
});

describe('a doubt', () => {
  const slip = () => her.page.locator('.doubt');

  test('is one at a time: its severity the name of its group, at most three ways on, “measure again” first', async () => {
    await her.atStep('body-girth');
    await her.maker.doubt();
    await slip()
      .getByRole('group', { name: /Cannot be|Unlikely/ })
      .getByRole('heading')
      .waitFor();
    const ways = await slip().locator('.doubt-acts > *').allTextContents();
    expect(ways.length).toBeLessThanOrEqual(3);
    expect(await slip().getByRole('figure').allTextContents()).toEqual([
      expect.stringContaining('as typed'),
      expect.stringMatching(/usual|goes with the rest/),
    ]);
    expect(ways[0]).toBe('Measure again');
    await her.page.keyboard.type('8 1/2');
    await expect.poll(fieldText).toBe('8 1/2');
    await her.maker.next();
  });

  test('that is kept makes way for the next, and the last for the next step', async () => {
    await her.maker.borrow('Bramble');
    await her.maker.press('Make something');
    await her.maker.choose(/hooded top/i);
    // A front far too wide, and then a girth that even the back is too wide for: two that cannot be.
    for (const [measure, typed] of [
      ['front-width', '30'],
      ['body-girth', '7'],
    ] as const) {
      await her.maker.step(measure);
      await expect.poll(fieldText).not.toBe('');
      await her.maker.type(typed);
      await her.maker.press(/^Next:/);
      await slip().waitFor();
      if (measure === 'front-width') await her.maker.press('Later');
    }
    const seen: string[] = [];
    while (her.page.url().endsWith('body-girth')) {
      const text = (await slip().textContent()) ?? '';
      seen.push(text);
      expect(seen.length, seen.join('\n')).toBeLessThan(6);
      await slip().getByRole('button').last().click();
      await her.page.waitForFunction(
        (before) => document.querySelector<HTMLElement>('.doubt')?.textContent !== before,
        text,
      );
    }
    expect(seen.length).toBeGreaterThan(1);
  });
});

test('numbers typed in from a sheet are kept one after the other, and the list of steps has them', async () => {
  await her.atStep('height');
  await her.maker.go('typed');
  await her.page.getByRole('textbox', { name: /Height/ }).fill('16');
  await her.page.keyboard.press('Enter');
  await her.page.keyboard.type('17 1/2');
  await her.page.keyboard.press('Enter');
  await her.maker.go('steps', 'Save the sheet');
  await her.page.getByRole('link', { name: /^Head girth 17½ in/ }).waitFor();
  await her.page.getByRole('link', { name: /^Height 16 in/ }).waitFor();
});

test('two quick taps on Next do not run through a whole screen', async () => {
  await her.atStep('chest-girth');
  await her.maker.type('16');
  await her.page.waitForFunction(() => !document.documentElement.classList.contains('just-changed'));
  const place = await her.page.getByRole('button', { name: /^Next:/ }).boundingBox();
  const { x, y } = place ?? { x: 0, y: 0 };
  const before = her.page.url();
  await her.page.touchscreen.tap(x + 20, y + 20);
  await her.page.waitForURL((url) => url.href !== before);
  await her.page.touchscreen.tap(x + 20, y + 20);
  await her.page.waitForFunction(() => !document.documentElement.classList.contains('just-changed'));
  expect(await her.page.locator('.wrong-words', { hasText: /\w/ }).count()).toBe(0);
  await her.maker.key('7');
  expect(await fieldText()).toBe('7');
});

test('in a device’s own colours what is pressed is told from what is not, and what is suggested can be read', async () => {
  await her.atStep('body-length');
  await her.page.emulateMedia({ forcedColors: 'active' });
  const colours = (pressed: boolean) =>
    her.page.locator(`.unit-toggle [aria-pressed="${pressed}"]`).evaluate((each) => {
      const { backgroundColor, color } = getComputedStyle(each);
      return { backgroundColor, color };
    });
  const [pressed, other] = [await colours(true), await colours(false)];
  expect(pressed.backgroundColor).not.toBe(other.backgroundColor);
  expect(pressed.color).not.toBe(pressed.backgroundColor);
  expect(await suggestedOpacity()).toBe('1');
  await her.page.emulateMedia({ forcedColors: 'none' });
  expect(Number(await suggestedOpacity())).toBeGreaterThanOrEqual(LEAST_OPACITY);
});

/** Paler than this a suggested number has less than 3 : 1 on paper (WCAG 1.4.3, large letters). */
const LEAST_OPACITY = 0.7;
const suggestedOpacity = () => her.maker.field().evaluate((field) => getComputedStyle(field, '::placeholder').opacity);
