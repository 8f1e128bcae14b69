/**
 * The options that a line names. Denied or doubted ones don't count ("not bulged", "maybe oil"), and neither does a
 * question. A yes counts only where nothing else is said in its place ("yes but the tag is missing" is no yes).
 */

import { isDigit } from '../fold.ts';
import { answered, type Hit } from './answers.ts';
import { BreathMap } from './breath.ts';
import { BARE, type OptionMeaning, type OptionPart, optionsOf } from './lexicon.ts';
import { FILLERS, type Line, PARTING } from './state.ts';
import { DENYING } from './vocabulary.ts';

/** Option ids by part key. What it takes is used. */
export function claimChoices(line: Line): Record<string, string[]> {
  const numbered = byNumber(line);
  if (numbered) return numbered;
  const given: Record<string, string[]> = {};
  const hits = hitsOf(line);
  const breaths = new BreathMap(line, hits);
  for (const part of line.lexicon.choices) {
    const own = hits.filter((hit) => hit.part === part.key);
    const taken = part.kind === 'choose' ? chosen(line, part, own, breaths) : answered(line, part, own, breaths);
    if (taken.length === 0) continue;
    const ids = new Set(taken.map(({ id }) => id));
    given[part.key] = part.options.flatMap(({ id }) => (ids.has(id) ? [id] : []));
    for (const { from, to } of taken) line.use(from, to);
  }
  return given;
}

const NO_OPTIONS: readonly OptionMeaning[] = [];

/** Each place once, by its longest name. A name that two options have is none. */
function hitsOf(line: Line): Hit[] {
  const hits: Hit[] = [];
  for (let i = 0; i < line.tokens.length; ) {
    const found = line.isUsed(i) ? null : line.find(i);
    const options = found === null ? NO_OPTIONS : optionsOf(found);
    const [option] = options;
    const to = i + (found && option ? found.length : 1);
    const only = options.length === 1 && line.isFree(i, to);
    if (option && only && (!option.letter || letterCounts(line, i)))
      hits.push({ part: option.part, id: option.id, from: i, to, letter: option.letter, plain: option.plain ?? false });
    i = to;
  }
  return hits;
}

/** A letter answers at the head of the message, or alone between marks. "a" and "i" are words, so they need a mark. */
function letterCounts(line: Line, i: number): boolean {
  const alone = i + 1 >= line.tokens.length || line.tokens[i + 1]?.kind === 'mark';
  if (i === 1 && line.isMark(0, '(["')) return alone;
  if (i === 0) return alone || !'aioy'.includes(line.tokens[i]?.text ?? '');
  return alone && line.isMark(i - 1, `${PARTING}/`);
}

function chosen(line: Line, part: OptionPart & { kind: 'choose' }, own: readonly Hit[], breaths: BreathMap): Hit[] {
  // Asked once for a breath: a long message stays quick.
  const alone = new Map<number, boolean>();
  const standsAlone = (at: number): boolean => {
    const { from } = breaths.at(at);
    const only = alone.get(from) ?? breaths.holdsOnly(at, NOTHING_ELSE);
    alone.set(from, only);
    return only;
  };
  const sure = own.filter(
    ({ from, to }) => !breaths.isDenied(from, DENYING) && !breaths.asks(from) && !breaths.isGuessed(from, to),
  );
  const meant = sure.filter(({ from, plain }) => !plain || standsAlone(from));
  if (part.several) return meant;
  // "psc, could be inverter": an id is no name there, but it speaks of another answer.
  const others = sure.filter(({ id, plain }) => plain && !BARE.has(id)).map(({ id }) => id);
  const [head] = meant;
  if (head?.letter && head.from === 0) return namesAnotherLetter(line, part, head) ? [] : [head];
  return new Set([...meant.map(({ id }) => id), ...others]).size === 1 ? meant : [];
}

/** "c or d", "c/d", "d, c": two letters are no answer. */
function namesAnotherLetter(line: Line, part: OptionPart, head: Hit): boolean {
  const letters = new Set(part.options.flatMap(({ id }) => (id.length === 1 && id !== head.id ? [id] : [])));
  return line.tokens.some(
    (token, i) =>
      i > 0 &&
      token.kind === 'word' &&
      letters.has(token.text) &&
      (letterCounts(line, i) || line.isWord(i - 1, JOINING) || line.isMark(i - 1, '/&+-')),
  );
}
const JOINING: ReadonlySet<string> = new Set(['or', 'and', 'maybe']);

/** "2", or "1 3" where several may be chosen: only where the prompt has one list and no numbers are asked. */
function byNumber(line: Line): Record<string, string[]> | null {
  const [part, ...more] = line.lexicon.choices.filter(({ kind }) => kind === 'choose');
  if (part?.kind !== 'choose' || more.length > 0 || line.lexicon.fields.length > 0) return null;
  const numbers: number[] = [];
  for (const [i, { kind, text }] of line.tokens.entries()) {
    if (line.isUsed(i) || (kind === 'mark' && !',;\n.)/&+'.includes(text))) return null;
    if (kind === 'word' && !FILLERS.has(text)) return null;
    if (kind !== 'number') continue;
    // "1,3" is two numbers here: a list has no decimals.
    const listed = text.replace(/^,/, '').split(',');
    if (line.find(i) || !listed.every((number) => number.length > 0 && number.length < 3 && [...number].every(isDigit)))
      return null;
    numbers.push(...listed.map(Number));
  }
  const ids = part.options.flatMap(({ id }, n) => (numbers.includes(n + 1) ? [id] : []));
  if (numbers.length === 0 || ids.length !== new Set(numbers).size || (ids.length > 1 && !part.several)) return null;
  line.use(0, line.tokens.length);
  return { [part.key]: ids };
}

const NOTHING_ELSE: ReadonlySet<string> = new Set(['i', 'its', 'really', 'sorry', 'sir', ...FILLERS]);
