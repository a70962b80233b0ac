import type { Locator, Page } from 'playwright-core';
import type { MeasureId, Say } from '../../app/body';
import { bodyFrom, demoCards } from '../../app/measuring';

const [card] = demoCards;
if (!card) throw new Error('no demo toys');
const { sizes } = bodyFrom(card);
const known = new Map(Object.entries(sizes).map(([measure, size]) => [measure as MeasureId, size.value]));

/** More steps than a garment ever asks. */
const MOST_STEPS = 40;

/** From the empty app to the button that saves the pattern, in any language: all is found by what `say` calls it. */
export async function mainJob(page: Page, say: Say, { follow, pick, write }: ReturnType<typeof hands>): Promise<void> {
  const titled = (name: string) => page.getByRole('heading', { level: 1, name, exact: true }).waitFor();
  const onward = (name: string) => follow(page.getByRole('link', { name }).or(page.getByRole('button', { name })));
  await onward(say('screen.toys.measure'));
  await titled(say('screen.name.title'));
  await write(page.getByRole('textbox', { name: say('screen.name.label') }), 'Thistle');
  await onward(say('screen.next'));
  await titled(say('screen.kind.title'));
  await onward(say('screen.next'));
  await titled(say('screen.looks.title'));
  const ears = page.getByRole('group', { name: say('trait.ears.name') });
  await pick(ears.getByRole('radio', { name: say('trait.ears.side') }));
  await onward(say('screen.looks.next'));
  await titled(say('screen.garments.title', { name: 'Thistle' }));
  await onward(say('garment.hooded-top.name'));
  await titled(say('screen.choices.title'));
  await onward(say('screen.choices.to-marks'));
  await titled(say('screen.marks.title'));
  await onward(say('screen.marks.done'));
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    const title = await page.getByRole('heading', { level: 1 }).textContent();
    const [, mm] = [...known].find(([measure]) => say(`measure.${measure}.name`) === title) ?? [];
    if (mm === undefined) break;
    await write(page.getByRole('textbox', { name: title ?? '', exact: true }), (mm / 10).toFixed(1));
    await onward(say('screen.step.next'));
  }
  await titled(say('screen.wishes.title'));
  await onward(say('screen.wishes.next'));
  await titled(say('screen.review.title'));
  await onward(say('screen.review.draw'));
  await onward(say('screen.pattern.print'));
  await titled(say('screen.print.title'));
}

/**
 * Hands on the keyboard alone: the tab key until the thing has the focus, then the keys that its role answers to.
 * Everything is sought by its role and its name. `heard` is called whenever something may have been said.
 */
export function hands(page: Page, heard: () => Promise<void>) {
  const key = async (name: string) => {
    await page.keyboard.press(name);
    await heard();
  };
  const tabTo = async (what: Locator) => {
    await what.first().waitFor();
    for (let stop = 0; stop < 80 && !(await what.evaluateAll(heldOrPeer)); stop++) await key('Tab');
    if (!(await what.evaluateAll(heldOrPeer))) throw new Error(`the tab key does not lead to ${what}`);
  };
  return {
    press: async (what: Locator) => {
      await tabTo(what);
      await page.keyboard.press('Enter');
    },
    follow: async (what: Locator) => {
      await tabTo(what);
      await leading(page, () => page.keyboard.press('Enter'), heard);
    },
    pick: async (what: Locator) => {
      await tabTo(what);
      for (let turn = 0; turn < 8 && !(await what.isChecked()); turn++) await key('ArrowDown');
    },
    write: async (what: Locator, text: string) => {
      await tabTo(what);
      await page.keyboard.type(text);
      await heard();
    },
  };
}

/** The same by clicks alone, as a switch or a voice gives them: numbers go in by the keys on the screen. */
export function clicks(page: Page, heard: () => Promise<void>, say: Say): ReturnType<typeof hands> {
  const click = async (what: Locator) => {
    await what.first().click();
    await heard();
  };
  const key = (face: string) => (face === '.' ? new RegExp(`${say('screen.keypad.point')}$`) : new RegExp(`^${face}$`));
  return {
    press: click,
    follow: (what) => leading(page, () => what.first().click(), heard),
    pick: click,
    write: async (what, text) => {
      if (!/^[\d.]+$/.test(text)) return what.fill(text);
      for (const face of text) await click(page.getByRole('button', { name: key(face) }));
    },
  };
}

/** In the page: whether one of these has the focus, or a radio of the same group, which is one stop of the tab key. */
function heldOrPeer(all: readonly Element[]): boolean {
  const held = document.activeElement;
  const groupOf = (each: Element | null) =>
    each instanceof HTMLInputElement && each.type === 'radio' ? each.name : null;
  return all.some((each) => each === held || (groupOf(each) !== null && groupOf(each) === groupOf(held)));
}

/** Does what leads to another screen, and waits until that has its title and the focus is on it. */
async function leading(page: Page, act: () => Promise<void>, heard: () => Promise<void>): Promise<void> {
  const before = page.url();
  await act();
  await page.waitForURL((url) => url.href !== before);
  await page.waitForFunction(() => document.activeElement?.tagName === 'H1');
  await heard();
}
