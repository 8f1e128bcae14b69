/** A person with a phone: signs in by a link, taps and types what is on the screen. */
import type { BrowserContext, Locator, Page } from 'playwright-core';

export class PersonAtPhone {
  readonly page: Page;
  readonly errors: string[] = [];

  private constructor(page: Page) {
    this.page = page;
    page.on('pageerror', (error) => this.errors.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error' && !/Failed to load resource|net::ERR/.test(message.text()))
        this.errors.push(message.text());
    });
  }

  /** Already signed in, by the cookie that a link gave. */
  static async withCookie(context: BrowserContext, url: string, cookie: string): Promise<PersonAtPhone> {
    const [name = '', value = ''] = cookie.split('=');
    await context.addCookies([{ name, value, url }]);
    return new PersonAtPhone(await context.newPage());
  }

  static async signIn(context: BrowserContext, link: string): Promise<PersonAtPhone> {
    const person = new PersonAtPhone(await context.newPage());
    await person.page.goto(link);
    await person.page.getByRole('button', { name: 'Sign in' }).click();
    await person.page.getByRole('heading', { name: 'Calls' }).waitFor();
    return person;
  }

  /** The same person and phone, another tab. */
  tab = async (): Promise<PersonAtPhone> => new PersonAtPhone(await this.page.context().newPage());

  /** Opens a new call and gives its address. */
  async openCall(title: string): Promise<string> {
    await this.page.locator('[data-live="true"]').waitFor();
    await this.page.getByLabel('What and where').fill(title);
    await this.tap('Open the call');
    await this.page.waitForURL(/\/jobs\//);
    await this.ready();
    return this.page.url();
  }
  async goto(url: string): Promise<void> {
    await this.page.goto(url);
    await this.ready();
  }
  /** Once the script listens; before that a tap does nothing. */
  ready = (): Promise<void> => this.page.locator('.ticket[data-live="true"]').waitFor();

  get heading(): Locator {
    return this.page.locator('.card h2');
  }
  get strip(): Locator {
    return this.page.locator('.strip');
  }
  get refusal(): Locator {
    return this.page.locator('.refusal');
  }
  get composer(): Locator {
    return this.page.getByLabel('Type an answer');
  }

  tap = (name: string): Promise<void> =>
    this.page
      .getByRole('button', { name, exact: true })
      .or(this.page.getByRole('link', { name, exact: true }))
      .click();
  pick = (name: string): Promise<void> => this.page.locator('.pick', { hasText: name }).first().click();
  /** A reading; one that is folded because it may be left out is opened first. */
  async fill(label: string, value: string): Promise<void> {
    const field = this.page.getByLabel(label, { exact: true });
    const folded = this.page.locator('.spare:not([open])').filter({ has: field });
    if ((await folded.count()) > 0) await folded.locator('summary').click();
    await this.page.locator('.card').locator(field).fill(value);
  }
  /** What is in the card's own Send. */
  send = (): Promise<void> => this.page.locator('.parts button[type=submit]').click();

  /** Types into the line that takes anything. */
  async type(text: string): Promise<void> {
    await this.composer.fill(text);
    // Enter counts once what went before it is on its way.
    if (text.trim() !== '') await this.page.locator('.composer button[type=submit][aria-disabled="false"]').waitFor();
    await this.composer.press('Enter');
  }
  async more(name: string): Promise<void> {
    await this.tap('More');
    await this.page.locator('.more').getByRole('button', { name, exact: true }).click();
  }
  /** Waits for the question. */
  async sees(title: string | RegExp): Promise<void> {
    await this.page.locator('.card h2', { hasText: title }).first().waitFor({ timeout: 10_000 });
  }
}
