/**
 * The recorded jobs: typed through the desk on a real database, exported, signed by a key that is then thrown away.
 * `npm run record` writes them anew; nobody edits one by hand.
 */
import { createHash } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createDesk, type Turn } from '../../engine/desk/index.ts';
import type { ShopKey } from '../../engine/report/key.ts';
import type { Settings } from '../../engine/schema.ts';
import { openSqlite, type Store } from '../../engine/store/index.ts';
import type { Manual } from '../../engine/vocabulary.ts';
import { SHELF } from '../../flows/index.ts';
import { personOf } from '../desk/shop.ts';
import { PEOPLE, type PersonId, TO_READINGS } from '../people.ts';

interface Line {
  readonly by: PersonId;
  readonly text: string;
  /** Minutes since the line before. */
  readonly after: number;
  /** The play is about its being refused; any other line has to be taken. */
  readonly refused?: true;
}
export interface Play {
  readonly settings?: Partial<Settings>;
  readonly lines: readonly Line[];
  /** Whether the caller's words are removed at the end. */
  readonly forgotten?: true;
}
const says = (by: PersonId, ...texts: string[]): Line[] => texts.map((text) => ({ by, text, after: 1 }));
const ines = (...texts: string[]): Line[] => says('ines', ...texts);
const WEAK_FAN = 'herm 44.6 fan 2.9 hf 2.72 case ol';
const MOTORS = ['spin free', 'cr .9 cs 2.7 sr 3.6 g ol', 'coil dirty'];
const FITTED = ['other 45+5 440 herm 45.3 fan 5.04', 'fitted', 'wires back', 'rla 17.9 lra 96 fla 1.2', 'closed'];
const MEANS = 'pull-out, breaker, no other feed, two legs, outlet';
const LOOK = 'clean, 1 cap, 45+5 6% 440';
const PROVING = '121 / 0.2 0 0.1 / 0 0 / 121';
const RESIDUAL = '9.3 / 0.6 0.1 0.5 / 9.3';

/** By the name of the file, which says what the record proves. */
export const PLAYS: Readonly<Record<string, Play>> = {
  'weak-fan-section-replaced-and-proven': {
    lines: ines(...TO_READINGS, WEAK_FAN, ...MOTORS, ...FITTED, '241 240 comp 13.1 fan .9 split 19'),
  },
  'by-the-plain-rule-a-close-reading-passes': {
    settings: { rule: 'plain' },
    lines: ines(...TO_READINGS, 'herm 42.4 fan 4.8 hf 4.31 case ol'),
  },
  'with-the-meters-doubt-the-same-reading-is-close': {
    lines: ines(...TO_READINGS, 'herm 42.4 fan 4.8 hf 4.31 case ol'),
  },
  'silence-ends-the-proof': {
    lines: [
      ...ines(...TO_READINGS),
      { by: 'ines', text: WEAK_FAN, after: 31, refused: true },
      ...ines(`yes ${PROVING}`, RESIDUAL, WEAK_FAN),
    ],
  },
  'a-changed-reading-turns-the-verdict': {
    lines: ines(...TO_READINGS, WEAK_FAN, 'back fan 5.03 hf 4.52'),
  },
  'an-emergency-ends-the-proof-and-a-senior-releases': {
    lines: [
      ...ines(...TO_READINGS, 'smoke from the unit'),
      ...says('ruth', 'release all clear, the unit is cold'),
      ...ines('yes', LOOK, PROVING, RESIDUAL, WEAK_FAN),
    ],
  },
  'another-lock-proves-from-the-start': {
    lines: [
      ...ines(...TO_READINGS, 'hand over tomas'),
      ...says('tomas', 'take over', 'yes', MEANS, 'yes', LOOK, PROVING, RESIDUAL, WEAK_FAN),
    ],
  },
  'words-removed-on-a-callers-wish': {
    lines: ines('d', 'note the caller is Mr Example, side door', ...TO_READINGS.slice(1), WEAK_FAN),
    forgotten: true,
  },
};

/** What chance gives in a recording: the same each time, so that a second one is the same to the byte. */
function chance(seed: string): (bytes: number) => string {
  let count = 0;
  return (bytes) =>
    createHash('sha256')
      .update(`${seed} ${++count}`)
      .digest('hex')
      .slice(0, 2 * bytes);
}

/** Plays it and exports the job. `open` gives another database than a SQLite file of its own. */
export async function record(
  name: string,
  key: ShopKey | null,
  shelf: readonly [Manual, ...Manual[]] = SHELF,
  open = (folder: string): Promise<Store> => openSqlite(join(folder, 'shop.sqlite')),
): Promise<string> {
  const play = PLAYS[name];
  if (!play) throw new Error(`no play is called ${name}`);
  const folder = await mkdtemp(join(tmpdir(), 'nocool-record-'));
  const store = await open(folder);
  try {
    for (const person of Object.values(PEOPLE)) await store.savePerson(personOf(person));
    if (play.settings) await store.saveSettings({ ...(await store.settings()), ...play.settings });
    let now = Date.parse('2026-07-14T15:00:00.000Z');
    const parts = { store, shelf, clock: () => new Date(now), random: chance(name) };
    const desk = createDesk(key ? { ...parts, key } : parts);
    let turn: Turn = await desk.open('dana', { title: 'Warm air, Mill Lane 2', assign: 'ines', client: 'c0' });
    const { job } = turn.view;
    for (const [i, { by, text, after, refused }] of play.lines.entries()) {
      now += after * 60_000;
      const { seq } = turn.view.prompt;
      turn = await desk.reply(by, job, { kind: 'text', client: `c${i + 1}`, seq, text });
      if ((turn.refusal !== null) !== (refused === true))
        throw new Error(`${name}: "${text}" at ${seq}: ${turn.refusal?.text ?? 'was taken'}`);
    }
    if (play.forgotten) await store.forget({ job });
    return await desk.exportJob('otto', job);
  } finally {
    await store.close();
    await rm(folder, { recursive: true });
  }
}
