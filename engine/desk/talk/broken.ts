/**
 * Products that are broken on purpose: pages and folds of the proof's own list, and desks and clocks that only a
 * conversation can show. Each has to be caught by a rule that listens, or the conversations prove nothing.
 */
import type { Machine } from '../../compile.ts';
import { decide } from '../../decide/decide.ts';
import { BROKEN, type Subject } from '../../prove/index.ts';
import type { Entry, Reply } from '../../schema.ts';
import type { Manual } from '../../vocabulary.ts';
import type { Ticks } from '../clock.ts';
import { clockFor } from '../clock.ts';
import { may } from '../rights.ts';
import type { Desk } from '../types.ts';
import type { Product } from './world.ts';

export interface BrokenTalk {
  readonly name: string;
  /** Under which rules it may be caught. */
  readonly rules: readonly string[];
  readonly product: (sound: Product) => Product;
}

/** The fold is told something else than the record says. */
const mangled = (machine: Machine, mangle: (entry: Entry) => Entry): Machine => ({
  ...machine,
  step: (position, entry) => machine.step(position, mangle(entry)),
});
const asNote = (entry: Entry): Entry => ({ ...entry, kind: 'noted', body: { as: 'note' } }) as Entry;
const deaf = (name: string, rules: readonly string[], hears: (entry: Entry) => boolean): BrokenTalk => ({
  name,
  rules,
  product: (sound) => ({ ...sound, machine: mangled(sound.machine, (e) => (hears(e) ? e : asNote(e))) }),
});
const desk = (name: string, rules: readonly string[], around: (desk: Desk) => Desk): BrokenTalk => ({
  name,
  rules,
  product: (sound) => ({ ...sound, around }),
});
/** The desk hears another reply than was sent. */
const hearing = (name: string, rules: readonly string[], heard: (reply: Reply) => Reply): BrokenTalk =>
  desk(name, rules, (sound) => ({ ...sound, reply: (by, job, reply) => sound.reply(by, job, heard(reply)) }));

const OWN: readonly BrokenTalk[] = [
  deaf('a taken-over isolation stays proved', ['dead', 'holder'], (e) => e.kind !== 'handed-over'),
  deaf('an emergency is only a note', ['emergency', 'dead'], (e) => e.kind !== 'alarmed'),
  deaf('power back is only a note', ['dead'], (e) => !(e.kind === 'voided' && e.body.reason === 'power-back')),
  deaf('answers without contact end nothing', ['dead'], (e) => !(e.kind === 'voided' && e.body.reason === 'offline')),
  deaf(
    'the age of a proof is only a note',
    ['dead', 'replay'],
    (e) => !(e.kind === 'voided' && e.body.reason === 'age'),
  ),
  deaf('a gate taken back still counts', ['dead'], (e) => e.kind !== 'withdrawn'),
  {
    name: 'a reply sent again counts twice',
    rules: ['once'],
    product: (sound) => {
      // What one process heard, all know: else only a copy to the same one would show it.
      const seen = new Set<string>();
      return {
        ...sound,
        around: (whole) => ({ ...whole, reply: (by, job, reply) => whole.reply(by, job, doubled(seen, reply)) }),
      };
    },
  },
  hearing('stop is not heard', ['stop'], (r) => (r.kind === 'text' && r.text === 'stop' ? { ...r, text: 'where' } : r)),
  hearing('smoke is not heard', ['emergency'], (r) =>
    r.kind === 'text' && /smoke/.test(r.text) ? { ...r, text: 'where' } : r,
  ),
  desk('an answer to a question that is gone is taken', ['stale'], (sound) => ({
    ...sound,
    reply: async (by, job, reply) =>
      sound.reply(by, job, 'seq' in reply ? { ...reply, seq: (await sound.crewView(job)).prompt.seq } : reply),
  })),
  {
    name: 'time goes back with the machine’s clock',
    rules: ['dead', 'time'],
    product: (sound) => ({ ...sound, clock: async (_, ticks: Ticks) => () => new Date(ticks.wall()) }),
  },
];

function doubled(seen: Set<string>, reply: Reply): Reply {
  if (seen.has(reply.client)) return { ...reply, client: `${reply.client}.again` };
  seen.add(reply.client);
  return reply;
}

/** Those of the proof whose pages or fold are broken; what it breaks in `decide` is broken here around the desk. */
const OF_THE_PROOF: readonly BrokenTalk[] = BROKEN.map(({ name, subject }) => ({
  name,
  rules: [],
  product: (sound) => {
    const broken = subject(sound.manual, may as Subject['may']);
    if (broken.decide !== decide) return sound;
    const { manual } = broken.machine.plan as { manual: Manual };
    return { ...sound, manual, machine: mangled(broken.machine, (entry) => broken.mangle(entry)), clock: clockFor };
  },
}));

export const BROKEN_TALK: readonly BrokenTalk[] = [...OWN, ...OF_THE_PROOF];
