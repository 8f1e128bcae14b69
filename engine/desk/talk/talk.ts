/** Conversations until so many turns are played, each listened to by the rules; the first that breaks one is shortened. */
import { type Chance, chance } from './chance.ts';
import { Chooser, type Mood } from './choose.ts';
import { Lines, type Script } from './lines.ts';
import { JUNIOR, SECOND } from './people.ts';
import { Played } from './play.ts';
import type { Breach } from './reference/watch.ts';
import { shorten } from './shorten.ts';
import type { Opening, Step } from './step.ts';
import { type Product, World } from './world.ts';

export interface Asked {
  readonly turns: number;
  readonly seed: number;
  /** Most replays to shorten what breaks a rule; some hundred by default. */
  readonly tries?: number;
  /** Called after each conversation with the turns so far. */
  readonly onward?: (turns: number) => void;
}
/** What was said and reached, for whoever quotes it. */
export interface Figures {
  readonly seed: number;
  turns: number;
  conversations: number;
  refused: number;
  /** Processes that died. */
  crashes: number;
  /** Records that a new process folded to the same question. */
  replays: number;
  /** Entries on the records. */
  entries: number;
  /** Jobs on which something was once shown as proved dead. */
  proved: number;
  /** Jobs with at least one verdict; verdicts by their ids. */
  judged: number;
  readonly verdicts: Record<string, number>;
  /** Jobs whose unit was started again with figures read. */
  restarts: number;
  readonly endings: Record<string, number>;
  readonly events: Record<string, number>;
}
export interface Talked {
  readonly figures: Figures;
  readonly breach:
    | (Breach & { readonly conversation: readonly string[]; readonly nr: number; readonly of: number })
    | null;
}

/** Jobs in one database; then a new one, so that it doesn't grow. */
const TOGETHER = 50;
const LONGEST = 150;

export async function talk(product: Product, { turns, seed, tries = 400, onward }: Asked): Promise<Talked> {
  const from = chance(seed);
  const lines = new Lines(product.machine);
  const figures = nothingYet(seed);
  let world = await World.open(product);
  try {
    while (figures.turns < turns) {
      if (figures.conversations > 0 && figures.conversations % TOGETHER === 0) {
        await world.close();
        world = await World.open(product);
      }
      const begun = await converse(world, lines, chance(from.below(2 ** 31 - 1)));
      count(figures, begun.played);
      const breach = begun.played.breaches[0];
      if (breach) return { figures, breach: await shorten(world, begun, breach, figures.conversations, tries) };
      onward?.(figures.turns);
    }
  } finally {
    await world.close();
  }
  return { figures, breach: null };
}

export interface Conversation {
  readonly opening: Opening;
  readonly steps: readonly Step[];
  readonly played: Played;
}

async function converse(world: World, lines: Lines, by: Chance): Promise<Conversation> {
  const script = by.one(lines.scripts as [Script, ...Script[]]);
  const mood = by.one(['calm', 'calm', 'usual', 'usual', 'wild'] as [Mood, ...Mood[]]);
  const opening: Opening = {
    ...{ assign: by.one([JUNIOR, SECOND]), title: script.title },
    ...{ minutes: by.in1000(100) ? 15 : null, tag: by.in1000(800) },
  };
  const played = await Played.begin(world, opening);
  const chooser = new Chooser(by, lines, script, mood, opening.assign);
  const steps: Step[] = [];
  while (steps.length < LONGEST && played.breaches.length === 0) {
    const step = chooser.step(played);
    if (step === null) break;
    steps.push(step);
    await played.step(step);
  }
  await played.end();
  return { opening, steps, played };
}

const nothingYet = (seed: number): Figures => ({
  ...{
    seed,
    turns: 0,
    conversations: 0,
    refused: 0,
    crashes: 0,
    replays: 0,
    entries: 0,
    proved: 0,
    judged: 0,
    restarts: 0,
  },
  ...{ verdicts: {}, endings: {}, events: {} },
});
const more = (of: Record<string, number>, what: string): void => {
  of[what] = (of[what] ?? 0) + 1;
};
function count(figures: Figures, { record, turns, refused, crashes, replays, prompt, everProved }: Played): void {
  figures.turns += turns;
  figures.conversations++;
  figures.refused += refused;
  figures.crashes += crashes;
  figures.replays += replays;
  figures.entries += record.length;
  if (everProved) figures.proved++;
  if (record.some((e) => e.kind === 'concluded')) figures.judged++;
  if (record.some((e) => e.kind === 'answered' && /\/figures$/.test(e.body.place))) figures.restarts++;
  for (const e of record) {
    if (e.kind === 'concluded') more(figures.verdicts, e.body.verdict);
    if (e.kind === 'voided') more(figures.events, `voided: ${e.body.reason}`);
    if (['alarmed', 'handed-over', 'paused', 'withdrawn', 'amended', 'approved', 'signed'].includes(e.kind))
      more(figures.events, e.kind);
  }
  more(figures.endings, prompt.kind === 'finished' || prompt.kind === 'signed' ? prompt.place : 'none');
}
