import { afterAll, beforeAll, expect, test } from 'vitest';
import { createSay, ownName } from '../../app/words';
import { openSite, phone, type Site, untilStill } from './browser';
import { Maker } from './maker';
import { textFaults } from './text-faults';
import { touchFaults } from './touch-faults';

/** The largest that Chromium's own settings let a device's smallest letters be, CSS pixels. */
const SMALLEST = 24;

/** Smaller than this a finger misses, CSS pixels; where letters are that large, the keys make room for them. */
const TOUCH = { usual: 48, large: 44 };

/** A bar that is held may take so much of the window, and all that is held together so much. */
const MOST_HELD = { each: 0.42, together: 0.67 };

let site: Site;
beforeAll(async () => {
  site = await openSite({ font: 'wide', smallest: SMALLEST, keeps: false });
});
afterAll(() => site.close());

test('with a smallest size of 24 the fullest screens hold the longest words; a finger finds all that is pressed', async () => {
  const { page, wrong, close } = await site.visit({ ...phone, reducedMotion: 'reduce' });
  const addresses = await fullest(new Maker(page, site.address));
  await page.goto(`${site.address}#/settings`);
  await page.locator('select', { hasText: ownName('de') }).selectOption('de');
  await page.locator('html:lang(de)').waitFor({ state: 'attached' });
  const found: string[] = [];
  for (const [name, address] of addresses) {
    await page.goto('about:blank');
    await page.goto(address);
    await untilStill(page);
    await page.locator('html:not(.just-changed)').waitFor();
    const faults = [
      ...(await page.evaluate(textFaults, false)),
      ...(await page.evaluate(heldFaults, MOST_HELD)),
      ...(await page.evaluate(touchFaults, TOUCH.large)),
    ];
    found.push(...faults.map((fault) => `${name}: ${fault}`));
  }
  expect(found).toEqual([]);
  expect(wrong).toEqual([]);
  await close();
});

test('what can be pressed on the toy can be pressed in words, by a whole finger', async () => {
  const { page, close } = await site.visit(phone);
  const say = await createSay('en');
  const maker = new Maker(page, site.address);
  await begun(maker);
  await maker.go('tried', 'It sits well');
  await page.locator('.tried-point').first().waitFor();
  const names = await page.locator('.tried-point').evaluateAll((all) => all.map((each) => each.ariaLabel));
  expect(names.length).toBeGreaterThan(5);
  await page.getByText(say('screen.in-words')).click();
  const worded = page.locator('details .tried-others button');
  expect(await worded.allTextContents()).toEqual(expect.arrayContaining(names));
  expect(await page.evaluate(touchFaults, TOUCH.usual)).toEqual([]);
  await worded
    .filter({ hasText: names[0] ?? '' })
    .first()
    .click();
  await page.getByRole('group', { name: names[0] ?? '', exact: true }).waitFor();
  await close();
});

test('the check itself finds what is small, and lets pass what is reached from around', async () => {
  const { page, close } = await site.visit(phone);
  await page.setContent(`<!doctype html><style>button { position: absolute; top: 100px; width: 28px; height: 28px; padding: 0 }
    #reached::before { content: ''; position: absolute; inset: -12px }</style>
    <button style="left: 50px">small</button><button id="reached" style="left: 150px">reached</button>
    <p>In a <a href="#here">sentence</a> it may be small.</p>`);
  const found = await page.evaluate(touchFaults, TOUCH.usual);
  expect(found).toEqual(['“small” is 28 × 28']);
  await close();
});

/** Bramble's hooded top, at its choices. */
async function begun(maker: Maker): Promise<void> {
  await maker.borrow('Bramble');
  await maker.press('Make something');
  await maker.choose(/hooded top/i);
}

/** The screens that have most on them, and where they are. */
async function fullest(maker: Maker): Promise<ReadonlyMap<string, string>> {
  await begun(maker);
  const ways = {
    choices: () => maker.go('choices'),
    step: () => maker.step('body-girth'),
    steps: () => maker.go('steps', 'Save the sheet'),
    review: () => maker.go('review', /Draw the pattern/),
    pattern: () => maker.go('pattern', 'Put it on paper'),
    print: () => maker.go('print', 'Save the PDF'),
    tried: () => maker.go('tried', 'It sits well'),
    settings: () => maker.at('settings'),
  };
  const addresses = new Map<string, string>();
  for (const [name, reach] of Object.entries(ways)) {
    await reach();
    addresses.set(name, maker.page.url());
  }
  return addresses;
}

/** In the page: bars that are held in sight and hide too much of it. */
function heldFaults({ each, together }: { readonly each: number; readonly together: number }): string[] {
  const held = [...document.querySelectorAll('.header, .page-acts, .choices > .dressed')].filter(
    (bar) => getComputedStyle(bar).position === 'sticky',
  );
  const shares = held.map((bar) => bar.getBoundingClientRect().height / innerHeight);
  const all = shares.reduce((sum, share) => sum + share, 0);
  return [
    ...held.flatMap((bar, at) => ((shares[at] ?? 0) > each ? [`held: ${bar.className}`] : [])),
    ...(all > together ? [`${Math.round(100 * all)} % of the window are held`] : []),
  ];
}
