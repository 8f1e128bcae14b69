/** One window of somebody at a desk or with a phone, who does what a script's row says: by keyboard alone, or by taps. */
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Act } from './five-minutes.ts';

/** Stops of a page from which one gets to anything; what is named is wanted sooner. */
const STOPS = 200;
const exactly = (text: string): RegExp => new RegExp(`^\\s*${escaped(text)}\\s*(may be left out|all that fit)?$`);
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/ /g, '\\s+');

export class AtWindow {
  readonly errors: string[] = [];
  constructor(
    readonly page: Page,
    /** Whoever has a keyboard touches no mouse. */
    readonly by: 'keyboard' | 'taps',
  ) {
    page.on('pageerror', ({ message }) => void this.errors.push(message));
    page.on('console', (message) => {
      if (message.type() === 'error') this.errors.push(message.text());
    });
  }

  async signIn(link: string): Promise<void> {
    await this.page.goto(link);
    await this.act({ do: 'press', what: 'Sign in' });
    await this.page.getByRole('heading', { name: 'Calls', exact: true }).waitFor();
  }

  async act(act: Act): Promise<void> {
    const { page } = this;
    await page.bringToFront();
    switch (act.do) {
      case 'open':
      case 'press': {
        const name = act.do === 'press' ? exactly(act.what) : new RegExp(`^${escaped(act.what)}`);
        const named = page.getByRole('button', { name }).or(page.getByRole('link', { name }));
        return this.hit(named.or(page.locator('summary').filter({ hasText: name })), 'Enter');
      }
      case 'pick': {
        const name = exactly(act.what);
        return this.choose(page.getByRole('radio', { name }).or(page.getByRole('checkbox', { name })));
      }
      case 'type': {
        const field = page.getByLabel(act.in === null ? 'Type an answer' : exactly(act.in));
        if (this.by === 'taps') await field.fill(act.what);
        else {
          await this.tabTo(field);
          await page.keyboard.type(act.what);
        }
        if (act.in === null) await field.press('Enter');
      }
    }
  }

  /** Whether all of these can be read now. */
  reads = (texts: readonly string[]): Promise<boolean> =>
    this.page.evaluate((all) => {
      const shown = document.body.innerText.replace(/\s+/g, ' ');
      return all.every((text) => shown.includes(text));
    }, texts);
  /** Waits until these can be read, without touching anything. */
  async comesToRead(texts: readonly string[]): Promise<void> {
    const read = async () => {
      const shown = await this.page.evaluate(() => document.body.innerText.replace(/\s+/g, ' '));
      return texts.filter((text) => !shown.includes(text));
    };
    await expect.poll(read, { timeout: 20_000, interval: 60, message: this.page.url() }).toEqual([]);
  }
  /** The question that stands is before one's eyes, not above or below the edge. */
  async questionInSight(): Promise<void> {
    const seen = () =>
      this.page
        .locator('.card h2')
        .first()
        .evaluate((title) => {
          const { top, bottom } = title.getBoundingClientRect();
          return top >= 0 && bottom <= innerHeight;
        });
    await expect.poll(seen, { timeout: 5_000, interval: 60, message: 'the question is out of sight' }).toBe(true);
  }

  private async hit(on: Locator, key: string): Promise<void> {
    if (this.by === 'taps') return on.first().click();
    await this.tabTo(on);
    await this.page.keyboard.press(key);
  }
  /** A radio is one stop with its neighbours: arrows go from one to the next. */
  private async choose(on: Locator): Promise<void> {
    if (this.by === 'taps') return on.first().check();
    const radio = (await on.first().getAttribute('type')) === 'radio';
    const group = await on.first().getAttribute('name');
    await this.tabTo(radio ? this.page.locator(`input[name="${group}"]`) : on);
    for (let i = 0; radio && i < 20 && !(await hasFocus(on.first())); i++) await this.page.keyboard.press('ArrowDown');
    if (!(await on.first().isChecked())) await this.page.keyboard.press('Space');
    expect(await on.first().isChecked()).toBe(true);
  }
  private async tabTo(on: Locator): Promise<void> {
    await on.first().waitFor();
    for (let i = 0; i < STOPS; i++) {
      if (await hasFocus(on)) return;
      await this.page.keyboard.press('Tab');
    }
    throw new Error(`no Tab leads to ${on}`);
  }
}

const hasFocus = (on: Locator): Promise<boolean> =>
  on.evaluateAll((all) => all.some((element) => element === document.activeElement));
