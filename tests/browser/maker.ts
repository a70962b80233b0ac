import type { Page } from 'playwright-core';

/** A maker at her table, as the browser tests and the pictures move her: by the words she reads, never by classes. */
export class Maker {
  constructor(
    readonly page: Page,
    readonly address: string,
  ) {}

  open = () => this.page.goto(this.address);

  at = (path: string) => this.page.goto(`${this.address}#/${path}`);

  /** Presses a button or follows a link of this name, whichever there is. */
  async press(name: string | RegExp): Promise<void> {
    const button = this.page.getByRole('button', { name });
    const link = this.page.getByRole('link', { name });
    await button.or(link).first().click();
  }

  field = () => this.page.locator('main input[type="text"]').first();

  async name(name: string): Promise<void> {
    await this.page.getByRole('textbox').fill(name);
    await this.press('Next');
    await this.heading(/body/);
  }

  heading = (name: string | RegExp) => this.page.getByRole('heading', { level: 1, name }).waitFor();

  async kind(name: string): Promise<void> {
    await this.page.getByRole('radio', { name: new RegExp(name) }).check({ force: true });
    await this.press('Next');
    await this.heading(/built/);
  }

  async type(text: string): Promise<void> {
    await this.field().fill(text);
  }

  async next(): Promise<void> {
    const before = this.page.url();
    await this.page.getByRole('button', { name: /^Next:|^Back to:/ }).click();
    await this.page.waitForURL((url) => url.href !== before);
  }

  async again(text: string): Promise<void> {
    await this.press('Again');
    await this.type(text);
    await this.page.getByText(/on average/).waitFor();
  }

  /** Takes one of the toys to try, from the first screen while it is empty. */
  async borrow(name: string): Promise<void> {
    await this.open();
    await this.press(name);
    await this.page.getByRole('heading', { level: 1, name }).waitFor();
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

  /** The address of a screen of the garment under way. */
  async go(screen: string): Promise<void> {
    const [, toy, garment] = /#\/toy\/(\w+)\/(\w+)/.exec(this.page.url()) ?? [];
    await this.at(`toy/${toy}/${garment}/${screen}`);
  }

  async toys(): Promise<void> {
    await this.at('');
    await this.page.getByRole('heading', { level: 1, name: 'Your toys' }).waitFor();
  }
}
