/** The wires go back from the record: what was noted before they came off stands above the question. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { TO_READINGS } from '../people.ts';
import { Shop } from './shop.ts';

let shop: Shop;
beforeEach(async () => {
  shop = await Shop.open();
});
afterEach(() => shop.close());

const TO_REWIRE = ['herm 36.1 fan 5.02 hf 4.4 case ol', 'spin free', 'cr .9 cs 2.7 sr 3.6 g ol', 'nothing'];
const FIT = ['other 45+5 440 herm 45.3 fan 5.04', 'fitted'];

test('colours and the photo of the wiring come back at the rewiring, and a forgotten note says so', async () => {
  const job = await shop.call();
  await shop.types(job, TO_READINGS.slice(0, -1));
  const photo = 'a'.repeat(64);
  const parts = { ok: 'done', colours: 'C purple and black, HERM yellow, FAN brown', photo };
  const seq = (await shop.desk.look('ines', job)).prompt.seq;
  const wires = await shop.desk.reply('ines', job, { kind: 'answer', client: 'w1', seq, parts });
  expect(wires.refusal).toBeNull();
  const at = wires.entries.find((e) => e.kind === 'answered')?.seq;
  const { view } = await shop.types(job, [...TO_REWIRE, ...FIT]);
  expect(view.prompt.title).toBe('Put the wires back from the record, and tug each connector.');
  expect(view.prompt.body.slice(0, 2)).toEqual([
    'Noted before they came off: C purple and black, HERM yellow, FAN brown',
    `Photo of the wiring: in the ticket, entry ${at}.`,
  ]);
});

test('nothing noted: nothing is made up, and the diagram is named', async () => {
  const job = await shop.call();
  const { view } = await shop.types(job, [...TO_READINGS, ...TO_REWIRE, ...FIT]);
  expect(view.prompt.body[0]).toContain('nothing on record: by the wiring diagram');
});
