/**
 * The demo: an invented shop with three people and a truck, two jobs under way and one finished. Every job is typed through the desk
 * as its people would type it, so a seed that no longer fits the manual fails instead of lying.
 */
import { createDesk, type DeskParts, type Person } from '../engine/desk/index.ts';
import { createSheets } from '../engine/desk/sheets.ts';
import type { Store } from '../engine/store/port.ts';
import { DEMO_JOBS, type DemoJob } from './jobs.ts';
import { DEMO_TRUCK, TRUCK, units } from './lists.ts';

const METER = { percent: '1.9', counts: 2, fine: '0.01', coarse: '0.1', split: '10', known: true };
/** Nobody here exists. */
export const DEMO_PEOPLE: readonly Person[] = [
  {
    id: 'ines',
    name: 'Ines Vale',
    initials: 'IV',
    roles: ['technician'],
    certified: false,
    meter: METER,
    truck: DEMO_TRUCK,
    active: true,
  },
  {
    id: 'ruth',
    name: 'Ruth Marlow',
    initials: 'RM',
    roles: ['senior', 'owner'],
    certified: true,
    meter: METER,
    active: true,
  },
  {
    id: 'dana',
    name: 'Dana Quill',
    initials: 'DQ',
    roles: ['dispatcher'],
    certified: false,
    meter: null,
    active: true,
  },
];
export const DEMO_SHOP = 'Quillbrook Cooling (demo)';

/** Fills an empty database once. Returns whether it did. Throws where a line of the demo is no longer taken. */
export async function loadDemo(store: Store, parts: Omit<DeskParts, 'store'>): Promise<boolean> {
  if ((await store.meta('demo')) !== null || (await store.people()).length > 0) return false;
  for (const person of DEMO_PEOPLE) await store.savePerson(person);
  // Here a senior says whether a tag will do, so that there is something to say.
  await store.saveSettings({ ...(await store.settings()), tagWithExtraMeasure: false });
  let minute = 0;
  const now = parts.clock().getTime();
  const sheets = createSheets(store);
  await sheets.saveTruck(DEMO_TRUCK, TRUCK);
  for (const [id, unit] of Object.entries(units(now))) await sheets.saveEquipment(id, unit);
  const desk = createDesk({ ...parts, store, clock: () => new Date(now + minute * 60_000) });
  for (const job of DEMO_JOBS) {
    minute = -job.minutesAgo;
    await play(desk, job, () => {
      minute += 1;
    });
  }
  await store.setMeta('demo', DEMO_SHOP);
  return true;
}

async function play(desk: ReturnType<typeof createDesk>, job: DemoJob, tick: () => void): Promise<void> {
  const { title, client, equipment } = job;
  let turn = await desk.open('dana', { title, assign: 'ines', client, ...(equipment ? { equipment } : {}) });
  for (const [i, [by, text]] of job.lines.entries()) {
    tick();
    const { prompt } = turn.view;
    turn = await desk.reply(by, turn.view.job, {
      kind: 'text',
      client: `${job.client}-${i + 1}`,
      seq: prompt.seq,
      text,
    });
    if (turn.refusal) throw new Error(`demo "${job.title}", "${text}": ${turn.refusal.text}`);
  }
}
