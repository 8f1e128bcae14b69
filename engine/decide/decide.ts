/**
 * A reply becomes new entries or a refusal. Order, from any state: emergency, stop, everything else. Pure: time, salts
 * and rights are handed in.
 */
import { isHalt } from '../compile.ts';
import type { Place, Plan } from '../flatten.ts';
import { placeOf } from '../fold.ts';
import { isAnyBegun } from '../forget.ts';
import { isConcluded } from '../known.ts';
import type { Memory } from '../memory.ts';
import { prompt } from '../prompt.ts';
import { memoryOf, overdue, placeIdOf, planOf, type Standing, take } from '../replay.ts';
import { concludeAt, route } from '../route.ts';
import type { Draft, Entry, GivenParts, Hazard, Prompt, Reply } from '../schema.ts';
import { readCommand, readHazard, readLine, saysCant } from '../understand/index.ts';
import { decideAmend, decideWithdraw } from './amend.ts';
import { decideAnswer, haltAnswer } from './answer.ts';
import { decideCommand } from './command.ts';
import { decideForm, isForm } from './form.ts';
import { besideGate } from './gate.ts';
import { counted } from './stock.ts';
import { type Context, type Decision, refuse, type Scribe, scribe, type Wish } from './types.ts';
import { takenHere } from './unclear.ts';

const LONGEST = 4_000;

export function decide(standing: Standing, reply: Reply, c: Context): Decision {
  const keep = scribe(c);
  const since = overdue(standing, c.at);
  const due: Draft[] = since === null ? [] : [{ kind: 'voided', body: { reason: 'age', since } }];
  const now = due.reduce((s, d) => pretend(s, d, c), standing);
  const wish = wished(now, reply, c, keep);
  const drafts = [...(wish.drafts ?? [])];
  const { follow, after } = following(now, drafts, c);
  const texts = keep.texts.filter((t) => JSON.stringify([...drafts, ...follow]).includes(`"${t.ref}"`));
  return {
    drafts: [...due, ...drafts, ...follow],
    after,
    texts,
    refusal: wish.refusal ?? null,
    info: wish.info ?? null,
    again: wish.again ?? null,
  };
}

/** What the standing would be with one draft more. Never stored. */
export function pretend(s: Standing, draft: Draft, c: Pick<Context, 'by' | 'at' | 'said' | 'client'>): Standing {
  const entry = {
    v: 1,
    job: s.job,
    seq: memoryOf(s).last + 1,
    by: c.by,
    at: c.at,
    said: c.said,
    client: c.client,
    prev: '',
    hash: '',
    ...draft,
  };
  return { ...take(s, entry as Entry), lastHash: s.lastHash };
}

/** What the engine itself puts on the record after an answer: verdicts reached, and what goes to a senior. */
function following(before: Standing, drafts: readonly Draft[], c: Context): { follow: Draft[]; after: Standing } {
  const follow: Draft[] = [];
  let s = drafts.reduce((x, d) => pretend(x, d, c), before);
  const add = (d: Draft): void => {
    follow.push(d);
    s = pretend(s, d, c);
  };
  for (const draft of drafts) {
    const hazard = memoryOf(s).alarm ? null : reported(planOf(s), memoryOf(before), draft);
    if (hazard) add({ kind: 'alarmed', body: { hazard } });
  }
  // A verdict on the way that is not on the record, or was drawn from answers that have changed since.
  for (let due = nextVerdict(s); due; due = nextVerdict(s)) {
    const { step } = due;
    add({ kind: 'concluded', body: concludeAt(planOf(s), due, memoryOf(s)) });
    if (step.verb === 'verdict' && step.raises) add({ kind: 'raised', body: { why: step.raises } });
  }
  for (const draft of drafts)
    if (fits(planOf(s), draft)) for (const d of counted(planOf(s), memoryOf(s), draft.body.place)) add(d);
  const here = placeIdOf(s);
  if (here !== placeIdOf(before)) {
    if (here === '!held') add({ kind: 'raised', body: { why: 'tries' } });
    if (planOf(s).places.get(here)?.step.verb === 'approval') add({ kind: 'raised', body: { why: 'approval' } });
  }
  return { follow, after: s };
}

/** The danger that an answer reports by an option that means one. */
function reported(plan: Plan, memory: Memory, draft: Draft): Hazard | null {
  if (draft.kind !== 'answered' && draft.kind !== 'amended') return null;
  const id = draft.kind === 'answered' ? draft.body.place : placeOf(memory, draft.body.of);
  const step = id === null ? undefined : plan.places.get(id)?.step;
  if (!step || !('parts' in step)) return null;
  for (const [key, value] of Object.entries(draft.body.parts)) {
    const part = step.parts[key];
    const options = part && 'options' in part ? (part.options ?? {}) : {};
    const chosen = value.kind === 'choice' ? value.chosen : [];
    const hazard = chosen.map((o) => options[o]?.hazard).find((h) => h !== undefined);
    if (hazard) return hazard;
  }
  return null;
}

/** A part went in: answered now, at an act that fits one. */
function fits(plan: Plan, draft: Draft): draft is Extract<Draft, { kind: 'answered' }> {
  if (draft.kind !== 'answered' || draft.body.skipped !== undefined) return false;
  const step = plan.places.get(draft.body.place)?.step;
  const { ok } = draft.body.parts;
  return step !== undefined && 'act' in step && step.act === 'fit' && ok?.kind === 'choice' && ok.chosen[0] === 'done';
}

function nextVerdict(s: Standing): Place | undefined {
  const { passed } = route(planOf(s), memoryOf(s));
  return passed.find((p) => p.step.verb === 'verdict' && !isConcluded(p, memoryOf(s)));
}

function wished(s: Standing, reply: Reply, c: Context, keep: Scribe): Wish {
  const hazard = hazardIn(s, reply, c.at, keep);
  if (!hazard) return wishedOf(s, reply, c, keep);
  if (!planOf(s).manual.caller) return hazard;
  // Said by somebody on the line, and typed into an answer: the alarm goes out, and the answer counts as well.
  const rest = wishedOf(s, reply, c, keep);
  return { ...rest, drafts: [...(rest.drafts ?? []), ...(hazard.drafts ?? [])] };
}

function wishedOf(s: Standing, reply: Reply, c: Context, keep: Scribe): Wish {
  switch (reply.kind) {
    case 'command':
      return decideCommand(s, { name: reply.name, text: reply.text ?? '', of: reply.of ?? null }, c, keep);
    case 'text':
      return decideText(s, reply, prompt(s, c.at), c, keep);
    case 'answer': {
      if (reply.seq !== memoryOf(s).since) return stale();
      return answered(s, reply.parts, reply.offline === true, c, keep);
    }
    case 'amend':
      return (
        barredByHalt(s) ??
        decideAmend(s, { of: reply.of, parts: reply.parts, ...(reply.reason ? { reason: reply.reason } : {}) }, c, keep)
      );
    case 'withdraw':
      return decideWithdraw(s, reply.of, reply.reason ? keep.keep(reply.reason) : undefined, c);
  }
}

const stale = (): Wish =>
  refuse('stale', 'The job has moved on since that question. Nothing was changed. This is what stands now.');

function barredByHalt(s: Standing): Wish | null {
  const here = placeIdOf(s);
  if (!isHalt(here) || here === '!paused' || here === '!held') return null;
  return refuse('held', 'First the card that is open now.');
}

function answered(s: Standing, parts: GivenParts, offline: boolean, c: Context, keep: Scribe): Wish {
  if (isForm(parts)) return decideForm(s, parts, offline, c, keep);
  if (!isHalt(placeIdOf(s))) return decideAnswer(s, parts, offline, c, keep);
  const answer = haltAnswer(s, parts);
  if (answer.command === undefined) return answer;
  if (offline && needsContact(answer.command)) return outOfContact();
  return decideCommand(
    s,
    { name: answer.command, text: '', of: null, ...(answer.safe ? { safe: answer.safe } : {}) },
    c,
    keep,
  );
}

/** What lets a job go on, or ends a card: said without contact it would be said of a state that nobody saw. */
const NEEDS_CONTACT: readonly string[] = ['go on', 'take over', 'not here', 'old mark', 'release', 'approve', 'sign'];
const needsContact = (name: string): boolean => NEEDS_CONTACT.includes(name);
const outOfContact = (): Wish =>
  refuse('gate', 'Said without contact, this lets nothing go on. Look at what stands now and say it again.');

/** R4: a hazard wins, in whatever a person typed. Only an offered option and nothing else isn't scanned. */
function hazardIn(s: Standing, reply: Reply, now: string, keep: Scribe): Wish | null {
  const memory = memoryOf(s);
  if (reply.kind === 'command' && ['why', 'where', 'help'].includes(reply.name)) return null;
  // Whoever takes a call goes on writing down where it burns.
  if (memory.alarm && planOf(s).manual.caller) return null;
  for (const words of wordsOf(reply)) {
    // What is offered is gone through only where the words mean danger by themselves.
    const found = readHazard(words, []) && readHazard(words, offeredBy(prompt(s, now)));
    if (!found) continue;
    const text = keep.keep(words);
    if (found.level === 'now') {
      if (memory.alarm) return { drafts: [{ kind: 'noted', body: { as: 'note', text } }] };
      return { drafts: [{ kind: 'alarmed', body: { hazard: found.hazard, text } }] };
    }
    // "Just an old burn mark" answers the card that asks about the burn.
    if (reply.kind === 'text' && placeIdOf(s) === '!hazard') continue;
    if (memory.alarm || memory.hazard) return { drafts: [{ kind: 'noted', body: { as: 'note', text } }] };
    return { drafts: [{ kind: 'noted', body: { as: 'hazard', text } }] };
  }
  return null;
}
const offeredBy = (p: Prompt): string[] =>
  p.parts.flatMap((part) => ('options' in part ? part.options.flatMap((o) => [o.id, o.label, ...o.words]) : []));
function wordsOf(reply: Reply): string[] {
  switch (reply.kind) {
    case 'text':
      return [reply.text];
    case 'command':
      return reply.text ? [reply.text] : [];
    case 'withdraw':
      return reply.reason ? [reply.reason] : [];
    case 'answer':
      return Object.values(reply.parts).filter((g): g is string => typeof g === 'string');
    case 'amend':
      return [
        ...Object.values(reply.parts).filter((g): g is string => typeof g === 'string'),
        ...(reply.reason ? [reply.reason] : []),
      ];
  }
}

function decideText(s: Standing, reply: Reply & { kind: 'text' }, p: Prompt, c: Context, keep: Scribe): Wish {
  const text = reply.text.trim();
  if (text === '') return refuse('unclear', 'Nothing was typed.');
  if (text.length > LONGEST)
    return refuse(
      'too-long',
      `That is ${text.length} characters. Up to ${LONGEST} are kept; send the first part alone.`,
    );
  // Typed to a question that is gone: said so, whether or not the words fit the one that stands now.
  const late = (): Wish => ({
    ...stale(),
    drafts: [{ kind: 'noted', body: { as: 'unclear', text: keep.keep(text) } }],
  });
  const offline = reply.offline === true;
  const command = commandIn(text, s, p);
  if (command?.name === 'skip' && reply.seq !== p.seq) return late();
  if (offline && command && needsContact(command.name)) return outOfContact();
  if (command) {
    const said = command.text ?? (isReport(command.name) && text.toLowerCase() !== command.name ? text : '');
    const wish = decideCommand(s, { name: command.name, text: said, of: reply.amends ?? null }, c, keep);
    return command.text === undefined ? wish : kept(wish, text, keep, command.name === 'stop');
  }
  if (reply.amends !== undefined) return decideAmend(s, { of: reply.amends, text }, c, keep);
  if (reply.seq !== p.seq) return late();
  const { given, unread } = readLine(text, p.parts);
  // A skip whose reason is what was typed; where a print alone is asked it takes any text, but not "can't read it".
  const nothing = Object.keys(given).length === 0 || (asksPrintAlone(p) && !/\d/.test(text));
  if (nothing && saysCant(text)) {
    // A question that can't be left out, and offers an answer to whoever isn't sure: "can't" is that answer.
    const unsure = p.skippable ? {} : readLine('not sure', p.parts).given;
    if (Object.keys(unsure).length > 0) return kept(answered(s, unsure, offline, c, keep), text, keep, true);
    return kept(decideCommand(s, { name: 'skip', text, of: null }, c, keep), text, keep);
  }
  if (Object.keys(given).length === 0) return unclear(p, text, keep);
  const gate = besideGate(s, p, { text, given, unread }, keep);
  if (gate) return gate;
  const wish = answered(s, { ...(reply.draft ?? {}), ...given }, offline, c, keep);
  // A print that can't be read was given to its part, and yet nothing of it would be on the record.
  if (wish.refusal?.code === 'unclear') return kept(wish, text, keep);
  if (unread.length === 0 || (!wish.refusal && (wish.drafts ?? []).length === 0)) return wish;
  // What was not read of a line is kept in the person's words, also where the rest of the line is refused.
  const rest: Draft = { kind: 'noted', body: { as: 'note', text: keep.keep(unread.join(', ')) } };
  return { ...wish, drafts: [...(wish.drafts ?? []), rest] };
}

/**
 * A report that ends an isolation is an answer where it is offered ("lock off", when the job is left), or where none has
 * begun and the words answer what is asked.
 */
function commandIn(text: string, s: Standing, p: Prompt): ReturnType<typeof readCommand> {
  const command = readCommand(text);
  if (!command || !isReport(command.name)) return command;
  const said = text.toLowerCase();
  if (offeredBy(p).some((words) => words.toLowerCase() === said)) return null;
  const begun = isAnyBegun(planOf(s), memoryOf(s));
  return begun || Object.keys(readLine(text, p.parts).given).length === 0 ? command : null;
}

/** Said in many ways, so the words stay beside what they were taken for. */
const isReport = (name: string): boolean => name === 'lock is off' || name === 'power is back';

const asksPrintAlone = ({ parts }: Prompt): boolean => {
  const [part, ...more] = parts.filter(({ kind }) => kind !== 'photo');
  return part?.kind === 'label' && more.length === 0;
};

/** What was typed with a command that is refused stays as a note, and so does why somebody stops. */
function kept(wish: Wish, text: string, keep: Scribe, always = false): Wish {
  const lost = wish.refusal !== undefined && (wish.drafts ?? []).length === 0;
  if (!lost && !always) return wish;
  const note: Draft = { kind: 'noted', body: { as: lost ? 'unclear' : 'note', text: keep.keep(text) } };
  return { ...wish, drafts: [...(wish.drafts ?? []), note] };
}

/** Not understood: says what is taken here, keeps the words, changes nothing. */
const unclear = (p: Prompt, text: string, keep: Scribe): Wish =>
  refuse('unclear', `Not understood here. ${takenHere(p)} Your words are kept as a note.`, {
    drafts: [{ kind: 'noted', body: { as: 'unclear', text: keep.keep(text) } }],
  });
