/** A second process at the same record: looks, answers one line, says what it saw. argv: file, person, job, line. */
import { randomBytes } from 'node:crypto';
import { createDesk } from '../../engine/desk/index.ts';
import { openSqlite } from '../../engine/store/index.ts';
import { SHELF } from '../../flows/index.ts';

const [file = '', by = '', job = '', text = ''] = process.argv.slice(2);
const store = await openSqlite(file);
const desk = createDesk({
  store,
  shelf: SHELF,
  clock: () => new Date(),
  random: (n) => randomBytes(n).toString('hex'),
});
const before = await desk.look(by, job);
const turn = await desk.reply(by, job, { kind: 'text', client: `second-${process.pid}`, seq: before.prompt.seq, text });
process.stdout.write(JSON.stringify({ saw: before.prompt.place, now: turn.view.prompt.place, refusal: turn.refusal }));
await store.close();
