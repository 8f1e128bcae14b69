/** The print of a capacitor inside a longer line: "cover off clean, 1 cap, 45+5 6% 440". */
import { isDigit } from '../fold.ts';
import { OTHER_UNITS } from '../label/token.ts';
import { unitOf } from '../unit.ts';
import type { Line } from './state.ts';

/** The raw print under the label part's key. Begins at a pair of sections or a capacitance, runs while it reads as a print. */
export function claimLabel(line: Line): Record<string, string> {
  const part = line.parts.find(({ kind }) => kind === 'label');
  if (!part) return {};
  const from = line.tokens.findIndex((_, i) => beginsPrint(line, i));
  if (from < 0) return {};
  let to = from + 1;
  while (to < line.tokens.length && continuesPrint(line, to)) to++;
  while (to > from + 1 && line.isMark(to - 1, ',;.\n-(+&')) to--;
  line.use(from, to);
  return { [part.key]: line.slice(from, to) };
}

function beginsPrint(line: Line, i: number): boolean {
  const token = line.tokens[i];
  if (token?.kind !== 'number' || !isDigit(token.text.charAt(0))) return false;
  const digits = lengthOfDigits(token.text);
  const rest = token.text.slice(digits);
  if (unitOf(unitHead(rest))?.of === 'µF' || rest.startsWith('±')) return true;
  if (rest.startsWith('+') && isDigit(rest.charAt(1))) return true;
  if (rest !== '' && !(rest.startsWith('-') && isDigit(rest.charAt(1)))) return false;
  if (isCapacitance(line, i + 1)) return true;
  if (rest !== '') return false;
  if (line.isMark(i + 1, '±') || (line.isMark(i + 1, '+') && line.isMark(i + 2, '/'))) return true;
  return (
    isPair(line, i) || (line.isMark(i + 1, '+') && line.tokens[i + 2]?.kind === 'number') || isPercent(line, i + 1)
  );
}

/** "40/5" without a space is a print; "121 / 0.2" is a line of readings, and so is any pair where readings are asked. */
function isPair(line: Line, i: number): boolean {
  const [first, , second] = [line.tokens[i], null, line.tokens[i + 2]];
  if (!line.isMark(i + 1, '/') || second?.kind !== 'number' || second.start !== (first?.end ?? 0) + 1) return false;
  const onlyCounts = line.lexicon.fields.every(({ unit }) => unit === 'count');
  return (
    onlyCounts ||
    isVolts(line.tokens[i + 3]?.text ?? '') ||
    isCapacitance(line, i + 3) ||
    unitOf(unitHead(second.text.slice(lengthOfDigits(second.text))))?.of === 'µF'
  );
}

function continuesPrint(line: Line, i: number): boolean {
  const token = line.tokens[i];
  if (!token || token.text === ';') return false;
  if (token.text === '\n') return isLineOfPrint(line, i + 1);
  if (token.kind === 'mark') return token.text !== '?';
  if (line.fieldsAt(i)) return false;
  if (token.kind === 'word') return isPrintWord(token.text) && (isUnitWord(token.text) || !line.find(i));
  return numberContinues(line, i, token.text);
}

/** A pasted print goes on behind a line's end with its tolerance, its volts, its hertz or its protection. */
function isLineOfPrint(line: Line, i: number): boolean {
  if (line.isMark(i, '±')) return true;
  if (line.isMark(i, '+')) return line.isMark(i + 1, '/') || line.tokens[i + 1]?.text.startsWith('-') === true;
  const token = line.tokens[i];
  if (token?.kind !== 'number') return token?.kind === 'word' && continuesPrint(line, i);
  // A climatic category: "40/85/21".
  if (line.isMark(i + 1, '/') && line.isMark(i + 3, '/')) return line.tokens[i + 4]?.kind === 'number';
  // "440 VAC", "6%", "370/440V", "50/60 Hz".
  const last = line.isMark(i + 1, '/') ? i + 2 : i;
  const glued = (line.tokens[last]?.text ?? '').replace(/^[+-]?[\d.,]+/, '');
  const unit = glued === '' ? (line.tokens[last + 1]?.text ?? '') : glued;
  return unit !== '' && isUnitWord(unitHead(unit) || unit);
}

/** A number goes on with the print by its own unit, by its place beside a mark, or as the voltage. Before a name only as the voltage. */
function numberContinues(line: Line, i: number, text: string): boolean {
  if (text === '_') return false;
  if (line.fieldsAt(i + 1)) return isVolts(text);
  const start = '+-'.includes(text.charAt(0)) ? 1 : 0;
  const digits = start + lengthOfDigits(text.slice(start));
  const rest = text.slice(digits);
  const next = line.tokens[i + 1];
  const unit = rest === '' ? (next?.kind === 'word' ? next.text : '') : rest;
  if (rest !== '' && '%+-±'.includes(rest.charAt(0))) return true;
  if (unit === '%' || OTHER_UNITS.has(unit) || isUnitWord(unitHead(unit))) return true;
  if (line.isMark(i - 1, '/±+~') || line.isMark(i + 1, '/%~')) return true;
  return isVolts(text);
}
/** A bare number that can only be the part's volts: "45+5 440 herm 45.3". */
const isVolts = (text: string): boolean => {
  const volts = Number(/^(\d{3})(?:v|vac|volts?)?$/.exec(text)?.[1] ?? '0');
  return volts >= 200 && volts <= 700;
};

const isUnitWord = (word: string): boolean => {
  const of = unitOf(word)?.of;
  return of === 'µF' || of === 'V' || of === '%' || OTHER_UNITS.has(word) || word === 'ac';
};
const isCapacitance = (line: Line, i: number): boolean =>
  line.tokens[i]?.kind === 'word' && unitOf(line.tokens[i]?.text ?? '')?.of === 'µF';
const isPercent = (line: Line, i: number): boolean =>
  line.tokens[i]?.text === '%' || (line.tokens[i]?.text ?? '').endsWith('%');

/** Letters at the head of "uf±6%440vac". */
const unitHead = (text: string): string => /^[a-zμω ]{0,16}/.exec(text)?.[0] ?? '';
const lengthOfDigits = (text: string): number => {
  let at = 0;
  while (isDigit(text.charAt(at)) || text.charAt(at) === '.' || text.charAt(at) === ',') at++;
  return at;
};

/** Words that stand on a capacitor. */
const PRINT_WORDS = new Set(
  `protected afc iec en ul eia csa class hz ac vac v mfd run motor capacitor capacitors herm fan c dual round oval sh and to
  no pcb pcbs made in`.split(/\s+/),
);
const isPrintWord = (word: string): boolean =>
  PRINT_WORDS.has(word) || isUnitWord(word) || /^[ps][0-3]$/.test(word) || /^cbb\d/.test(word);
