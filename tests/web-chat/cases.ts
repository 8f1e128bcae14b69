/** One browser, one server, one page a person, and for every case a call of its own that is brought to where it begins. */
import { rm } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import type { Reply } from '../../engine/schema.ts';
import { type PersonId, TO_READINGS } from '../people.ts';
import { buildPage, launch, phone } from './browser.ts';
import { PersonAtPhone } from './person.ts';
import { type Serving, serve } from './serve.ts';
import { openShop, type Shop } from './shop.ts';

export const PROVING = '121 / 0.2 0 0.1 / 0 0 / 121';
export const RESIDUAL = '9.3 / 0.6 0.1 0.5 / 9.3';
export const GOOD = 'herm 44.6 fan 5.03 hf 4.52 case ol';
export const WEAK_HERM = 'herm 36.1 fan 5.02 hf 4.4 case ol';
export const READINGS = 'Measure both sections';

const WAY: readonly string[] = TO_READINGS;
const LOOK = WAY.indexOf('clean, 1 cap, 45+5 6% 440');
export const toReadings = (print = '45+5 6% 440'): readonly string[] => WAY.with(LOOK, `clean, 1 cap, ${print}`);
export const TO_PROVING = WAY.slice(0, LOOK + 1);
export const TO_RESIDUAL = WAY.slice(0, LOOK + 2);

/** A case may wait long for a machine that is busy with other files. */
export const PATIENCE = { timeout: 15_000, interval: 100 };

export class Cases {
  private browser: Browser | undefined;
  private folder = '';
  private serving: Serving | undefined;
  private opened: Shop | undefined;
  private readonly people = new Map<PersonId, PersonAtPhone>();
  private count = 0;

  constructor() {
    beforeAll(async () => {
      [this.folder, this.opened, this.browser] = await Promise.all([buildPage(), openShop(), launch()]);
      this.serving = await serve({ ...this.opened, pageFolder: this.folder });
    });
    afterEach(async () => {
      for (const { errors, page } of this.people.values()) {
        expect(errors.splice(0)).toEqual([]);
        // Else the page of this case goes on listening during the next.
        await page.goto('about:blank');
      }
    });
    afterAll(async () => {
      await this.browser?.close();
      await this.serving?.close();
      await this.opened?.close();
      if (this.folder) await rm(this.folder, { recursive: true });
    });
  }

  get shop(): Shop {
    if (!this.opened) throw new Error('the shop opens before the first case');
    return this.opened;
  }

  /** Opens a call and gives these lines straight to the desk; each has to be taken. */
  async brought(way: readonly string[]): Promise<string> {
    const { view } = await this.shop.desk.open('ines', { title: 'No cool', client: this.client() });
    for (const line of way) await this.tell('ines', view.job, line);
    return view.job;
  }
  async tell(who: PersonId, job: string, text: string): Promise<void> {
    const { prompt } = await this.shop.desk.look(who, job);
    const reply: Reply = { kind: 'text', client: this.client(), seq: prompt.seq, text };
    const { refusal } = await this.shop.desk.reply(who, job, reply);
    if (refusal) throw new Error(`"${text}" at ${prompt.place}: ${refusal.text}`);
  }
  /** Their phone, with this call open. */
  async phone(who: PersonId, job: string): Promise<PersonAtPhone> {
    const person = this.people.get(who) ?? (await this.another(who));
    this.people.set(who, person);
    await person.goto(this.url(job));
    return person;
  }
  /** A phone more, signed in and nothing open yet. */
  async another(who: PersonId): Promise<PersonAtPhone> {
    if (!this.browser || !this.serving) throw new Error('the browser opens before the first case');
    return PersonAtPhone.withCookie(await phone(this.browser), this.serving.url, await this.serving.cookieFor(who));
  }
  url = (job: string): string => `${this.serving?.url}/jobs/${job}`;
  client = (): string => `case${++this.count}`;
}

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();
/** What the page shows of the strip: its words, without the time that is left. */
export const strip = async (on: PersonAtPhone): Promise<string> =>
  plain((await on.strip.locator('strong').allTextContents()).join());
export const notices = async (on: PersonAtPhone): Promise<string> =>
  plain((await on.page.locator('.card .notices').allTextContents()).join(' '));
/** Titles of the verdicts, folded or open. */
export const verdicts = (on: PersonAtPhone): Promise<string[]> => on.page.locator('.verdict > h2').allTextContents();
/** Everything that can be read: notices, and verdicts after a tap on what folds them. */
export async function shown(on: PersonAtPhone): Promise<string> {
  const folded = on.page.locator('details:not([open]) > summary', { hasText: 'Verdict:' });
  if ((await folded.count()) > 0) await folded.first().click();
  const open = on.page.locator('.verdict').filter({ visible: true });
  return plain(`${await notices(on)} ${(await open.allTextContents()).join(' ')}`);
}
