/**
 * Commands: a whole message, or a command word with the rest it takes. A sentence that merely contains one is none.
 * Stop is the exception, and so are the two reports that end an isolation: they must never be missed.
 */
import type { CommandName } from '../schema.ts';
import { bare, fold, isDigit, isLetter, lower } from './fold.ts';

export interface CommandRead {
  name: CommandName;
  /** The rest: a reason, a name, a question, a correction. As typed. */
  text?: string;
}

/** The command in a message, or null. Never throws. */
export function readCommand(text: string): CommandRead | null {
  if (QUESTION_MARKS.test(fold(text))) return { name: 'help' };
  const words = wordsOf(text);
  if (words.length === 0) return null;
  const core = withoutPoliteness(words);
  const whole = WHOLE.get(core.map((word) => word.text).join(' '));
  // "power is back?" asks, and a report must be one.
  if (whole && !(REPORTS.some(([name]) => name === whole) && text.includes('?'))) return { name: whole };
  return readStop(text, core) ?? readReport(text, words) ?? readWithRest(text, words);
}

interface Word {
  text: string;
  start: number;
  end: number;
  /** What follows is parted by punctuation: "stop, raining". */
  parted: boolean;
}

function wordsOf(text: string): Word[] {
  const plain = lower(fold(text));
  const words: Word[] = [];
  let start = -1;
  for (let i = 0; i <= plain.length; i++) {
    const c = plain.charAt(i);
    const inside = c !== '' && (isLetter(c) || isDigit(c) || (c === "'" && start >= 0));
    if (inside && start < 0) start = i;
    if (!inside && start >= 0) {
      words.push({
        text: bare(plain.slice(start, i)).replaceAll("'", ''),
        start,
        end: i,
        parted: PARTING.includes(c) && c !== '',
      });
      start = -1;
    }
  }
  return words;
}

const PARTING = '.,:;!?\n';
const QUESTION_MARKS = /^\s*\?{1,20}\s*$/;

/** "please stop", "ok continue now": politeness at both ends is no part of a command. */
function withoutPoliteness(words: Word[]): Word[] {
  let [from, to] = [0, words.length];
  while (from < to - 1 && POLITE.has(words[from]?.text ?? '')) from++;
  while (to > from + 1 && POLITE.has(words[to - 1]?.text ?? '')) to--;
  return words.slice(from, to);
}
const POLITE = new Set('please pls plz hey hi ok okay now just thanks thx por favor lets guys'.split(' '));

/** "stop" first, or last after filling words. "stop valve" is a part, "won't stop" a symptom. */
function readStop(text: string, words: Word[]): CommandRead | null {
  const [first, second] = words;
  if (first && STOP_WORDS.has(first.text)) {
    const named = second !== undefined && !first.parted && STOP_NOUNS.has(second.text);
    return named ? null : { name: 'stop', ...rest(text, first.end) };
  }
  const at = words.findIndex((word) => STOP_WORDS.has(word.text));
  const others = words.filter((_, i) => i !== at);
  return at >= 0 && words.length <= 9 && others.every((word) => STOP_FILLING.has(word.text)) ? { name: 'stop' } : null;
}
const STOP_WORDS = new Set(
  'stop stopp sotp stpo stp sstop stoop stopping pause pasue puase pausing alto parar pare'.split(' '),
);
const STOP_NOUNS = new Set(
  'valve valves switch button screw screws light start starts collar nut cock sign leak'.split(' '),
);
const STOP_FILLING = new Set(
  `i we us im me you need needs want to must have has gotta gonna going got should lets let can could id like would had better
  now here for a an minute moment sec second while this the it everything all work working job call stop am are is everybody everyone
  again and then so right immediately asap just please today`.split(/\s+/),
);

/** Reports that end an isolation, also inside a short sentence. */
function readReport(text: string, words: Word[]): CommandRead | null {
  if (words.length > LONGEST_REPORT || text.includes('?')) return null;
  const texts = words.map((word) => word.text);
  if (texts.some((word) => NO_REPORT.has(word))) return null;
  const said = ` ${texts.join(' ')} `;
  for (const [name, phrases] of REPORTS) if (phrases.some((phrase) => said.includes(` ${phrase} `))) return { name };
  return null;
}
const LONGEST_REPORT = 10;
const NO_REPORT = new Set(
  'not no never isnt wasnt if when until till once before after unless wait did does will would should shall why ask note reply'.split(
    ' ',
  ),
);
const POWER_BACK = `power is back, powers back, power back on, power came back, power came on, power has come back, power comes back, power went back on,
  power is back on, power just came back, power just came on, power got turned on, power was turned on, power turned back on,
  electricity is back, electricity came back, someone turned the power on, somebody turned the power on, someone turned it back on,
  se fue la luz y volvio, volvio la luz, regreso la luz, volvio la corriente`;
const LOCK_OFF = `lock is off, locks off, lock came off, lock has come off, lock fell off, lock was taken off, lock got taken off, lock was removed,
  lock got removed, lock is gone, locks gone, lock is missing, lock was cut, lock got cut, lock is cut, took my lock off, took off my lock,
  took the lock off, removed my lock, removed the lock, cut my lock, cut the lock, lock and tag are off, lock isn on`;
const phrases = (text: string): string[] => text.split(',').map((phrase) => phrase.trim());
const REPORTS: readonly [CommandName, string[]][] = [
  ['power is back', phrases(POWER_BACK)],
  ['lock is off', phrases(LOCK_OFF)],
];

function readWithRest(text: string, words: Word[]): CommandRead | null {
  for (const { name, words: head } of WITH_REST) {
    if (!head.every((word, i) => words[i]?.text === word)) continue;
    const last = words[head.length - 1];
    const next = words[head.length];
    if (!last || (next && last.parted === false && NEEDS_PARTING.has(name) && !startsLikeRest(name, next, words)))
      return null;
    const dropped = next && DROPPED[name]?.includes(next.text) && words.length > head.length + 1 ? next.end : last.end;
    return { name, ...rest(text, dropped) };
  }
  return null;
}

/** Words that also begin ordinary sentences take a rest only after a colon or comma, or where the rest fits. */
const NEEDS_PARTING = new Set<CommandName>(['back', 'senior', 'sign', 'help', 'why']);
const BACK_NOUNS = new Set(
  'pressure pressures door side panel wall plate cover fan yard of to ordered feed feeding on in at and up seat'.split(
    ' ',
  ),
);

/** "back fan 5.2" corrects; "back pressure high" does not: a correction is short and holds a figure, or is one word. */
function startsLikeRest(name: CommandName, next: Word, words: readonly Word[]): boolean {
  if (name !== 'back') return false;
  const figure = words.some((word) => isDigit(word.text.charAt(0)) || word.text === 'ol');
  return figure
    ? !['pressure', 'to', 'on', 'in', 'at'].includes(next.text)
    : words.length === 2 && !BACK_NOUNS.has(next.text);
}

/** A small word that belongs to the command: "hand over to Sam", "skip because wet". */
const DROPPED: Partial<Record<CommandName, string[]>> = {
  'hand over': ['to'],
  skip: ['because', 'it', 'this', 'that', 'step'],
  'take back': ['because'],
  release: ['because'],
  approve: ['because'],
  'send back': ['because'],
};

function rest(text: string, from: number): { text?: string } {
  const left = trimStart(text.slice(from)).trim();
  return left === '' || !/[\p{L}\p{N}_]/u.test(left) ? {} : { text: left };
}

const trimStart = (text: string): string => {
  let at = 0;
  while (at < text.length && ' \t\n.,:;!)'.includes(text.charAt(at))) at++;
  return text.slice(at);
};

const SPELLINGS: readonly [CommandName, string][] = [
  ['back', 'back, go back, undo, change last answer, change my last answer'],
  ['why', 'why, why this, why is this asked, why do you ask, why is that, y tho, por que'],
  ['where', 'where, where am i, where are we, where was i, status, donde estoy'],
  ['help', 'help, help me, commands, what can i type, what can i do, ayuda'],
  ['stop', 'stop, stop stop, pause, alto, break time, take a break, stop work, halt'],
  [
    'go on',
    'go on, goon, continue, resume, carry on, keep going, continue work, go on with it, continuar, seguir, contnue, continu, resum',
  ],
  [
    'senior',
    'senior, get senior, get a senior, get the senior, call senior, call a senior, call the senior, need senior, need a senior, i need a senior, ask senior, ask a senior, ask the senior, senoir',
  ],
  ['skip', 'skip, skip it, skip this, skip that, skip step, skip this step, skip this one'],
  ['take back', 'take back, take it back, take that back, takeback, i take it back, i take that back'],
  ['hand over', 'hand over, handover, hand it over'],
  ['take over', 'take over, takeover, i take over, taking over, im taking over, ill take over, take it over'],
  ['power is back', 'power is back, power back'],
  ['lock is off', 'lock is off'],
  [
    'alarm',
    'alarm, emergency, raise alarm, raise the alarm, its an emergency, this is an emergency, emergencia, emergancy, sos, mayday, 911, 112',
  ],
  ['happening', 'happening, happening now, its happening, its happening now, it is happening, it is happening now'],
  ['old mark', 'old mark, old marks, its an old mark, it is an old mark, an old mark, oldmark, just an old mark'],
  ['not here', 'not here, heard of not here, heard of it not here, heard it not here, heard of only'],
  ['seen', 'seen, seen it, ive seen it, i have seen it, acknowledged, ack'],
  ['release', 'release'],
  ['approve', 'approve'],
  ['ask', 'ask'],
  ['reply', 'reply'],
  ['note', 'note'],
  ['sign', 'sign, sign it, sign the record, sign record'],
  ['send back', 'send back, send it back, sendback'],
];
const WHOLE = new Map<string, CommandName>();
for (const [name, spellings] of SPELLINGS) for (const spelling of phrases(spellings)) WHOLE.set(spelling, name);

/** Command words that take a rest, the longest first. */
const WITH_REST = phrases(
  'hand it over, hand over, handover, take it back, take that back, take back, takeback, send it back, send back, sendback, skip, release, approve, ask, reply, note, back, senior',
).map((spelling) => ({ name: WHOLE.get(spelling) ?? 'note', words: spelling.split(' ') }));
