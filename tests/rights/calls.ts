/** Calls brought to a point once, and copied for whoever tries something there: a copy is a record like any other. */
import { randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { seal, textRef } from '../../engine/chain.ts';
import { DEFAULT_SETTINGS } from '../../engine/memory.ts';
import type { Draft, Entry, Text } from '../../engine/schema.ts';
import { Shop } from '../desk/shop.ts';
import { GOOD, MEANS, MOTORS, PLATE } from '../engine/given.ts';
import { type PersonId, TO_READINGS } from '../people.ts';

/** Stands in the title and in a note of each call: whoever may not see a call may not read it anywhere. */
export const SECRET = 'Quince Hollow 12';
const PHOTO = readFileSync(new URL('../web-chat/pictures/gate.jpg', import.meta.url));

interface Kept {
  readonly entries: readonly Entry[];
  readonly texts: readonly Text[];
}
/** How far each call has come; the technician on it is Ines, and the senior who asks something is Mira. */
const PLAYS = {
  eyes: ['d'],
  gate: ['d', 'psc', 'yes'],
  inside: [...TO_READINGS],
  stopped: ['d', 'stop', 'cover on, no lock'],
  alarm: ['d', 'psc', 'yes', 'alarm'],
  word: ['d', 'psc', 'yes', 'note there is a burnt tab'],
  approval: ['d', 'psc', 'yes', MEANS, 'no lock fits'],
  asked: ['d', 'psc', 'yes', 'mira: ask what does the plate say'],
  handed: ['d', 'dana: hand over ines'],
  ended: [...TO_READINGS.slice(0, 10), 'photo', GOOD, ...MOTORS, PLATE, 'closed', '240 239 comp 13.1 fan .9 split 19'],
} as const;
export type State = keyof typeof PLAYS | 'caller';

export interface Calls {
  readonly shop: Shop;
  /** A call of its own in this state; `own`: with this person where Ines was. */
  copy(state: State, own?: PersonId): Promise<string>;
  /** The hash of the photo on the calls that have ended. */
  readonly photo: string;
  close(): Promise<void>;
}

export async function openCalls(): Promise<Calls> {
  const shop = await Shop.open();
  const more = { initials: 'X', certified: true, meter: null, active: true };
  await shop.store.savePerson({ id: 'mira', name: 'Mira Senn', roles: ['senior'], ...more });
  await shop.store.savePerson({ id: 'tess', name: 'Tess Orrin', roles: ['technician'], ...more });
  // Where no lock fits, a senior is asked.
  await shop.store.saveSettings({ ...DEFAULT_SETTINGS, tagWithExtraMeasure: false });
  await shop.desk.shop.saveTruck('otto', { id: 'van', name: 'Van', version: 0, items: [] });
  const kept = new Map<State, Kept>();
  let photo = '';
  for (const [state, lines] of Object.entries(PLAYS) as [keyof typeof PLAYS, readonly string[]][]) {
    const job = await shop.call((state === 'handed' ? 'tess' : 'ines') as PersonId, `${SECRET}: hums`);
    await shop.types(job, [`note the key is at ${SECRET}`], 'ruth');
    for (const line of lines) {
      const [, by = state === 'handed' ? 'tess' : 'ines', text = ''] = /^(?:(\w+): )?(.*)$/.exec(line) ?? [];
      if (text !== 'photo') await shop.types(job, [text], by as PersonId);
      else photo = await answerWithPhoto(shop, job);
    }
    kept.set(state, await shop.store.read(job));
  }
  const call = await shop.desk.dispatch.take('dana', { client: 'taking' });
  await shop.types(call.view.job, [`note caller at ${SECRET}`], 'dana');
  kept.set('caller', await shop.store.read(call.view.job));

  return {
    shop,
    photo,
    async copy(state, own) {
      const { entries, texts } = kept.get(state) as Kept;
      const job = randomBytes(16).toString('hex');
      const person = (id: string): string => (own !== undefined && id === 'ines' ? own : id);
      // Each has a title of its own, so that it is found among the others.
      const title = textRef(`${SECRET}, ${job.slice(0, 8)}`, '00112233445566778899aabbccddeeff', 'title');
      let prev = '0'.repeat(64);
      const anew = entries.map(({ kind, body, by, at, said, client, seq }) => {
        const draft = JSON.parse(JSON.stringify({ kind, body }), (key, v) => {
          if (key === 'title' && typeof v === 'object') return title.ref;
          return key === 'to' || key === 'person' ? person(v) : v;
        }) as Draft;
        const [entry] = seal([draft], { job, seq: seq - 1, prev, by: person(by), at, said, client }) as [Entry];
        prev = entry.hash;
        return entry;
      });
      await shop.store.create(job, anew, [...texts, title.row]);
      return job;
    },
    close: () => shop.close(),
  };
}

async function answerWithPhoto(shop: Shop, job: string): Promise<string> {
  const photo = (await shop.desk.savePhoto('ines', job, PHOTO)) ?? '';
  const { prompt } = await shop.desk.look('ines', job);
  const parts = { photo, ok: ['done'] };
  const reply = { kind: 'answer', client: shop.client(), seq: prompt.seq, parts } as const;
  const { refusal } = await shop.desk.reply('ines', job, reply);
  if (refusal) throw new Error(refusal.text);
  return photo;
}
