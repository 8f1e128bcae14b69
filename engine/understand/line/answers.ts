/**
 * Yes, done and can't. They count only where nothing else is said in their place ("yes but the tag is missing" is no
 * yes), and where no word of another answer stands beside them.
 */
import type { BreathMap } from './breath.ts';
import { type Found, type OptionPart, optionsOf } from './lexicon.ts';
import { FILLERS, type Line } from './state.ts';
import { HARMLESS, vocabularyOf } from './vocabulary.ts';

/** A name of an option, where it stands. */
export interface Hit {
  part: string;
  id: string;
  from: number;
  to: number;
  letter: boolean;
  plain: boolean;
}

/** Confirm and act: every word of that breath is the answer's own, or a word of the question. */
export function answered(line: Line, part: OptionPart, own: readonly Hit[], breaths: BreathMap): Hit[] {
  const half = saidByHalf(line, part, breaths);
  if (half) return [half];
  // Asked once for a breath, however often it says yes: a long message stays quick.
  const whole = new Map<string, boolean>();
  const meant = own.flatMap((hit) => {
    if (breaths.asks(hit.from)) return [];
    const breath = breaths.at(hit.from);
    const key = `${breath.from} ${hit.id}`;
    const only = whole.get(key) ?? breaths.holdsOnly(hit.from, vocabularyOf(part, hit.id).beside);
    const first = !whole.has(key);
    whole.set(key, only);
    if (only) return [first ? { ...hit, ...breath } : hit];
    return hit.id === 'cant' && breaths.leads(hit.from, SUBJECTS) ? [hit] : [];
  });
  const ids = new Set(meant.map(({ id }) => id));
  if (ids.size !== 1) return [];
  const [id] = ids;
  const refuses = id === 'cant' || id === 'no';
  return !refuses && breaths.anyLeft(vocabularyOf(part, id ?? '').against, meant) ? [] : meant;
}

/** "locked, tagged" for "Open, locked, tagged, tried": at least half the words of one answer, and only its words. */
function saidByHalf(line: Line, part: OptionPart, breaths: BreathMap): Hit | null {
  const rest = line.tokens.flatMap((token, i) => (line.isUsed(i) || breaths.namesOther(i, part.key) ? [] : [token]));
  if (rest.some(({ kind, text }) => kind === 'number' || text === '?')) return null;
  if (line.tokens.some((_, i) => isShared(line.find(i)))) return null;
  const said = new Set(rest.flatMap(({ kind, text }) => (kind === 'word' && !FILLERS.has(text) ? [text] : [])));
  const fitting = part.options.filter(({ id }) => {
    const { label, own } = vocabularyOf(part, id);
    const meant = [...said].filter((word) => label.has(word)).length;
    // One word of two is a word, and no half of an answer.
    const half = meant * 2 >= label.size && meant >= Math.min(2, label.size);
    return said.size > 0 && half && [...said].every((word) => own.has(word) || HARMLESS.has(word));
  });
  const [option, ...more] = fitting;
  if (!option || more.length > 0 || line.lexicon.choices.filter(({ kind }) => kind !== 'choose').length > 1)
    return null;
  return { part: part.key, id: option.id, from: 0, to: line.tokens.length, letter: false, plain: false };
}

/** A name of two questions: neither is answered by it. */
const isShared = (found: Found | null): boolean =>
  found !== null && new Set(optionsOf(found).map(({ part }) => part)).size > 1;

const SUBJECTS = new Set(['i', 'we', 'it', 'sorry']);
