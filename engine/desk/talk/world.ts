/**
 * A shop on a real database in a folder of its own, its processes, and time. A process is a desk with its memory and its
 * clock: when it dies both are gone, and the next one has only what was kept.
 */
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import type { Machine } from '../../compile.ts';
import { DEFAULT_SETTINGS } from '../../memory.ts';
import type { Entry } from '../../schema.ts';
import { openSqlite, type Store } from '../../store/index.ts';
import type { Manual } from '../../vocabulary.ts';
import { markIn, type Ticks } from '../clock.ts';
import { createDesk } from '../desk.ts';
import type { Desk } from '../types.ts';
import { CREW, DISPATCHER } from './people.ts';
import type { Opening } from './step.ts';

/** What is under test. A broken one replaces a part. */
export interface Product {
  readonly manual: Manual;
  readonly machine: Machine;
  /** Put around every desk. */
  readonly around: (desk: Desk) => Desk;
  readonly clock: (store: Store, ticks: Ticks) => Promise<() => Date>;
}
/** The process died: what it was about to say, nobody heard. */
export class Died extends Error {
  override name = 'Died';
}

/** How often a process that has nothing to do looks at the clock. */
const SOON = 15_000;
const HOUR = 60 * 60_000;
const START = Date.parse('2026-07-14T15:00:00.000Z');

/** In memory where the machine has a file system there: what is proved is the same, and no disk is waited for. */
const memory = (): string => (existsSync('/dev/shm') ? '/dev/shm' : tmpdir());

export class World {
  /** Milliseconds that have really passed, and how far the machine's clock is off. */
  passed = 0;
  private off = 0;
  /** How the process dies at its next append. */
  dies: 'lost' | 'unheard' | null = null;
  readonly machine: Machine;
  private readonly desks: (Desk | null)[] = [null, null];
  private readonly clocks: ((() => Date) | null)[] = [null, null];
  private ids = 0;

  private constructor(
    private readonly product: Product,
    private readonly folder: string,
    private readonly store: Store,
  ) {
    this.machine = product.machine;
  }

  static async open(product: Product): Promise<World> {
    const folder = await mkdtemp(join(memory(), 'nocool-talk-'));
    const store = await openSqlite(join(folder, 'shop.sqlite'));
    for (const person of CREW) await store.savePerson(person);
    return new World(product, folder, store);
  }
  async close(): Promise<void> {
    await this.store.close();
    await rm(this.folder, { recursive: true });
  }

  /** Real time goes on, and with it the machine's clock; every process looks at it now and then, and at the others'. */
  async pass(ms: number): Promise<void> {
    this.passed += ms;
    for (let round = 0; round < (ms > SOON ? 2 : 1); round++) {
      for (const clock of this.clocks) {
        clock?.();
        // What a clock writes down is kept by then.
        for (let i = 0; i < 3; i++) await setImmediate();
      }
    }
  }
  set(ms: number): void {
    this.off += ms;
  }
  client(): string {
    return `t${++this.ids}`;
  }
  /** ISO instant that a device shows whose clock is so many milliseconds behind. */
  device(behind: number): string {
    return new Date(START + this.passed + this.off - behind).toISOString();
  }

  /** An hour after whatever is on the record, with the clock right again and processes that know nothing. */
  private async anew(): Promise<void> {
    await this.pass(SOON);
    const [last] = await this.store.board(1);
    const mark = await markIn(this.store);
    const latest = Math.max(START, mark?.at ?? 0, ...(last ? [Date.parse(last.updated)] : []));
    this.off = Math.max(0, latest - START - this.passed) + HOUR;
    for (const which of [0, 1] as const) this.kill(which);
  }
  async begin({ assign, title, minutes, tag }: Opening): Promise<string> {
    await this.anew();
    await this.store.saveSettings({
      ...DEFAULT_SETTINGS,
      tagWithExtraMeasure: tag,
      ...(minutes === null ? {} : { minutes }),
    });
    const desk = await this.process();
    return (await desk.open(DISPATCHER, { title, assign, client: this.client() })).view.job;
  }
  /** One of two processes at one database. */
  async process(which: 0 | 1 = 0): Promise<Desk> {
    const desk = this.desks[which] ?? (await this.start(which));
    this.desks[which] = desk;
    return desk;
  }
  /** Its memory is thrown away. */
  kill(which: 0 | 1): void {
    this.desks[which] = null;
    this.clocks[which] = null;
    this.dies = null;
  }
  /** The record as the database has it. */
  async after(job: string, seq: number): Promise<Entry[]> {
    return (await this.store.readAfter(job, seq)).entries;
  }

  private async start(which: 0 | 1): Promise<Desk> {
    const ticks = { wall: () => START + this.passed + this.off, passed: () => this.passed };
    const { manual, machine, around, clock: clockOf } = this.product;
    const clock = await clockOf(this.store, ticks);
    this.clocks[which] = clock;
    const desk = createDesk({
      store: { ...this.store, append: (...one) => this.append(...one) },
      shelf: [manual],
      clock,
      random: (bytes) => (++this.ids).toString(16).padStart(2 * bytes, '0'),
      compile: () => machine,
    });
    return around(desk);
  }
  private async append(
    ...[job, seq, entries, texts, summary]: Parameters<Store['append']>
  ): ReturnType<Store['append']> {
    const { dies } = this;
    this.dies = null;
    if (dies === 'lost') throw new Died('before it was kept');
    const kept = await this.store.append(job, seq, entries, texts, summary);
    if (dies === 'unheard') throw new Died('before the answer was out');
    return kept;
  }
}
