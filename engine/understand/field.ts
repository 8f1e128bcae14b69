/**
 * One reading, as typed into a field. Understood exactly or asked back; the words of a problem say what can be typed.
 *
 * A bare number has the field's unit, unless the field wants the unit typed. Rounded half-even to the unit's digits
 * before it is compared, because that is what is stored.
 */
import { Decimal } from 'decimal.js';
import { DIGITS, decimalString } from '../quantity.ts';
import { sayUnit } from '../say-unit.ts';
import type { Part, Unit, Value } from '../schema.ts';
import { fold, lower } from './fold.ts';
import { numberWord, scanNumber } from './number.ts';
import { factorOf, measuredBy, type UnitMeaning, unitOf } from './unit.ts';

export type FieldPart = Extract<Part, { kind: 'field' }>;
export type FieldProblem = 'not-a-number' | 'out-of-range' | 'which-unit' | 'which-quantity';
export type FieldReading = { value: Value } | { problem: FieldProblem; text: string };

/** Reads `text` for `part`. Never throws. `typed` of the value is the text, trimmed. */
export function readField(text: string, part: FieldPart): FieldReading {
  const typed = text.trim();
  if (typed.length > LONGEST) return notANumber('That is too long for one reading.', part);
  const plain = fold(typed).trim();
  if (plain === '' || /^_+$/.test(plain)) return untaken(part);
  if (isOver(plain) || (measuredBy(part.unit) === 'Ω' && isClimbing(plain))) return over(typed, part);
  const above = plain.startsWith('>');
  const amount = readAmount(above ? plain.slice(1).trim() : plain, part);
  if ('problem' in amount) return amount;
  return above ? overAbove(amount, typed, part) : inRange(amount, typed, part);
}

/** Whether a folded text says that the meter is over range: OL, O.L, 0L, open. Its unit may follow. */
export function isOver(plain: string): boolean {
  if (plain.length > LONGEST) return false;
  const small = lower(plain).replace(/[ ./-]/g, '');
  if (OVER_WORDS.has(small)) return true;
  return /^[o0]l/.test(small) && unitOf(small.slice(2)) !== null;
}

/** Whether a folded text says that an ohm reading keeps rising. */
export const isClimbing = (plain: string): boolean => CLIMBING.has(lower(plain));

const LONGEST = 60;
const THIN = '\u2009';
const OVER_WORDS = new Set('ol 0l open over overload overrange overlimit inf infinite infinity ∞'.split(' '));
const CLIMBING = new Set(
  ['', 'still ', 'keeps '].flatMap((before) =>
    ['climb', 'climbs', 'climbing', 'rising', 'rises', 'going up', 'goes up', 'counting up'].flatMap((verb) =>
      ['', ' to ol', ' to open', ' until ol', ' then ol'].map((after) => before + verb + after),
    ),
  ),
);
/**
 * Where a bare number looks like volts: from the lowest line voltage (208) to the highest print on a part. A capacitor
 * or a current is seldom so large, and a voltage is what stands beside it on the label and on the meter (our setting).
 */
const LIKE_VOLTS: ReadonlySet<Unit> = new Set<Unit>(['µF', 'A']);
const [LOWEST_VOLTS, HIGHEST_VOLTS] = [208, 700];
/**
 * mF is taken as thousandths of a farad only below 1 and with four decimals ("0.0384 mF"): no meter shows µF that fine.
 * "38.4 mF", "0.3 mF" and "0.02 mF" are asked, because a meter that prints mF for µF reads an open section so.
 */
const isFinerThanMicro = (number: string): boolean => /^0\.\d{4,}$/.test(number);
/** A meter that shows ">" stands at the end of its range. Below this no range of a meter ends, so it is a comparison. */
const LOWEST_RANGE_END = '20000000';
/** Wider than any typed number, so that conversion by powers of ten is exact. */
const Exact = Decimal.clone({ precision: 200 });

interface Amount {
  /** In the field's unit, rounded. */
  value: string;
  bare: boolean;
}

function readAmount(plain: string, part: FieldPart): Amount | Exclude<FieldReading, { value: Value }> {
  const word = part.unit === 'count' ? numberWord(lower(plain)) : null;
  if (word !== null) return { value: word, bare: true };
  const number = scanNumber(plain);
  if (number === null) return notANumber(`“${plain}” is not read as a number.`, part);
  if (!number.ok)
    return notANumber(`“${plain.slice(0, number.end)}” can be read in two ways. ${MARKS[number.why]}`, part);
  const spelling = plain
    .slice(number.end)
    .replace(/[ .,;]+$/, '')
    .trim();
  if (/[0-9]/.test(spelling)) return notANumber(`“${plain}” is not read as one number.`, part);
  if (spelling === '' || namesCount(spelling, part)) return bareAmount(number.value, part);
  const unit = temperatureOf(spelling, part) ?? unitOf(spelling);
  if (unit === null || unit.doubt === 'ask') return whichUnit(`The unit “${spelling}” is not clear here.`, part);
  if (unit.of !== measuredBy(part.unit))
    return {
      problem: 'which-quantity',
      text: `“${plain}” is in ${unit.of}. This asks for ${sayUnit(part.unit)}. ${typeThis(part)}`,
    };
  return convert(number.value, unit, part);
}

function bareAmount(number: string, part: FieldPart): Amount | Exclude<FieldReading, { value: Value }> {
  if (part.unitNeeded && !new Exact(number).isZero()) return whichUnit(`“${number}” has no unit.`, part);
  if (part.unit === 'count' && !new Exact(number).isInteger())
    return notANumber(`“${number}” is not a whole number.`, part);
  return { value: rounded(new Exact(number), part.unit), bare: true };
}

function convert(number: string, unit: UnitMeaning, part: FieldPart): Amount | Exclude<FieldReading, { value: Value }> {
  const base = new Exact(number).times(unit.factor).plus(unit.plus ?? 0);
  if (unit.doubt === 'doubtful' && !base.isZero() && !isFinerThanMicro(number))
    return whichUnit(`“mF” can mean thousandths of a farad, and some meters print it for µF.`, part);
  return { value: rounded(base.div(factorOf(part.unit)), part.unit), bare: false };
}

function inRange({ value, bare }: Amount, typed: string, part: FieldPart): FieldReading {
  const size = new Exact(value);
  if (bare && LIKE_VOLTS.has(part.unit) && size.gte(LOWEST_VOLTS) && size.lte(HIGHEST_VOLTS))
    return {
      problem: 'which-quantity',
      text: `“${typed}” looks like volts. Is that the voltage? If it is the reading, type it with its unit: ${value}${THIN}${sayUnit(part.unit)}.`,
    };
  if (size.gte(part.from) && size.lte(part.to)) return { value: { kind: 'figure', value, unit: part.unit, typed } };
  return {
    problem: 'out-of-range',
    text: `That reads as ${value}${THIN}${sayUnit(part.unit)}. Here ${part.from} to ${part.to}${THIN}${sayUnit(part.unit)} is taken. Read the meter again.`,
  };
}

function overAbove({ value }: Amount, typed: string, part: FieldPart): FieldReading {
  const ohms = measuredBy(part.unit) === 'Ω' && new Exact(value).times(factorOf(part.unit)).gte(LOWEST_RANGE_END);
  return ohms ? over(typed, part) : notANumber(`“${typed}” is a comparison, not a reading.`, part);
}

const over = (typed: string, part: FieldPart): FieldReading =>
  part.over
    ? { value: { kind: 'over', typed } }
    : {
        problem: 'not-a-number',
        text: `“${typed}” is no figure. This reading must be a number, in ${sayUnit(part.unit)}.`,
      };

const untaken = (part: FieldPart): FieldReading =>
  part.optional ? { value: { kind: 'untaken' } } : notANumber('This reading cannot be left out.', part);

/** Where a temperature or a difference is asked, the letter alone says which, and a difference has no zero of its own. */
function temperatureOf(spelling: string, part: FieldPart): UnitMeaning | null {
  const letter = lower(spelling).replace(/^(°|deg(rees)?)? ?/, '');
  if ((part.unit !== '°F' && part.unit !== 'Δ°F') || !/^[fck]?$/.test(letter)) return null;
  if (letter === 'f' || letter === '') return { of: part.unit, factor: '1' };
  if (part.unit === 'Δ°F') return { of: part.unit, factor: '1.8' };
  return letter === 'c' ? { of: part.unit, factor: '1.8', plus: '32' } : null;
}

const namesCount = (spelling: string, part: FieldPart): boolean =>
  part.unit === 'count' && [part.key, ...part.words].some((word) => lower(word) === lower(spelling));

const rounded = (value: Decimal, unit: Unit): string => decimalString(value, DIGITS[unit]);

const notANumber = (why: string, part: FieldPart) => ({
  problem: 'not-a-number' as const,
  text: `${why} ${typeThis(part)}`,
});

const whichUnit = (why: string, part: FieldPart) => ({
  problem: 'which-unit' as const,
  text: `${why} ${UNITS_TO_TYPE[part.unit] ?? typeThis(part)}`,
});

const typeThis = (part: FieldPart): string =>
  `Type the reading in ${part.unit === 'count' ? 'whole numbers' : sayUnit(part.unit)}${part.over ? ', or OL' : ''}${part.optional ? ', or _ to leave it out' : ''}.`;

const UNITS_TO_TYPE: Partial<Record<Unit, string>> = {
  Ω: 'Type it with Ω, kΩ or MΩ.',
  MΩ: 'Type it with Ω, kΩ or MΩ.',
  µF: 'Type it with µF, nF or pF.',
};
const MARKS = {
  'two-marks': 'Use one decimal point.',
  thousands: 'Use a point for decimals, and nothing between thousands.',
};
