import type { Page } from 'playwright-core';
import { untilDrawn } from './browser';
import { Maker } from './maker';

/** Every screen in the order a maker meets them, each reached from the one before: for pictures and for checks of all. */
export const screenWalk: readonly (readonly [name: string, reach: (maker: Maker) => Promise<unknown>])[] = [
  ['welcome', (maker) => maker.open()],
  ['toy', (maker) => maker.borrow('Bramble')],
  ['share', async (maker) => maker.press('Share').then(() => maker.page.waitForURL(/share$/))],
  [
    'garments',
    (maker) =>
      maker
        .back()
        .then(() => maker.press(/^Make something/))
        .then(() => maker.heading(/wear/)),
  ],
  ['choices-drawn', (maker) => maker.choose(/hooded top/i)],
  ['pattern', (maker) => maker.go('pattern', 'Put it on paper')],
  ['scrap-photo', (maker) => maker.go('cloth?photo', 'Choose one')],
  ['cloth', (maker) => maker.go('cloth', /That will do|Save as a PDF/).then(() => maker.enoughCloth())],
  ['true-size', (maker) => maker.go('true-size', 'The card fits')],
  ['print', (maker) => maker.go('print', 'Save the PDF')],
  ['pencil', (maker) => maker.go('pencil', /Draw this piece/)],
  ['sew', (maker) => maker.go('sew', 'Begin sewing')],
  ['sew-step', async (maker) => maker.press('Begin sewing').then(() => maker.named(/^Sewn/).first().waitFor())],
  ['tried', async (maker) => maker.go('tried').then(() => maker.heading(/sit/))],
  ['kept', (maker) => maker.go('kept', 'Make again')],
  ['again', async (maker) => maker.press('Make again').then(() => maker.heading(/for whom/))],
  ['fits', (maker) => maker.go('fits', 'Make it so')],
  ['together', (maker) => maker.together(/^Cape/)],
  ['outfit', async (maker) => maker.press(/together$/).then(() => maker.named('Put it on paper').waitFor())],
  ['settings', (maker) => maker.at('settings')],
  ['backup', (maker) => maker.at('settings/backup')],
  ['about', (maker) => maker.at('settings/about')],
  ['card', (maker) => maker.at('card')],
  ['trouble', (maker) => maker.at('toy/nobody')],
  ['name', (maker) => maker.at('new')],
  ['kind', (maker) => maker.name('Thistle')],
  ['looks', (maker) => maker.kind('Two arms')],
  ['choices', async (maker) => maker.press('Next: what to make').then(() => maker.choose(/hooded top/i))],
  ['marks', (maker) => maker.press('Next: threads and marks')],
  ['step', (maker) => maker.press('The marks are on')],
  ['step-typed', (maker) => maker.type('17½')],
  ['step-again', (maker) => maker.again('17⅜')],
  ['step-wrong', async (maker) => maker.step('body-girth').then(() => maker.wrong('5 1/'))],
  ['step-flag', (maker) => maker.doubt()],
  ['steps', (maker) => maker.go('steps', 'Save the sheet')],
  ['typed', async (maker) => maker.go('typed').then(() => maker.heading('Type numbers in'))],
  ['wishes', (maker) => maker.go('wishes', 'Look it over')],
  ['step-wish', (maker) => maker.step('body-length')],
  ['step-cm', (maker) => maker.press('centimetres')],
  ['photo', async (maker) => maker.step('armhole-depth').then(() => maker.press('By photo'))],
  ['review', (maker) => maker.go('review', /Draw the pattern|First:/)],
  ['toys', (maker) => maker.toys()],
];

/** Walks all of it in English. Gives the screens' addresses, once each; `look` is called with each while it is shown. */
export async function walkAll(
  page: Page,
  site: string,
  look: (name: string) => Promise<void>,
): Promise<ReadonlyMap<string, string>> {
  const maker = new Maker(page, site);
  const addresses = new Map<string, string>();
  for (const [name, reach] of screenWalk) {
    await reach(maker);
    await untilDrawn(page);
    await look(name);
    if (name !== 'welcome' && ![...addresses.values()].includes(page.url())) addresses.set(name, page.url());
  }
  return addresses;
}

/** Goes to another screen of the app that is open: its title is another, whatever it says. */
export async function turnTo(page: Page, address: string): Promise<void> {
  await page.evaluate(() => document.querySelector('h1')?.classList.add('before'));
  await page.goto(address);
  await page.locator('h1:not(.before)').first().waitFor();
  if (address.endsWith('/cloth')) await letThatDo(page);
  await untilDrawn(page);
}

/** A better lay is looked for until she says that this one will do. */
async function letThatDo(page: Page): Promise<void> {
  await page.locator('.lay-cloth').first().waitFor();
  await page.evaluate(() => document.querySelector<HTMLElement>('.page-acts button.plain')?.click());
}
