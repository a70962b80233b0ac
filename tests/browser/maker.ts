import type { Locator, Page } from 'playwright-core';
import { inchParts, type Mm } from '../../app/body';
import { untilStill } from './browser';

/** A maker at her table, as the browser tests and the pictures move her: by the words she reads, never by classes. */
export class Maker {
  /** `touch`: she taps and never clicks; numbers go in by the keys on the screen. */
  constructor(
    readonly page: Page,
    readonly address: string,
    readonly touch = false,
  ) {}

  open = () => this.page.goto(this.address);

  at = (path: string) => this.page.goto(`${this.address}#/${path}`);

  heading = (name: string | RegExp) => this.page.getByRole('heading', { level: 1, name }).waitFor();

  field = () => this.page.locator('main input[type="text"]').first();

  press = (name: string | RegExp) => this.touched(this.named(name).first());

  /** A button or a link of this name, whichever there is. */
  named(name: string | RegExp): Locator {
    return this.page.getByRole('button', { name }).or(this.page.getByRole('link', { name }));
  }

  /** A screen back, and until taps count there. */
  async back(): Promise<void> {
    await this.page.goBack();
    await untilStill(this.page);
  }

  touched = (what: Locator) => (this.touch ? what.tap() : what.click());

  async name(name: string): Promise<void> {
    await this.page.getByRole('textbox').fill(name);
    await this.press('Next');
    await this.heading(/kind of body/);
  }

  async kind(name: string): Promise<void> {
    await this.touched(this.page.getByRole('radio', { name: new RegExp(name) }));
    await this.press('Next');
    await this.heading(/built/);
  }

  async choose(garment: RegExp): Promise<void> {
    await this.press(garment);
    await this.heading(/made/);
  }

  async type(text: string): Promise<void> {
    await this.field().fill(text);
  }

  /** Enters a length to the nearest sixteenth by the keys on the screen. */
  async tapLength(mm: Mm): Promise<void> {
    const { whole, sixteenths } = inchParts(mm);
    const eighth = [...'⅛¼⅜½⅝¾⅞'][Math.floor(sixteenths / 2) - 1];
    if (whole > 0) for (const digit of String(whole)) await this.key(digit);
    if (eighth) await this.key(eighth);
    if (sixteenths % 2) await this.press(/One sixteenth more/);
  }

  key = (face: string) => this.touched(this.page.getByRole('button', { name: new RegExp(`^${face}( |$)`) }));

  async next(): Promise<void> {
    const before = this.page.url();
    await this.press(/^Next:|^Back to:/);
    await this.page.waitForURL((url) => url.href !== before);
  }

  async again(text: string): Promise<void> {
    await this.press('Again');
    await this.type(text);
    await this.page.locator('#step-status > :not(.unseen)', { hasText: /on average/ }).waitFor();
  }

  async wrong(text: string): Promise<void> {
    await this.type(text);
    await this.press(/^Next:/);
    await this.page.locator('.wrong-words', { hasText: /\w/ }).waitFor();
  }

  /** Waits for a lay, and lets that be enough. */
  async enoughCloth(): Promise<void> {
    await this.page.getByText(/of cloth/).waitFor();
    const stop = this.named('That will do');
    if (await stop.isVisible()) await this.touched(stop);
    await this.named('Save as a PDF').waitFor();
  }

  /** Takes one of the toys to try, from the first screen while it is empty. */
  async borrow(name: string): Promise<void> {
    await this.open();
    await this.press(name);
    await this.heading(name);
    // What comes to stand at its lower edge late would lie in a tap's way.
    await untilStill(this.page);
  }

  async step(measure: string): Promise<void> {
    await this.go(`measure/${measure}`);
    await this.field().waitFor();
  }

  /** A front wider than the toy is round: the app must ask. */
  async doubt(): Promise<void> {
    await this.type('17');
    await this.next();
    await this.step('front-width');
    await this.type('18');
    await this.press(/^Next:/);
    await this.page.getByRole('button', { name: 'Measure again' }).waitFor();
  }

  /** Another screen of the garment under way, shown when there is a button or link of this name. */
  async go(screen: string, shown?: string | RegExp): Promise<void> {
    const [, toy, garment] = /#\/toy\/(\w+)\/(\w+)/.exec(this.page.url()) ?? [];
    await this.at(`toy/${toy}/${garment}/${screen}`);
    if (shown) await this.named(shown).first().waitFor({ timeout: 60_000 });
  }

  /** Begins another garment for the toy under way, and goes to where several are chosen to be made at once. */
  async together(other: RegExp): Promise<void> {
    const [, toy] = /#\/toy\/(\w+)/.exec(this.page.url()) ?? [];
    await this.at(`toy/${toy}`);
    await this.press(/^Make something/);
    await this.choose(other);
    await this.at(`toy/${toy}/outfit`);
    await this.heading('Several at once');
  }

  async toys(): Promise<void> {
    await this.at('');
    await this.heading('Your toys');
  }
}
