/**
 * Commands: a whole message, or a command word with the rest it takes. A sentence that merely contains one is none.
 * Stop is the exception, and so are the two reports that end an isolation: they must never be missed.
 */
import type { CommandName } from '../../schema.ts';
import { isClimbing, isOver } from '../field.ts';
import { bare, fold, isDigit, isLetter, lower } from '../fold.ts';
import { BACK_NOUNS, NO_REPORT, POLITE, REPORTS, STOP, STOP_FILLING, STOP_NOUNS, WHOLE, WITH_REST } from './words.ts';

export interface CommandRead {
  name: CommandName;
  /** The rest: a reason, a name, a question, a correction. As typed. */
  text?: string;
}

/** The command in a message, or null. Never throws. */
export function readCommand(text: string): CommandRead | null {
  if (/^\?{1,20}$/.test(fold(text).trim())) return { name: 'help' };
  const words = wordsOf(text);
  if (words.length === 0) return null;
  const core = withoutPoliteness(words);
  const whole = core.length < 8 ? WHOLE.get(core.map((word) => word.text).join(' ')) : undefined;
  // "power is back?" asks, and a report must be one.
  // "note ok": the small word is what the person wants kept.
  const kept = whole && core.length < words.length ? readWithRest(text, words) : null;
  if (kept?.text) return kept;
  if (whole && !(text.includes('?') && REPORTS.some(([name]) => name === whole))) return { name: whole };
  return readStop(text, core) ?? readReport(text, words) ?? readWithRest(text, words);
}

interface Word {
  text: string;
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
    if (inside || start < 0) continue;
    const word = bare(plain.slice(start, i)).replaceAll("'", '');
    words.push({ text: word, end: i, parted: c !== '' && '.,:;!?\n'.includes(c) });
    start = -1;
  }
  return words;
}

/** "please stop", "ok continue now". */
function withoutPoliteness(words: Word[]): Word[] {
  let [from, to] = [0, words.length];
  while (from < to - 1 && POLITE.has(words[from]?.text ?? '')) from++;
  while (to > from + 1 && POLITE.has(words[to - 1]?.text ?? '')) to--;
  return words.slice(from, to);
}

/** "stop" as the first word, or among filling words only. "stop valve" is a part, "won't stop" a symptom. */
function readStop(text: string, words: readonly Word[]): CommandRead | null {
  const [first, second] = words;
  if (first && STOP.has(first.text)) {
    const part = second !== undefined && !first.parted && STOP_NOUNS.has(second.text);
    return part ? null : { name: 'stop', ...rest(text, first.end) };
  }
  const wish = words.length <= LONGEST_WISH && words.some((word) => STOP.has(word.text));
  return wish && words.every(({ text }) => STOP.has(text) || STOP_FILLING.has(text)) ? { name: 'stop' } : null;
}
const LONGEST_WISH = 9;

/** Reports that end an isolation, also inside a short sentence. */
function readReport(text: string, words: readonly Word[]): CommandRead | null {
  if (words.length > LONGEST_REPORT || text.includes('?')) return null;
  if (words.some((word) => NO_REPORT.has(word.text))) return null;
  const said = ` ${words.map((word) => word.text).join(' ')} `;
  const report = REPORTS.find(([, phrases]) => phrases.some((phrase) => said.includes(` ${phrase} `)));
  return report ? { name: report[0] } : null;
}
const LONGEST_REPORT = 10;

function readWithRest(text: string, words: readonly Word[]): CommandRead | null {
  const found = WITH_REST.find(([, head]) => head.every((word, i) => words[i]?.text === word));
  if (!found) return null;
  const [name, head] = found;
  const [last, next] = [words[head.length - 1], words[head.length]];
  if (!last) return null;
  if (next && !last.parted && !takesRest(name, next, words)) return null;
  return { name, ...rest(text, words[head.length - 1 + joining(name, words, head.length)]?.end ?? last.end) };
}

/** "hand over to Sam", "skip because wet", "skip it because wet": so many small words belong to the command. */
function joining(name: CommandName, words: readonly Word[], at: number): number {
  const join = name === 'hand over' ? 'to' : 'because';
  const object = name === 'skip' && OBJECTS.has(words[at]?.text ?? '') && words[at + 1]?.text === join ? 1 : 0;
  return words[at + object]?.text === join && words.length > at + object + 1 ? object + 1 : 0;
}
const OBJECTS = new Set(['it', 'this', 'that']);

/**
 * "Senior" and "back" also begin ordinary sentences. A correction holds a figure ("back fan 5.2", "back case open") or
 * is short ("back clean"); "back pressure high" is none. After a colon or comma every rest is taken.
 */
function takesRest(name: CommandName, next: Word, words: readonly Word[]): boolean {
  if (name === 'senior') return false;
  if (name !== 'back') return true;
  const figure = words.some((word) => isDigit(word.text.charAt(0)) || isOver(word.text) || isClimbing(word.text));
  return figure ? !PRESSURE.has(next.text) : words.length <= LONGEST_CORRECTION && !BACK_NOUNS.has(next.text);
}
const LONGEST_CORRECTION = 4;
const PRESSURE = new Set(['pressure', 'pressures', 'to', 'on', 'in', 'at']);

function rest(text: string, from: number): { text?: string } {
  let at = from;
  while (at < text.length && ' \t\n.,:;!)'.includes(text.charAt(at))) at++;
  const left = text.slice(at).trim();
  return /[\p{L}\p{N}_\p{Extended_Pictographic}]/u.test(left) ? { text: left } : {};
}
