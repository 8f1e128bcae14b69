/**
 * Whether somebody may put their hands into a cabinet, by trade's rules 1 to 3 alone. A proof of dead is a chain of
 * answers of one person, each later than the one before: fit, means, lock, look, line, what is left. What breaks it says
 * from which link on it has to be made again. Nothing here is shared with the engine, its fold or the proof's monitors.
 */
import type { Parts } from '../../../schema.ts';
import { type Answer, chosen, type Heard, isLive, isTooMuch, standing, turnsOn, volts } from './heard.ts';

export type Cabinet = 'outdoor' | 'indoor' | 'inverter';
/** By the pages, the innermost counts: blower and 24 V source are indoors, what leads back out isn’t, an inverter has its own. */
export const cabinetAt = (place: string): Cabinet => {
  const gate = /^dead:([a-z]+)\//.exec(place)?.[1];
  if (gate !== undefined) return gate as Cabinet;
  const pages = place.split('/').slice(0, -1);
  if (pages.includes('inverter')) return 'inverter';
  const inner = pages.findLast((page) => ['blower', 'source', 'outdoors', 'outdoor-end'].includes(page));
  return inner === undefined || inner.startsWith('outdoor') ? 'outdoor' : 'indoor';
};

const MINUTES = 30;
const SMALL = 5;
const LARGE = 50;

/** A sentence that says what is missing, or null where this person's hands may be inside at this moment. */
export function notDead(heard: readonly Heard[], cabinet: Cabinet, by: string, now: number): string | null {
  const answers = standing(heard);
  const gates = answers.filter((a) => a.place.startsWith(`dead:${cabinet}/`) && !a.offline);
  const last = (steps: readonly string[]): Answer | undefined => gates.findLast((a) => steps.includes(a.step));
  const from = (kind: string): number => heard.findLast(({ entry }) => entry.kind === kind)?.entry.seq ?? 0;
  const own = (a: Answer | undefined): a is Answer => a !== undefined && a.by === by && !a.skipped && !a.gone;

  const fit = last(['fit', 'unfit']);
  if (!own(fit) || fit.seq < from('handed-over')) return 'this person did not say that they and the meter are fit';
  if (chosen(fit.parts.ok) !== 'yes' && chosen(fit.parts.ready) !== 'yes') return 'they are not fit';
  const means = last(['means']);
  if (!own(means) || means.seq < fit.changed || chosen(means.parts.means) === '') return 'the means is not named';
  const lock = lockOf(heard, gates, cabinet, by);
  if (lock === null || lock < means.changed) return 'nothing is locked by this person';
  if (lock < broken(heard)) return 'what came after the lock ended the isolation';
  const look = last([cabinet === 'inverter' ? 'waited' : 'look']);
  if (!own(look) || look.seq < lock) return 'nobody looked after the lock';
  const seen = cabinet === 'inverter' ? null : lookedAt(look, answers, cabinet);
  if (cabinet === 'inverter' ? chosen(look.parts.ok) !== 'yes' : seen === null)
    return 'what holds a charge is not known';
  const line = last(['proving']);
  if (!own(line) || line.seq < (seen?.grown ?? look.changed)) return 'no line was read after it';
  const bridge = gates.findLast((a) => a.step === 'bridge' && a.seq > line.seq);
  const three = cabinet === 'outdoor' && unitOf(answers) === 'three-phase';
  const wrong = lineWrong(line, bridge, means.parts, three);
  if (wrong !== null) return wrong;
  const gap = lastGap(heard, by, lock, now);
  if (gap === 'now') return `nothing was heard of its holder for more than ${limitOf(heard)} minutes`;
  if (gap > lock && !confirmedSince(gap, gates, by, means.parts, three))
    return 'after such a silence the lock was not confirmed with a line';
  const full = busFull(heard, answers, cabinet);
  if (full !== null) return full;
  // Where a motor needs one, none seen is one not found, and what is left was read of nothing.
  if (seen !== null && seen.count === 0 && !needsOne(answers, cabinet)) return null;
  const left = last([cabinet === 'inverter' ? 'bus' : 'residual']);
  if (!own(left) || left.seq < (bridge?.seq ?? line.seq)) return 'what is left was not read after the line';
  return leftWrong(left, seen);
}

/** An electronic blower's bus: said to be off, and five minutes of the record later that it rested, power off ever since. */
function busFull(heard: readonly Heard[], answers: readonly Answer[], cabinet: Cabinet): string | null {
  if (cabinet !== 'indoor' || driveOf(answers) !== 'ecm') return null;
  const own = answers.filter((a) => cabinetAt(a.place) === cabinet);
  const off = own.findLast((a) => a.step === 'off' && chosen(a.parts.choice) === 'now');
  const loud = heard.filter(({ entry }) => !isSilent(entry));
  if (off === undefined || off.changed < broken(loud, cabinet))
    return 'the bus of its motor has had power since it was said to be off';
  const said = own.findLast((a) => (a.step === 'rest' || a.step === 'longer') && a.seq > off.seq);
  const recorded = (seq: number | undefined): number =>
    Date.parse(heard.find(({ entry }) => entry.seq === seq)?.entry.at ?? '');
  return recorded(said?.seq) - recorded(off.seq) >= 5 * 60_000
    ? null
    : 'the bus of its motor has not rested for five minutes';
}
/** What ends a proof without any power. */
const isSilent = (entry: Heard['entry']): boolean =>
  (entry.kind === 'voided' && entry.body.reason === 'offline') ||
  (entry.kind === 'answered' && entry.body.offline === true);

const limitOf = (heard: readonly Heard[]): number => {
  const set = heard.findLast(({ entry }) => entry.kind === 'set' && entry.body.what === 'settings')?.entry;
  const minutes = set?.kind === 'set' && set.body.what === 'settings' ? set.body.settings.minutes : undefined;
  return Math.min(MINUTES, minutes ?? MINUTES);
};

/** seq of the lock that holds the means open: own lock and tag, a tag with an extra measure, or what another approved. */
function lockOf(heard: readonly Heard[], gates: readonly Answer[], cabinet: Cabinet, by: string): number | null {
  // A lock that is said later, by changing the answer, counts before the tag that was to stand in for it.
  const answer = gates
    .filter((a) => a.step === 'locked' || a.step === 'tag')
    .sort((a, b) => a.changed - b.changed)
    .at(-1);
  const approved = heard.findLast(
    ({ entry }) =>
      entry.kind === 'approved' &&
      entry.body.what === 'lock-alternative' &&
      entry.body.cabinet === cabinet &&
      entry.by !== by,
  )?.entry.seq;
  if (approved !== undefined && approved > (answer?.changed ?? 0)) return approved;
  return answer && answer.by === by && !answer.skipped && !answer.gone && chosen(answer.parts.ok) === 'yes'
    ? answer.changed
    : null;
}

/** seq of the last thing after which everything from the lock on is made again; live work of one cabinet alone, where it is named. */
function broken(heard: readonly Heard[], cabinet?: Cabinet): number {
  const breaks = heard.findLast(({ entry }) => {
    if (entry.kind === 'alarmed' || entry.kind === 'handed-over') return true;
    if (entry.kind === 'voided') return entry.body.reason !== 'age';
    if (entry.kind !== 'answered') return false;
    const { place, parts, offline } = entry.body;
    if (cabinet !== undefined && cabinetAt(place) !== cabinet) return false;
    return offline === true || isLive(place, parts) || isTooMuch(place, parts) || turnsOn(place, parts);
  });
  return breaks?.entry.seq ?? 0;
}

/** seq of the holder's answer that ended the last silence that was too long; 'now' where one lasts. */
function lastGap(heard: readonly Heard[], by: string, lock: number, now: number): number | 'now' {
  const most = limitOf(heard) * 60_000;
  let before: number | null = null;
  let gap = 0;
  for (const { at, seq } of accepted(heard, by)) {
    if (before !== null && at - before > most && seq > lock) gap = seq;
    before = Math.max(before ?? at, at);
  }
  return before === null || now - before > most ? 'now' : gap;
}
/** Every answer of this person counts, also one that was taken back later. */
function accepted(heard: readonly Heard[], by: string): { at: number; seq: number }[] {
  return heard.flatMap(({ entry, at }) => {
    if (entry.kind !== 'answered' || entry.by !== by) return [];
    const lag = entry.said === null ? 0 : Math.max(0, Date.parse(entry.at) - Date.parse(entry.said));
    return [{ at: at - lag, seq: entry.seq }];
  });
}

/** After a silence the lock is confirmed with a line, once; a line that is not accepted confirms nothing. */
function confirmedSince(gap: number, gates: readonly Answer[], by: string, means: Parts, three: boolean): boolean {
  return gates.some((line, i) => {
    if (line.step !== 'proving' || line.by !== by || line.skipped || line.gone || line.seq < gap) return false;
    const behind = gates.slice(i + 1);
    const again = behind.findIndex(({ step }) => step === 'proving');
    // Of the line's own volts under the tool the last count: taken back, they are put there again.
    const bridge = behind.slice(0, again < 0 ? undefined : again).findLast(({ step }) => step === 'bridge');
    return chosen(line.parts.still) === 'yes' && lineWrong(line, bridge, means, three) === null;
  });
}

/** The kind of unit that was named last. */
export const unitOf = (answers: readonly Answer[]): string =>
  chosen(answers.findLast((a) => (a.step === 'class' || a.step === 'source-kind') && !a.skipped)?.parts.choice);

/** What drives the blower, as it was said last. */
const driveOf = (answers: readonly Answer[]): string =>
  chosen(
    answers.findLast((a) => /(^|-)drive$/.test(a.step) && cabinetAt(a.place) === 'indoor' && !a.skipped)?.parts.choice,
  );

/** Whether a motor in this cabinet runs on a capacitor: indoors by what drives the blower, outdoors by the kind of unit. */
const needsOne = (answers: readonly Answer[], cabinet: Cabinet): boolean =>
  cabinet === 'indoor' ? driveOf(answers) === 'psc' : ['psc', 'ecm'].includes(unitOf(answers));

interface Seen {
  readonly count: number;
  readonly one: boolean;
  /** seq of the last change after which more may hold a charge than before. */
  readonly grown: number;
}
/** How many capacitors, and whether the run capacitor is known to have one section. */
function lookedAt(look: Answer, answers: readonly Answer[], cabinet: Cabinet): Seen | null {
  const count = volts(look.parts.count);
  if (count === null) return null;
  const more = count > (volts(look.first.count) ?? 0) || (isOne(look.first) && !isOne(look.parts));
  const two = answers.some(
    ({ seq, place, step, parts: { print } }) =>
      seq > look.seq &&
      cabinetAt(place) === cabinet &&
      ['wires', 'print', 'diagram', 'rating'].includes(step) &&
      // What goes in with a new motor, or for the other capacitor, is printed on another part.
      !/another\/|\/(with-motor|new-other)~|\/motor\//.test(place) &&
      print?.kind === 'label' &&
      print.label.fan !== null,
  );
  return { count, one: isOne(look.parts) && !two, grown: more ? look.changed : look.seq };
}
function isOne({ print, terminals }: Parts): boolean {
  if (chosen(terminals) === 'three') return false;
  return print?.kind === 'label' ? print.label.fan === null : chosen(terminals) === 'two';
}

const SOURCES: Readonly<Record<string, number>> = {
  ...{ outlet: 120, line240: 240, line230: 230, line208: 208, unit120: 120, unit240: 240 },
};
const SIX = ['l1l2', 'l1l3', 'l2l3', 'l1g', 'l2g', 'l3g', 't1g', 't2g', 't3g'];
const PAIRS: Readonly<Record<string, readonly string[]>> = {
  three: SIX,
  neutral: ['hn', 'hg', 'ng', 't1g'],
  'two-legs': ['l1l2', 'l1g', 'l2g', 't1g', 't2g'],
};
const FEED = ['x12', 'x1g', 'x2g'];
const EVERY = [...new Set([...Object.values(PAIRS).flat(), ...FEED])];

/** What is wrong with a line of live-dead-live: its own provings, a pair that was not read, volts that are left. */
function lineWrong(line: Answer, bridge: Answer | undefined, means: Parts, three: boolean): string | null {
  if (line.changed !== line.seq) return 'a figure of the line was changed; a line is taken whole';
  const stated = SOURCES[chosen(means.source)] ?? volts(means.stated) ?? 0;
  const proves = (a: Answer): boolean =>
    [a.parts.before, a.parts.after].every((v) => {
      const read = volts(v) ?? 0;
      return read >= 100 && Math.abs(read - stated) <= stated * 0.1 + 1e-9;
    });
  if (!proves(line)) return 'the meter was not proved before and after the line';
  const supply = chosen(means.supply);
  const due = [...(PAIRS[three ? 'three' : supply] ?? SIX), ...(chosen(means.feeds) === 'none' ? [] : FEED)];
  if (due.some((pair) => volts(line.parts[pair]) === null)) return 'a pair of the line was not read';
  const read = EVERY.flatMap((pair) => ({ pair, at: volts(line.parts[pair]) ?? 0 }));
  if (read.some(({ at }) => at >= LARGE)) return 'a pair of the line is live';
  const induced = read.filter(({ at }) => at > SMALL);
  if (induced.length === 0) return null;
  if (!bridge || bridge.by !== line.by || bridge.skipped || bridge.gone || bridge.changed !== bridge.seq)
    return 'volts were not put under the tool';
  if (!proves(bridge)) return 'the meter was not proved around the tool';
  return induced.every(({ pair }) => (volts(bridge.parts[pair]) ?? LARGE) <= SMALL)
    ? null
    : 'volts hold under the tool';
}

/** What is wrong with a reading of what is left in capacitors, or on a bus where nothing was looked at. */
function leftWrong(left: Answer, seen: Pick<Seen, 'count' | 'one'> | null): string | null {
  if (left.changed !== left.seq) return 'a figure of the line was changed; a line is taken whole';
  const battery = [left.parts.batteryBefore, left.parts.batteryAfter].map((v) => volts(v) ?? 0);
  if (battery.some((v) => v < 7 || v > 10)) return 'the meter was not proved on DC before and after';
  const pairs =
    seen === null
      ? ['pn']
      : [...(seen.one ? ['hc'] : ['hc', 'fc', 'hf']), ...['c2', 'c3', 'c4'].slice(0, Math.max(0, seen.count - 1))];
  for (const pair of pairs) {
    const read = volts(left.parts[pair]);
    if (read === null) return `${pair} was not read`;
    if (read > SMALL) return `${pair} holds ${read} V`;
  }
  if (seen === null || seen.one) return null;
  const [h, f, both] = ['hc', 'fc', 'hf'].map((k) => Number((left.parts[k] as { value?: string }).value)) as [
    number,
    number,
    number,
  ];
  const agree = [h - f, Math.abs(h) - Math.abs(f)].some((d) => Math.abs(Math.abs(d) - Math.abs(both)) <= 0.5 + 1e-9);
  return agree ? null : 'the three pairs do not agree';
}

/** Rule of §6: whether the last thing heard is a complete line of what is left that is not accepted. */
export function isFailedLine(heard: readonly Heard[]): boolean {
  const entry = heard.at(-1)?.entry;
  if (entry?.kind !== 'answered' || !/^dead:(outdoor|indoor)\/residual$/.test(entry.body.place)) return false;
  if (entry.body.skipped !== undefined) return false;
  const answers = standing(heard);
  const cabinet = cabinetAt(entry.body.place);
  const look = answers.findLast((a) => a.place === `dead:${cabinet}/look`);
  const left = answers.find((a) => a.seq === entry.seq);
  return !look || !left || leftWrong(left, lookedAt(look, answers, cabinet)) !== null;
}
