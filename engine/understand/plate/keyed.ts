/**
 * Figures that only a key tells apart: RLA, LRA, FLA, MCA, MOP, resistive amps; the two design pressures. The key stands
 * before its figure on one plate and behind it on another, so every key is given one of the two figures beside it such
 * that most keys have one. Where that can be done in two ways, none of those keys is taken.
 */
import { matches } from '../matches.ts';
import type { PlateRole } from './parts.ts';
import { DOT, OTHER_UNIT, POINT, VOLT } from './pattern.ts';

interface Key {
  readonly role: PlateRole;
  readonly words: string;
  /** Plausible values (our setting). */
  readonly from: number;
  readonly to: number;
}
/** Keys whose figures look alike. */
export interface Family {
  readonly unit: string;
  readonly keys: readonly Key[];
  readonly after: RegExp;
  readonly before: RegExp;
}

const FIGURE = `(\\d{1,4}(?:[.,]\\d{1,3})?|${POINT}\\d{1,3})(?!\\p{N}|[.,]\\d|\\s?[/-]\\s?\\d)`;
const GAP = `(?:[ :=(]|${DOT}){0,4}(?:\\([a-z]{2,5}\\)[ :]?)?\\n?[ :=]{0,3}`;
const NO_LEFT = '(?<![\\p{L}\\p{N}.,/-])';
const BREAKER = '(?:fuse|breaker|ckt\\.? ?br?kr\\.?|circuit breaker|br?kr\\.?)';

export const AMPS: Family = {
  unit: 'A',
  after: new RegExp(`${GAP}${FIGURE}(?!${OTHER_UNIT})(?:\\s?(?:a|amps?|amperes?)(?!\\p{L})|(?!\\p{L}))`, 'uy'),
  before: new RegExp(`${NO_LEFT}${FIGURE} ?(?:a|amps?|amperes?)? ?$`, 'u'),
  keys: [
    { role: 'rla', words: 'rla|r\\.l\\.a\\.?|rated load amp(?:s|eres?)?|rated load current', from: 0.5, to: 300 },
    { role: 'lra', words: 'lra|l\\.r\\.a\\.?|locked rotor(?: amp(?:s|eres?)?)?', from: 2, to: 1500 },
    {
      role: 'mca',
      words:
        'mca|m\\.c\\.a\\.?|(?:min(?:imum)?\\.? )?(?:circuit|ckt|cir)\\.? (?:ampacity|amps?|amp\\.)|min(?:imum)?\\.? ampacity',
      from: 1,
      to: 400,
    },
    {
      role: 'mop',
      words: `mop|mocp|m\\.o\\.p\\.?|max(?:imum)?\\.? over ?current (?:protection|protective device|device|prot\\.?)|max(?:imum)?\\.? over ?current|max(?:imum)?\\.? ${BREAKER}(?:(?: or | ?/ ?)(?:hacr )?${BREAKER})?(?: size)?`,
      from: 5,
      to: 600,
    },
    { role: 'fla', words: 'fla|f\\.l\\.a\\.?|full load amp(?:s|eres?)?|full load current', from: 0.1, to: 200 },
    { role: 'resistive', words: 'res(?:istive)?(?: amps?)?', from: 1, to: 300 },
  ],
};

/** Two or three figures joined by a slash or a dash. */
const CHAINED = '((?<![\\p{L}\\p{N}.,/-])\\d{2,3}(?: ?[/-] ?\\d{2,3}){0,2}(?![\\p{L}\\p{N}]|[.,]\\d| ?[/-] ?\\d))';

export const VOLTS: Family = {
  unit: 'V',
  after: new RegExp(`${GAP}${CHAINED}(?!${OTHER_UNIT})`, 'uy'),
  before: new RegExp(`${CHAINED} $`, 'u'),
  keys: [{ role: 'volts', words: `${VOLT}|voltage`, from: 12, to: 700 }],
};

const PSI = 'psi[ga]?(?![\\p{L}\\p{N}])';
const SIDE = '(?:high|hi|hs|low|lo|ls)(?: side)?';
export const PRESSURES: Family = {
  unit: 'psig',
  // One unit may stand for both: "HI 450 LO 250 PSIG", "PSIG HI 450 LO 250".
  after: new RegExp(
    `${GAP}${FIGURE}(?:\\s?${PSI}|(?=[ ,/]{0,3}${SIDE}[ :=]{0,3}\\d{2,3}\\s?${PSI})|(?<=${PSI}\\)?[ :,]{0,3}(?:${SIDE}[ :=]{0,3}\\d{2,3}[ ,/]{0,3})?${SIDE}[ :=]{0,3}\\d{2,3})(?!\\p{L}))`,
    'uy',
  ),
  before: new RegExp(`${NO_LEFT}${FIGURE}\\s?psi[ga]?\\s?$`, 'u'),
  keys: [
    { role: 'pressure-high', words: 'high(?: side)?|hi(?: side)?|hs', from: 50, to: 900 },
    { role: 'pressure-low', words: 'low(?: side)?|lo(?: side)?|ls', from: 20, to: 600 },
  ],
};

interface Figure {
  readonly from: number;
  readonly to: number;
  /** Where its unit ends. */
  readonly end: number;
}
interface Seen {
  readonly key: Key;
  readonly from: number;
  readonly to: number;
  readonly before: Figure | null;
  readonly after: Figure | null;
}
export interface KeyedFigure {
  readonly role: PlateRole;
  readonly from: number;
  readonly to: number;
  readonly figure: Figure;
}

/** Reads the keyed figures of one family in a folded lower-case text. */
export function keyedOf(plain: string, family: Family): KeyedFigure[] {
  return groupsOf(keysOf(plain, family)).flatMap((group) =>
    assigned(group).flatMap(({ key, from, to, figure }): KeyedFigure[] => {
      const value = Number.parseFloat(plain.slice(figure.from, figure.to).replace(',', '.'));
      if (value < key.from || value > key.to) return [];
      return [{ role: key.role, from: Math.min(from, figure.from), to: Math.max(to, figure.end), figure }];
    }),
  );
}

/** Keys that share a figure with the one before stand in one group. */
function groupsOf(seen: readonly Seen[]): Seen[][] {
  const groups: Seen[][] = [];
  for (const [i, one] of seen.entries()) {
    const shared = one.before !== null && one.before.from === seen[i - 1]?.after?.from;
    if (shared) groups.at(-1)?.push(one);
    else groups.push([one]);
  }
  return groups;
}

/**
 * In a group of n keys in a row the figures between them are shared, so either all keys take the figure behind them,
 * or all the one before, or the row changes sides where a figure lies over.
 */
function assigned(group: readonly Seen[]): (Seen & { figure: Figure })[] {
  const [first, last] = [group[0], group.at(-1)];
  const figures = group.length - 1 + (first?.before ? 1 : 0) + (last?.after ? 1 : 0);
  // As many figures as keys: one way. One more: every key has a choice. One less: one key goes without, and which is open.
  if (figures !== group.length) return [];
  return group.flatMap((one) => {
    const figure = first?.before ? one.before : one.after;
    return figure ? [{ ...one, figure }] : [];
  });
}

const patterns = new Map<Key, RegExp>();
function wordsOf(key: Key): RegExp {
  const known = patterns.get(key) ?? new RegExp(`(?<!\\p{L})(?:${key.words})(?!\\p{L})`, 'gu');
  patterns.set(key, known);
  return known;
}

/** Keys in order, none inside another. */
function keysOf(plain: string, family: Family): Seen[] {
  const taken = new Uint8Array(plain.length);
  const found: Omit<Seen, 'before' | 'after'>[] = [];
  for (const key of family.keys)
    for (const { 0: word, index } of matches(wordsOf(key), plain)) {
      if (taken[index] || taken[index + word.length - 1]) continue;
      taken.fill(1, index, index + word.length);
      found.push({ key, from: index, to: index + word.length });
    }
  found.sort((a, b) => a.from - b.from);
  return found.flatMap((one): Seen[] => {
    const before = beforeOf(plain, one.from, family);
    // "17.9RLA" is a figure and its key, "X2RLA" is neither.
    const glued = /\p{N}$/u.test(plain.slice(Math.max(0, one.from - 2), one.from));
    return glued && before === null ? [] : [{ ...one, before, after: afterOf(plain, one.to, family) }];
  });
}

const LONGEST_BEFORE = 20;

function afterOf(plain: string, at: number, { after }: Family): Figure | null {
  after.lastIndex = at;
  const match = after.exec(plain);
  const figure = match?.[1];
  if (!match || figure === undefined) return null;
  const from = match.index + match[0].indexOf(figure);
  return { from, to: from + figure.length, end: match.index + match[0].length };
}

function beforeOf(plain: string, at: number, { before }: Family): Figure | null {
  const start = Math.max(0, at - LONGEST_BEFORE);
  const match = before.exec(plain.slice(start, at));
  const figure = match?.[1];
  if (!match || figure === undefined) return null;
  const from = start + match.index + match[0].indexOf(figure);
  return { from, to: from + figure.length, end: from + figure.length };
}
