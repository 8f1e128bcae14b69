/**
 * The options that a line names. Denied or doubted ones don't count ("not bulged", "maybe oil"), and neither does a
 * question. A yes counts only where nothing else is said in its place ("yes but the tag is missing" is no yes).
 */

import { isDigit } from './fold.ts';
import type { OptionPart } from './lexicon.ts';
import { FILLERS, type Line, PARTING } from './line-state.ts';
import { tokensOf } from './token.ts';

interface Hit {
  part: string;
  id: string;
  from: number;
  to: number;
  letter: boolean;
}

/** Option ids by part key. What it takes is used. */
export function claimChoices(line: Line): Record<string, string[]> {
  const given: Record<string, string[]> = {};
  const numbered = byNumber(line);
  if (numbered) return numbered;
  const hits = hitsOf(line);
  for (const part of line.lexicon.choices) {
    const own = hits.filter((hit) => hit.part === part.key);
    const taken = part.kind === 'choose' ? chosen(line, part, own, hits) : answered(line, part, own, hits);
    if (taken.length === 0) continue;
    given[part.key] = part.options.map(({ id }) => id).filter((id) => taken.some((hit) => hit.id === id));
    for (const { from, to } of taken) line.use(from, to);
  }
  return given;
}

/** Each place once, by its longest name; a name of two parts is none. */
function hitsOf(line: Line): Hit[] {
  const hits: Hit[] = [];
  for (let i = 0; i < line.tokens.length; ) {
    const found = line.isUsed(i) ? null : line.lexicon.find(line.tokens, i);
    const options = found?.meanings.flatMap((meaning) => (meaning.kind === 'option' ? [meaning] : [])) ?? [];
    const [option, ...more] = options;
    const to = i + (found && option ? found.length : 1);
    const overlaps = option && Array.from({ length: to - i }, (_, n) => line.isUsed(i + n)).includes(true);
    if (option && more.length === 0 && !overlaps && (!option.letter || letterCounts(line, i)))
      hits.push({ part: option.part, id: option.id, from: i, to, letter: option.letter });
    i = to;
  }
  return hits;
}

/** A letter answers at the head of the message, or alone between marks. "a" and "i" are words, so they need a mark. */
function letterCounts(line: Line, i: number): boolean {
  const alone = i + 1 >= line.tokens.length || line.tokens[i + 1]?.kind === 'mark';
  if (i === 0) return alone || !'aioy'.includes(line.tokens[i]?.text ?? '');
  return alone && line.isMark(i - 1, `${PARTING}/`);
}

function chosen(line: Line, part: OptionPart & { kind: 'choose' }, own: readonly Hit[], all: readonly Hit[]): Hit[] {
  const meant = own.filter((hit) => !isDenied(line, hit, all) && !isQuestion(line, hit.to));
  const [head] = meant;
  if (!part.several && head?.letter && head.from === 0) return [head];
  return part.several || new Set(meant.map(({ id }) => id)).size === 1 ? meant : [];
}

/** Whether a denying or doubting word stands before it, in the same breath. Words of a longer option deny nothing else. */
function isDenied(line: Line, { from }: Hit, all: readonly Hit[]): boolean {
  for (let i = from - 1; i >= 0 && i >= from - 4; i--) {
    if (line.isMark(i, PARTING) || line.isUsed(i)) return false;
    if (all.some((other) => other.to - other.from > 1 && other.from <= i && i < other.to)) return false;
    if (line.isWord(i, DENYING)) return true;
  }
  return false;
}

function isQuestion(line: Line, from: number): boolean {
  let i = from;
  while (i < line.tokens.length && !line.isMark(i, PARTING)) i++;
  return line.isMark(i, '?');
}

/** Confirm and act: every word of that breath is the answer's own, or a word of the question. */
function answered(line: Line, part: OptionPart, own: readonly Hit[], all: readonly Hit[]): Hit[] {
  const vocabulary = wordsOf(part);
  const meant = own.filter((hit) => speaksOnly(line, hit, all, vocabulary));
  const ids = new Set(meant.map(({ id }) => id));
  if (ids.size !== 1) return [];
  const refuses = ids.has('cant') || ids.has('no');
  return !refuses && isTakenBack(line, all) ? [] : meant;
}

function speaksOnly(line: Line, hit: Hit, all: readonly Hit[], vocabulary: ReadonlySet<string>): boolean {
  let from = hit.from;
  while (from > 0 && !line.isMark(from - 1, PARTING)) from--;
  let to = hit.to;
  while (to < line.tokens.length && !line.isMark(to, PARTING)) to++;
  if (line.isMark(to, '?')) return false;
  if (hit.id === 'cant') while (from < hit.from && line.isWord(from, SUBJECTS)) from++;
  if (hit.id === 'cant' && from === hit.from) return true;
  for (let i = from; i < to; i++) {
    const token = line.tokens[i];
    const known = line.isUsed(i) || token?.kind === 'mark' || all.some((other) => other.from <= i && i < other.to);
    if (!known && !(token?.kind === 'word' && (FILLERS.has(token.text) || vocabulary.has(token.text)))) return false;
  }
  return true;
}

/** Something else in the message limits the yes: "yes, but", "done?", "except the fan". */
function isTakenBack(line: Line, all: readonly Hit[]): boolean {
  return line.tokens.some((_, i) => {
    const inHit = all.some((hit) => hit.from <= i && i < hit.to && (hit.to - hit.from > 1 || !line.isWord(i, DENYING)));
    return !line.isUsed(i) && !inHit && (line.isWord(i, DENYING) || line.isWord(i, LIMITING) || line.isMark(i, '?'));
  });
}

/** "2", or "1 3" where several may be chosen: only where the prompt has one list and no numbers are asked. */
function byNumber(line: Line): Record<string, string[]> | null {
  const [part, ...more] = line.lexicon.choices.filter(({ kind }) => kind === 'choose');
  if (part?.kind !== 'choose' || more.length > 0 || line.lexicon.fields.length > 0) return null;
  const numbers: number[] = [];
  for (const [i, { kind, text }] of line.tokens.entries()) {
    if (line.isUsed(i) || (kind === 'mark' ? !',;\n.)/&+'.includes(text) : kind === 'word' && !FILLERS.has(text)))
      return null;
    if (kind === 'number') {
      if (line.lexicon.find(line.tokens, i) || text.length > 20) return null;
      for (const number of text.split(',')) {
        if (number === '' || ![...number].every(isDigit)) return null;
        numbers.push(Number(number));
      }
    }
  }
  const ids = part.options.flatMap(({ id }, n) => (numbers.includes(n + 1) ? [id] : []));
  if (numbers.length === 0 || ids.length !== new Set(numbers).size || (ids.length > 1 && !part.several)) return null;
  line.use(0, line.tokens.length);
  return { [part.key]: ids };
}

function wordsOf(part: OptionPart): Set<string> {
  const texts = [part.ask, ...part.options.flatMap(({ label, words }) => [label, ...words])];
  const words = new Set(texts.flatMap((text) => tokensOf(text).map((token) => token.text)));
  for (const denying of [...DENYING, ...LIMITING]) words.delete(denying);
  return words;
}

const words = (text: string): Set<string> => new Set(text.split(/\s+/));
const SUBJECTS = words('i we it sorry');
const DENYING = words(
  `no not never without isnt arent wasnt werent dont doesnt didnt wont hasnt havent aint cant cannot couldnt neither nor none
  maybe might perhaps possibly probably unsure if whether sin`,
);
const LIMITING = words('but except only until unless still yet almost nearly before when after however though pero');
