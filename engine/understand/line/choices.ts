/**
 * The options that a line names. Denied or doubted ones don't count ("not bulged", "maybe oil"), and neither does a
 * question. A yes counts only where nothing else is said in its place ("yes but the tag is missing" is no yes).
 */

import { isDigit } from '../fold.ts';
import { tokensOf } from '../token.ts';
import { BreathMap } from './breath.ts';
import type { Found, Meaning, OptionPart } from './lexicon.ts';
import { FILLERS, type Line, PARTING } from './state.ts';

interface Hit {
  part: string;
  id: string;
  from: number;
  to: number;
  letter: boolean;
  plain: boolean;
}

/** Option ids by part key. What it takes is used. */
export function claimChoices(line: Line): Record<string, string[]> {
  const numbered = byNumber(line);
  if (numbered) return numbered;
  const given: Record<string, string[]> = {};
  const hits = hitsOf(line);
  const breaths = new BreathMap(line, hits);
  for (const part of line.lexicon.choices) {
    const own = hits.filter((hit) => hit.part === part.key);
    const taken = part.kind === 'choose' ? chosen(part, own, breaths) : answered(line, part, own, breaths);
    if (taken.length === 0) continue;
    const ids = new Set(taken.map(({ id }) => id));
    given[part.key] = part.options.flatMap(({ id }) => (ids.has(id) ? [id] : []));
    for (const { from, to } of taken) line.use(from, to);
  }
  return given;
}

const NO_OPTIONS: readonly OptionMeaning[] = [];
type OptionMeaning = Extract<Meaning, { kind: 'option' }>;
const optionsOf = (found: Found): OptionMeaning[] => found.meanings.filter((meaning) => meaning.kind === 'option');

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
  if (i === 0) return alone || !'aioy'.includes(line.tokens[i]?.text ?? '');
  return alone && line.isMark(i - 1, `${PARTING}/`);
}

function chosen(part: OptionPart & { kind: 'choose' }, own: readonly Hit[], breaths: BreathMap): Hit[] {
  // Asked once for a breath: a long message stays quick.
  const alone = new Map<number, boolean>();
  const standsAlone = (at: number): boolean => {
    const { from } = breaths.at(at);
    const only = alone.get(from) ?? breaths.holdsOnly(at, NOTHING_ELSE);
    alone.set(from, only);
    return only;
  };
  const meant = own.filter(
    ({ from, plain }) => !breaths.isDenied(from, DENYING) && !breaths.asks(from) && (!plain || standsAlone(from)),
  );
  const [head] = meant;
  if (part.several) return meant;
  if (head?.letter && head.from === 0) return [head];
  return new Set(meant.map(({ id }) => id)).size === 1 ? meant : [];
}

/** Confirm and act: every word of that breath is the answer's own, or a word of the question. */
function answered(line: Line, part: OptionPart, own: readonly Hit[], breaths: BreathMap): Hit[] {
  const half = saidByHalf(line, part, breaths);
  if (half) return [half];
  const vocabularies = new Map(part.options.map(({ id }) => [id, wordsOf(part, id)]));
  // Asked once for a breath, however often it says yes: a long message stays quick.
  const whole = new Map<string, boolean>();
  const meant = own.flatMap((hit) => {
    if (breaths.asks(hit.from)) return [];
    const breath = breaths.at(hit.from);
    const key = `${breath.from} ${hit.id}`;
    const only = whole.get(key) ?? breaths.holdsOnly(hit.from, vocabularies.get(hit.id) ?? NOTHING_ELSE);
    const first = !whole.has(key);
    whole.set(key, only);
    if (only) return [first ? { ...hit, ...breath } : hit];
    return hit.id === 'cant' && breaths.leads(hit.from, SUBJECTS) ? [hit] : [];
  });
  const ids = new Set(meant.map(({ id }) => id));
  if (ids.size !== 1) return [];
  const [id] = ids;
  const refuses = id === 'cant' || id === 'no';
  return !refuses && breaths.anyLeft(new Set([...LIMITS, ...ofOthers(part, id ?? '')]), meant) ? [] : meant;
}

/** "locked, tagged" for "Open, locked, tagged, tried": at least half the words of one answer, and only its words. */
function saidByHalf(line: Line, part: OptionPart, breaths: BreathMap): Hit | null {
  const rest = line.tokens.flatMap((token, i) => (line.isUsed(i) || breaths.namesOther(i, part.key) ? [] : [token]));
  if (rest.some(({ kind, text }) => kind === 'number' || text === '?')) return null;
  if (line.tokens.some((_, i) => isShared(line.find(i)))) return null;
  const said = new Set(rest.flatMap(({ kind, text }) => (kind === 'word' && !FILLERS.has(text) ? [text] : [])));
  const fitting = part.options.filter(({ label, words }) => {
    const own = contentOf([label]);
    const known = contentOf([label, ...words]);
    const half = [...said].filter((word) => own.has(word)).length * 2 >= own.size;
    return said.size > 0 && half && [...said].every((word) => known.has(word) || HARMLESS.has(word));
  });
  const [option, ...more] = fitting;
  if (!option || more.length > 0 || line.lexicon.choices.filter(({ kind }) => kind !== 'choose').length > 1)
    return null;
  return { part: part.key, id: option.id, from: 0, to: line.tokens.length, letter: false, plain: false };
}

const contentOf = (texts: readonly string[]): Set<string> =>
  new Set(
    texts.flatMap((text) =>
      tokensOf(text).flatMap((token) => (token.kind === 'word' && !FILLERS.has(token.text) ? [token.text] : [])),
    ),
  );

/** A name of two questions: neither is answered by it. */
const isShared = (found: Found | null): boolean =>
  found !== null && new Set(optionsOf(found).map(({ part }) => part)).size > 1;

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

const ofTexts = (texts: readonly string[]): string[] =>
  texts.flatMap((text) => tokensOf(text).flatMap(({ kind, text: word }) => (kind === 'mark' ? [] : [word])));
const textsOf = ({ options }: OptionPart, wanted: (id: string) => boolean): string[] =>
  options.filter(({ id }) => wanted(id)).flatMap(({ label, words: also }) => [label, ...also]);

/** What may be said beside an answer: its own words and those of the question. */
function wordsOf(part: OptionPart, id: string): Set<string> {
  const known = new Set([...FILLERS, ...HARMLESS, ...ofTexts([part.ask, ...textsOf(part, (one) => one === id)])]);
  for (const word of [...DENYING, 'but', 'except', 'until', 'unless', 'almost', 'yet']) known.delete(word);
  return known;
}
/** Words that only another answer has: "yes, a lock is missing" is no yes to "No, something is missing". */
function ofOthers(part: OptionPart, id: string): string[] {
  const own = wordsOf(part, id);
  return ofTexts(textsOf(part, (one) => one !== id)).filter((word) => !own.has(word) && word.length > 2);
}

const NOTHING_ELSE: ReadonlySet<string> = new Set(['i', 'its', 'really', 'sorry', 'sir', ...FILLERS]);
const words = (text: string): string[] => text.trim().split(/\s+/);
const SUBJECTS = new Set(['i', 'we', 'it', 'sorry']);
const DENYING = new Set(
  words(`no not never without isnt arent wasnt werent dont doesnt didnt wont hasnt havent aint cant cannot couldnt neither
    nor none maybe might perhaps possibly probably unsure if whether sin`),
);
/** Beside an answer's own words these change nothing: "all the wires are off now". */
const HARMLESS = new Set(
  words('i we have ive weve got all both everything a an of them em im my just now already took taken sir out'),
);
/** What limits a yes elsewhere in the message: "yes, but", "except the fan", "done?". */
const LIMITS = new Set([
  ...DENYING,
  ...words('? but except only until unless still yet almost nearly before when after however though pero'),
]);
