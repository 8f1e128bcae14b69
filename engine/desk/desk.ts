/** One turn: who are you, may you, which job; decide; append durably; show what stands. */
import { seal, textRef } from '../chain.ts';
import type { Machine } from '../compile.ts';
import { VULNERABLE } from '../decide/call.ts';
import { decide, pretend } from '../decide/decide.ts';
import type { Context, Decision } from '../decide/types.ts';
import { older } from '../facts.ts';
import { fingerprint, SEMANTICS } from '../fingerprint.ts';
import { formPrompt } from '../form.ts';
import { prompt } from '../prompt.ts';
import { begin, memoryOf, type Standing, take } from '../replay.ts';
import { sha256 } from '../report/digest.ts';
import { exportJob } from '../report/export.ts';
import type { ShopKey } from '../report/key.ts';
import { closeOut } from '../report/summary.ts';
import { whenIn } from '../report/when.ts';
import type { Call, Draft, Entry, Prompt, Reply, Units } from '../schema.ts';
import { type BoardRow, NotKept, type Store } from '../store/port.ts';
import { besideText } from '../units/beside.ts';
import { promptIn, refusalIn } from '../units/shown.ts';
import type { Manual } from '../vocabulary.ts';
import type { Resolve } from '../words.ts';
import { alarmOf, isUnreadable, unreadable } from './card.ts';
import { type Clock, following } from './clock.ts';
import { createShopDesk } from './crew/shop-desk.ts';
import { type Beginning, createDispatch, type Dispatch } from './dispatch/dispatch.ts';
import { createFiles, type File, linesIn, nothingKnown, replyKey } from './files.ts';
import { clean, speaksUp, wellFormed } from './heard.ts';
import { toldOutside } from './outside.ts';
import { drawnAnew, photosIn } from './photo.ts';
import { withRecalls } from './recalls.ts';
import { createReports } from './reports.ts';
import { createReview } from './review.ts';
import { may, useOn } from './rights.ts';
import { createSheets } from './sheets.ts';
import { cardFor, unitsOf } from './shown-to.ts';
import { type KeptCard, readSummary, summaryOf, takesPart } from './summary.ts';
import { ticket } from './ticket.ts';
import { type Desk, type JobCard, type JobView, NoRight, NotFound, type Person, type Turn } from './types.ts';

export interface DeskParts {
  readonly store: Store;
  readonly shelf: readonly [Manual, ...Manual[]];
  readonly clock: Clock;
  /** n random bytes as hex. */
  readonly random: (bytes: number) => string;
  /** The shop's time zone, such as `America/Chicago`; UTC when left out. Records are UTC in any case. */
  readonly zone?: string;
  /** Signs exports; without it they say that they are unsigned. */
  readonly key?: ShopKey;
  /** Another way to a manual's machine than to compile it: desks that share one, or one that is broken on purpose. */
  readonly compile?: (manual: Manual) => Machine;
}
const TRIES = 5;
/** Signed jobs at the end of the list; the older ones are found by their id. */
const CLOSED_SHOWN = 100;

export function createDesk(parts: DeskParts): Desk {
  const { store, shelf, random } = parts;
  const clock = following(parts.clock);
  const { machineFor, remember, grown, drop, ...files } = createFiles(store, shelf, parts.compile);
  const sheets = createSheets(store);
  const now = (): string => clock().toISOString();
  /** Another process may reckon with a later time: then this one does too, or what it proved would never grow old here. */
  const load = async (job: string): Promise<File> => {
    const file = await files.load(job);
    const last = file.entries.at(-1)?.at;
    if (last !== undefined && last > now()) clock.atLeast(Date.parse(last));
    return file;
  };
  const when = whenIn(parts.zone);

  const personOf = async (id: string): Promise<Person> => activeIn(await store.people(), id);
  const participates = (file: File, id: string): boolean => takesPart(file).includes(id);
  const nothing = { own: false, holder: false, gate: false, reason: false };
  const maySee = (person: Person, file: File): boolean =>
    may(person.roles, 'see', { ...nothing, participates: participates(file, person.id) });
  const mustSee = (person: Person, file: File): void => {
    if (!maySee(person, file)) throw new NoRight('This job is not yours to see.');
  };

  const viewOf = ({ job, at, crew, by }: Visit, file: File, shown = prompt(file.standing, at)): JobView => {
    const people = Object.fromEntries(crew.map((p) => [p.id, { name: p.name, initials: p.initials }]));
    const words = (ref: { ref: string }): string => file.texts.get(ref.ref) ?? '(removed)';
    const name = (id: string): string => people[id]?.name ?? id;
    const memory = memoryOf(file.standing);
    const units = unitsOf(crew.find(({ id }) => id === by) ?? null, memory.settings);
    const form = file.standing.machine.plan.manual.caller ? formPrompt(file.standing, at) : null;
    return {
      job,
      title: memory.title === null ? '' : words(memory.title),
      training: memory.training,
      prompt: withRecalls(promptIn(shown, units), words),
      ticket: ticket(file.standing, file.entries, { resolve: words, name, units }, linesIn(file.known, units)),
      people,
      question: memory.question === null ? null : words(memory.question.text),
      summary: closeOut(file.standing, file.entries, words, name, when, units),
      call: memory.call && computedOf(memory.call, units, words),
      form: form && promptIn(form, units),
      units: units ?? null,
      alarm: alarmOf(memory, file),
      calling: file.standing.machine.plan.manual.caller !== undefined,
      opens: null,
      now: at,
    };
  };
  const turnOf = (visit: Visit, file: File, entries: Entry[], d: Decision | null, shown?: Prompt): Turn => {
    const view = viewOf(visit, file, shown);
    const units = unitsOf(visit.crew.find(({ id }) => id === visit.by) ?? null, memoryOf(file.standing).settings);
    return {
      view,
      entries,
      refusal: d?.refusal ? refusalIn(d.refusal, [...view.prompt.parts, ...(view.form?.parts ?? [])], units) : null,
      info: d?.info ? d.info.map((line) => besideText(line, units)) : null,
      again: d?.again ? promptIn(d.again, units) : null,
    };
  };

  const contextFor = ({ at, crew }: Visit, person: Person, file: File, reply: Reply): Context => ({
    by: person.id,
    at,
    said: reply.said == null ? null : older(at, reply.said),
    client: reply.client,
    may: (use, relation) =>
      may(person.roles, useOn(file.standing.machine.plan.manual, use), {
        ...relation,
        participates: participates(file, person.id),
      }),
    salt: () => random(16),
    digest: sha256,
    people: crew.filter((p) => p.active).map((p) => ({ id: p.id, name: p.name })),
  });

  /** The person's meter, their certification and their truck's stock are on the record before an answer rests on them. */
  const withForce = async (
    file: File,
    person: Person,
    context: Context,
  ): Promise<{ standing: Standing; before: Draft[] }> => {
    const { meters, certified, truck: carried } = memoryOf(file.standing);
    const before: Draft[] = [];
    if (person.meter && JSON.stringify(meters[person.id]) !== JSON.stringify(person.meter))
      before.push({ kind: 'set', body: { what: 'meter', person: person.id, meter: person.meter } });
    if (person.certified !== certified.includes(person.id))
      before.push({ kind: 'set', body: { what: 'certified', person: person.id, certified: person.certified } });
    const truck = person.truck === undefined ? null : await sheets.truck(person.truck);
    if (truck && (truck.id !== carried?.id || truck.version !== carried.version))
      before.push({ kind: 'set', body: { what: 'truck', truck } });
    return { standing: before.reduce((s, draft) => pretend(s, draft, context), file.standing), before };
  };

  /** A record begins; where one had begun under this id, that is the one. */
  const started = async (one: Beginning): Promise<Turn> => {
    const { job, by, client, manual } = one;
    const at = now();
    const visit = { job, at, by, crew: await store.people() };
    const there = async (): Promise<Turn | null> =>
      (await store.readAfter(job, 0)).entries.length > 0 ? turnOf(visit, await load(job), [], null) : null;
    const before = await there();
    if (before) return before;
    const title = textRef(wellFormed(one.title), random(16), `${by}.${client}.1`);
    const print = fingerprint(manual, sha256);
    const drafts: Draft[] = [
      {
        kind: 'opened',
        body: {
          manual: manual.id,
          version: manual.version,
          fingerprint: print,
          semantics: SEMANTICS,
          title: title.ref,
          training: one.training,
        },
      },
      { kind: 'set', body: { what: 'settings', settings: await store.settings() } },
      ...one.drafts,
    ];
    const entries = seal(drafts, { job, seq: 0, prev: '0'.repeat(64), by, at, said: null, client }, sha256);
    const texts = [title.row, ...(one.texts ?? [])];
    const file: File = {
      entries,
      texts: new Map(texts.map(({ ref, text }) => [ref, text])),
      known: nothingKnown(),
      fast: [],
      standing: entries.reduce(take, begin(machineFor(print), job)),
    };
    const shown = prompt(file.standing, at);
    const { summary } = summaryOf(job, file, at, shown);
    try {
      await store.create(job, entries, texts, summary);
    } catch (error) {
      // The same opening at the same moment, in this process or another: theirs is the job.
      const theirs = await there();
      if (!theirs) throw error;
      return theirs;
    }
    return turnOf(visit, remember(job, file), entries, null, shown);
  };

  /** Entries that no question asked for, on a record as it stands. */
  const written = async (by: string, job: string, client: string, what: (file: File) => Draft[]): Promise<Turn> => {
    for (let attempt = 0; attempt < TRIES; attempt++) {
      const file = await load(job);
      const at = later(now(), file.entries.at(-1)?.at);
      const visit = { job, at, by, crew: await store.people() };
      if (file.known.replies.has(replyKey(by, client))) return turnOf(visit, file, [], null);
      const head = { job, seq: file.entries.length, prev: file.standing.lastHash, by, at, said: null, client };
      const entries = seal(what(file), head, sha256);
      const after = grown(file, entries, []);
      const { summary } = summaryOf(job, after, at, prompt(after.standing, at));
      if ((await store.append(job, file.entries.length, entries, [], summary)) === 'kept')
        return turnOf(visit, remember(job, after), entries, null);
      drop(job);
    }
    throw new NotKept('Others are writing at this moment. Nothing of yours was kept; send it again.');
  };
  const dispatch: Dispatch = createDispatch({
    ...{ store, sheets, shelf, random, now, personOf, cardIn, load, begin: started, write: written, when },
    handOver: (by, job, to, client) => desk.reply(by, job, { kind: 'command', client, name: 'hand over', text: to }),
  });
  /** A call that is over has opened its job, whoever looks first. */
  const withJob = async (job: string, file: File, view: JobView): Promise<JobView> => ({
    ...view,
    opens: await dispatch.opened(job, file),
  });

  const desk: Desk = {
    people: () => store.people(),
    person: async (id) => (await store.people()).find((p) => p.id === id) ?? null,
    settings: () => store.settings(),
    async trucks(by) {
      await personOf(by);
      return sheets.trucks();
    },

    async open(by, call) {
      const crew = await store.people();
      const person = activeIn(crew, by);
      if (!may(person.roles, 'open', { ...nothing, participates: false })) throw new NoRight('You can’t open a call.');
      if (call.assign !== undefined && call.assign !== by) {
        activeIn(crew, call.assign);
        if (!may(person.roles, 'assign', { ...nothing, participates: false }))
          throw new NoRight('You can’t assign a call to somebody else.');
      }
      // The same opening sent again is the same job, also where the answer to the first was lost.
      const job = await store.claim(`open:${by}:${call.client}`, random(16));
      const equipment = call.equipment === undefined ? null : await sheets.equipment(call.equipment);
      if (call.equipment !== undefined && !equipment) throw new NotFound('There is no record of such a unit.');
      const to = call.assign ?? (person.roles.includes('technician') ? by : null);
      const { title, training = false, client } = call;
      const drafts: Draft[] = [
        // Its name says where the caller lives, and no entry can be changed: the record knows it by its id alone.
        ...(equipment
          ? [{ kind: 'set' as const, body: { what: 'equipment' as const, equipment: { ...equipment, name: '' } } }]
          : []),
        ...(to === null ? [] : [{ kind: 'assigned' as const, body: { to } }]),
      ];
      return started({ job, by, client, manual: shelf[0], title, training, drafts });
    },

    async reply(by, job, sent) {
      const reply = clean(sent);
      const crew = await store.people();
      const person = activeIn(crew, by);
      const told = (turn: Turn, file: File): Turn => (maySee(person, file) ? turn : toldOutside(turn));
      for (let attempt = 0; attempt < TRIES; attempt++) {
        const file = await load(job);
        if (!speaksUp(reply)) mustSee(person, file);
        const at = later(now(), file.entries.at(-1)?.at);
        const visit = { job, at, by, crew };
        const sentBefore = file.known.replies.has(replyKey(by, reply.client));
        const earlier = sentBefore ? file.entries.filter((e) => e.client === reply.client && e.by === by) : [];
        if (earlier[0])
          return told(turnOf(visit, file, earlier, decidedThen(visit, file, earlier, person, reply)), file);
        const context = contextFor(visit, person, file, reply);
        const { standing, before } = await withForce(file, person, context);
        const decision = decide(standing, reply, context);
        if (decision.drafts.length === 0) return told(turnOf(visit, file, [], decision), file);
        const answers = decision.drafts.some((d) => d.kind === 'answered' || d.kind === 'amended');
        const drafts = [...(answers ? before : []), ...decision.drafts];
        // Decided with what is in force on the record; where that stays out, the record is gone on with as it is.
        const decided = answers || before.length === 0;
        const head = {
          job,
          seq: file.entries.length,
          prev: file.standing.lastHash,
          by,
          at,
          said: context.said,
          client: reply.client,
        };
        const entries = seal(drafts, head, sha256);
        const after = grown(file, entries, decision.texts, decided ? decision.after : undefined);
        const shown = prompt(after.standing, at);
        const { summary } = summaryOf(job, after, at, shown);
        if ((await store.append(job, file.entries.length, entries, decision.texts, summary)) === 'conflict') {
          drop(job);
          continue;
        }
        // What is on the record stays there; the next turn settles what could not be kept now.
        await sheets.settle(job, after).catch((error: unknown) => {
          if (!(error instanceof NotKept)) throw error;
        });
        const turn = turnOf(visit, remember(job, after), entries, decision, shown);
        return told({ ...turn, view: await withJob(job, after, turn.view) }, after);
      }
      const file = await load(job);
      const refusal = {
        code: 'stale' as const,
        text: 'Others are writing at this moment. Nothing of yours was kept; send it again.',
        parts: [],
        draft: {},
      };
      return told({ ...turnOf({ job, at: now(), by, crew }, file, [], null), refusal }, file);
    },

    async look(by, job) {
      const crew = await store.people();
      const file = await load(job);
      mustSee(activeIn(crew, by), file);
      return withJob(job, file, viewOf({ job, at: now(), by, crew }, file));
    },

    crewView: async (job) => viewOf({ job, at: now(), by: null, crew: await store.people() }, await load(job)),

    async jobs(by) {
      const person = await personOf(by);
      const units = unitsOf(person, await store.settings());
      const cards: JobCard[] = [];
      for (const row of await store.board(CLOSED_SHOWN)) {
        const kept = await cardIn(row).catch((error: unknown) => {
          if (isUnreadable(error)) return error;
          throw error;
        });
        // One record that can't be read hides no other. Whose it is can't be read either, so everybody is told.
        if (kept instanceof Error) cards.push(unreadable(row, kept));
        else if (may(person.roles, 'see', { ...nothing, participates: kept.takesPart.includes(by) }))
          cards.push(cardFor(kept.card, units));
      }
      return cards.sort((a, b) => (a.updated < b.updated ? 1 : -1));
    },

    reports: createReports({ store, load, personOf, clock, random, when }),
    review: createReview({
      ...{ store, personOf, cardIn, load, equipment: sheets.equipment },
      viewOf: async (by, job, file) => viewOf({ job, at: now(), by, crew: await store.people() }, file),
    }),
    dispatch,
    shop: createShopDesk({ store, sheets, clock, personOf }),

    async exportJob(by, job) {
      const person = await personOf(by);
      const file = await load(job);
      if (!may(person.roles, 'export', { ...nothing, participates: participates(file, by) }))
        throw new NoRight('This job is not yours to export.');
      const { entries, texts } = await store.read(job);
      return exportJob(file.standing.machine, entries, texts, parts.key ?? null);
    },

    async savePhoto(by, job, bytes) {
      const relation = { ...nothing, participates: participates(await load(job), by) };
      // A photo is part of an answer: it is kept for whoever may give one.
      if (!may((await personOf(by)).roles, 'answer', relation)) throw new NoRight('You answer nothing on this job.');
      const plain = await drawnAnew(bytes);
      return plain && store.savePhoto(plain);
    },

    async photo(by, job, hash) {
      const file = await load(job);
      mustSee(await personOf(by), file);
      // A photo is shown on the calls whose record names it, and on no other.
      const bytes = file.entries.some((e) => photosIn(e).includes(hash)) ? await store.photo(hash) : null;
      if (!bytes) throw new NotFound('There is no such photo on this call.');
      return bytes;
    },

    async sees(by, job) {
      const person = (await store.people()).find(({ id, active }) => id === by && active);
      return person !== undefined && maySee(person, await load(job));
    },

    async watch(by, job, after, onEntry) {
      const person = await personOf(by);
      mustSee(person, await load(job));
      let last = after;
      let waiting: Entry[] | null = [];
      const pass = (e: Entry): void => {
        if (e.seq <= last) return;
        last = e.seq;
        onEntry(e);
      };
      const stop = store.watch((of, entry) => {
        if (of !== job) return;
        if (waiting) waiting.push(entry);
        else pass(entry);
      });
      for (const e of (await store.readAfter(job, after)).entries) pass(e);
      for (const e of waiting) pass(e);
      waiting = null;
      return stop;
    },
  };
  return desk;

  /** The card as it is kept, or made anew from the record and kept. */
  async function cardIn(row: BoardRow): Promise<KeptCard & { anew: boolean }> {
    const at = now();
    const known = readSummary(row.card, at);
    if (known) return { ...known, anew: false };
    const file = await load(row.job);
    const { kept, summary } = summaryOf(row.job, file, at, prompt(file.standing, at));
    // The list is right without it; whoever can't write now has other trouble.
    await store.saveSummary(row.job, file.entries.length, summary).catch((error: unknown) => {
      if (!(error instanceof NotKept)) throw error;
    });
    return { ...kept, anew: true };
  }

  /** The same response to a reply that was taken before: what was decided then, decided again on what stood then. */
  function decidedThen(visit: Visit, file: File, kept: readonly Entry[], person: Person, reply: Reply): Decision {
    const [first] = kept as readonly [Entry, ...Entry[]];
    const before = file.entries.filter((e) => e.seq < first.seq);
    const standing = before.reduce(take, begin(file.standing.machine, file.standing.job));
    const context = contextFor({ ...visit, at: first.at }, person, { ...file, standing }, reply);
    return decide(standing, asKept(reply, kept), { ...context, said: first.said });
  }
}

/** A copy that was sent again may say that it travelled without contact; the one that was kept did not. */
function asKept(reply: Reply, kept: readonly Entry[]): Reply {
  if (!('offline' in reply) || kept.some((e) => e.kind === 'answered' && e.body.offline === true)) return reply;
  const { offline: _, ...first } = reply;
  return first;
}

/** One look at a job: when, and the crew as it was then. The crew is asked for once a turn. */
interface Visit {
  readonly job: string;
  readonly at: string;
  readonly crew: readonly Person[];
  /** Whose eyes it is for; null: the whole crew reads along. */
  readonly by: string | null;
}
function activeIn(crew: readonly Person[], id: string): Person {
  const found = crew.find((p) => p.id === id && p.active);
  if (!found) throw new NotFound('There is no such person.');
  return found;
}

const computedOf = (
  { urgency, reasons, causes, load, certified, told, words }: Call,
  units: Units | undefined,
  resolve: Resolve,
): JobView['call'] => ({
  ...{ urgency, causes, load, certified },
  told: told.map((line) => besideText(line, units)),
  vulnerable: words[VULNERABLE] ? resolve(words[VULNERABLE]) : null,
  reasons: reasons.map((reason) => besideText(reason, units)),
});

/** Entries never go back in time, whatever the clock does. */
const later = (a: string, b: string | undefined): string => (b !== undefined && b > a ? b : a);
