/**
 * Two processes at one database, people at work through both, and every round one or both are killed. Whoever got no
 * answer sends the same again, to whichever process there is; now and then somebody sends to both at the same moment.
 */
import { setTimeout } from 'node:timers/promises';
import { checkShop } from '../../engine/store/check.ts';
import type { Store } from '../../engine/store/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE } from '../people.ts';
import { bundle } from '../process.ts';
import type { Answered, Asked } from './desk-process.ts';
import { Worker } from './worker.ts';

export interface Tortured {
  readonly replies: number;
  readonly kills: number;
  readonly resent: number;
  /** What must not be; empty. */
  readonly wrong: string[];
}
const DESKS = 6;
const NOTES = 12;

/** @param crash kills the database itself and starts it again; left out, it stays */
export async function torture(
  where: string,
  open: () => Promise<Store>,
  rounds: number,
  seed: number,
  crash?: () => Promise<void>,
): Promise<Tortured> {
  const program = await bundle(new URL('./desk-process.ts', import.meta.url));
  const chance = numbers(seed);
  const first = await open();
  for (const person of Object.values(PEOPLE)) await first.savePerson(personOf(person));
  await first.close();

  const workers = await Promise.all([Worker.start(program, where), Worker.start(program, where)]);
  const acknowledged = new Map<string, Answered>();
  const opened = new Set<string>();
  const wrong: string[] = [];
  let [over, number, resent, kills] = [false, 0, 0, 0];
  const any = (): Worker => workers[Math.floor(chance() * 2)] ?? workers[0];

  async function send(asked: Omit<Asked, 'n'>): Promise<Answered> {
    for (let first = true; ; first = false) {
      if (!first) resent++;
      const to = chance() < 0.1 ? workers.slice() : [any()];
      const outcomes = await Promise.all(to.map((worker) => worker.ask({ ...asked, n: ++number })));
      const answers = outcomes.filter((o): o is Answered => o !== 'gone' && !('trouble' in o));
      const [answer] = answers;
      if (!answer) {
        await setTimeout(10);
        continue;
      }
      const known = acknowledged.get(asked.client) ?? answer;
      for (const other of answers)
        if (JSON.stringify([other.job, other.kept]) !== JSON.stringify([known.job, known.kept]))
          wrong.push(`${asked.client}: answered ${JSON.stringify(known)} and ${JSON.stringify(other)}`);
      acknowledged.set(asked.client, known);
      return answer;
    }
  }
  async function person(name: string): Promise<void> {
    for (let call = 0; !over; call++) {
      const client = `${name}-${call}`;
      opened.add(client);
      let { job, seq } = await send({ by: 'ines', client, title: `Call ${client}` });
      for (let note = 0; note < NOTES && !over; note++)
        ({ seq } = await send({ by: 'ines', client: `${client}-${note}`, job, seq, text: `note Rust, ${note}.` }));
    }
  }
  const people = Promise.all(Array.from({ length: DESKS }, (_, i) => person(`p${i}`)));
  for (let round = 1; round <= rounds; round++) {
    await setTimeout(20 + chance() * 300);
    const killed = chance() < 0.3 ? [0, 1] : [Math.floor(chance() * 2)];
    if (crash && round % 5 === 0) await crash();
    kills += killed.length;
    await Promise.all(
      killed.map(async (i) => {
        await workers[i]?.kill();
        if (workers[i]?.errors) wrong.push(workers[i]?.errors ?? '');
        workers[i] = await Worker.start(program, where);
      }),
    );
  }
  over = true;
  await people;
  await Promise.all(workers.map((worker) => worker.kill()));
  for (const { errors } of workers) if (errors) wrong.push(errors);

  const store = await open();
  try {
    wrong.push(...(await checkShop(store)).trouble);
    for (const [client, { job, kept }] of acknowledged) {
      const found = (await store.byClient(job, client)).map((e) => [e.seq, e.hash]);
      const [mine, there] = opened.has(client) ? [kept, found.slice(0, 1)] : [kept, found];
      if (kept.length === 0 || JSON.stringify(mine) !== JSON.stringify(there))
        wrong.push(`${client}: acknowledged ${JSON.stringify(kept)}, kept ${JSON.stringify(found)}`);
    }
    const jobs = (await store.jobs()).length;
    if (jobs !== opened.size) wrong.push(`${opened.size} calls were opened, ${jobs} are there`);
  } finally {
    await store.close();
  }
  return { replies: acknowledged.size, kills, resent, wrong };
}

/** The same numbers for the same seed, from 0 to 1: https://en.wikipedia.org/wiki/Linear_congruential_generator */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
