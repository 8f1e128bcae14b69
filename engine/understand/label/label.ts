/**
 * The print of a run capacitor, typed as it stands there. The larger value is HERM, the smaller FAN.
 *
 * Every number gets a role (section, tolerance, volts, or something else that is printed: hertz, fault current,
 * climatic category, standard). A number that could be a section and has no role is asked about.
 */
import { Decimal } from 'decimal.js';
import { decimalString, figure } from '../../quantity.ts';
import type { CapacitorLabel } from '../../schema.ts';
import { fold, lower } from '../fold.ts';
import { lookalikeIn } from '../lookalike.ts';
import { type PlateKind, readPlate } from '../plate/plate.ts';
import { markOther } from './other.ts';
import { LabelPrint } from './print.ts';
import { readStartLabel } from './start.ts';
import { readTolerance } from './tolerance.ts';

export type LabelReading = { label: CapacitorLabel } | { problem: string };

/**
 * Reads a print. `asked.tolerance` in percent is taken where none is printed; with `asked.start` the print of a start
 * part is asked for, a range. Never throws.
 */
export function readLabel(text: string, asked: { tolerance: string; start?: boolean }): LabelReading {
  if (text.length > LONGEST) return { problem: `That is too long for a print. ${EXAMPLE}` };
  const strange = lookalikeIn(fold(text));
  if (strange !== null)
    return { problem: `“${strange}” is not read as a figure. Type it with plain digits. ${EXAMPLE}` };
  if (DOUBTED.test(lower(fold(text))))
    return { problem: `That sounds unsure. ${EXAMPLE} What can’t be read is left out.` };
  const { kind } = readPlate(text);
  if (kind !== null && OTHER_PARTS.has(kind)) return { problem: `Type the capacitor’s own print. ${EXAMPLE}` };
  const print = new LabelPrint(text);
  if (asked.start) return readStartLabel(print);
  const tolerance = readTolerance(print);
  if (tolerance === 'unclear') return { problem: `The tolerance is not clear. ${EXAMPLE}` };
  markOther(print);
  const tagged = taggedVolts(print);
  const sections = readSections(print);
  if (!Array.isArray(sections)) return { problem: SECTION_PROBLEMS[sections] };
  const volts = tagged.length > 0 ? highest(tagged) : bareVolts(print);
  const chosen = sections.length > 0 ? sections : loneSection(print, tolerance !== null || volts !== null);
  if (chosen.length === 0) return { problem: `No capacitance is found in that. ${EXAMPLE}` };
  const comma = chosen.length === 1 ? ONE_OR_TWO.exec(fold(text))?.[0] : undefined;
  if (comma !== undefined)
    return {
      problem: `“${comma}” may be one section or two. Type ${comma.replace(',', '.')} or ${comma.replace(',', '+')}, as printed.`,
    };
  const left = print.open().find((i) => isUnclear(print, i, volts));
  if (volts === 'unclear' || left !== undefined) {
    const number = left === undefined ? '' : `“${print.text(left)}” `;
    return { problem: `${number || 'The voltage '}is not clear in that. ${EXAMPLE}` };
  }
  return plausible(chosen, volts, tolerance, asked.tolerance);
}

/** Characters: three times what a capacitor has room for. */
const LONGEST = 600;
const EXAMPLE = 'Type it as printed, with units, such as 45+5 µF ±6 % 440 VAC.';
/** "45+5 I think": a limit that is guessed condemns a good part. */
const DOUBTED =
  /\?|(?<!\p{L})(?:think|maybe|guess|guessing|probably|perhaps|possibly|might|unsure|not sure|creo)(?!\p{L})/u;
/** Duals are made as 20 to 80 with 5 or 10 µF, and a single section of 45.5 µF is not. "7,5" is a decimal. */
const ONE_OR_TWO = /(?<![\d.,+/&-])[2-8]\d,(?:5|10)(?![\d.,+/&])/;
/** "1/4 HP" is no pair of sections. */
const OTHER_PARTS: ReadonlySet<PlateKind> = new Set(['motor', 'contactor', 'unit']);
const SECTION_PROBLEMS = {
  start: 'That is the print of a start capacitor: a range. This asks for the run capacitor, such as 45+5 µF 440 V.',
  'which-unit': '“mF” is not clear. Type µF where the part’s print means microfarads, such as 45+5 µF.',
  unclear: `The sections are not clear. ${EXAMPLE}`,
  reading: `That looks like readings. ${EXAMPLE}`,
} as const;

type Sections = Decimal[] | keyof typeof SECTION_PROBLEMS;

function readSections(print: LabelPrint): Sections {
  const named = print.afterWord(HERM_WORDS, FAN_WORDS);
  if (named) {
    const [herm, fan] = named.map((i) => print.claim(i));
    if (!herm || !fan || herm.lt(fan)) return 'unclear';
    return [herm, fan].every(isRound) && !print.says(READING_WORDS) ? [herm, fan] : 'reading';
  }
  const withUnit = print.withCapacitanceUnit();
  if (!Array.isArray(withUnit)) return withUnit;
  if (withUnit.length > 0) return withUnit.length <= 2 ? withUnit : 'unclear';
  const ranges = print.pairs(['-', 'to'], () => true);
  if (ranges.length > 0) return ranges.some(([a, b]) => print.number(a).lt(print.number(b))) ? 'start' : 'unclear';
  const pairs = print.pairs(['+', '/', '&', 'and'], (n) => n.lte(MOST_HERM));
  const [pair, ...more] = pairs;
  if (more.length > 0) return 'unclear';
  return pair ? pair.map((i) => print.claim(i)) : [];
}

/** Beside HERM and FAN a print has 45 and 5, or 7.5; a meter shows 44.6 and 5.03. */
const isRound = (n: Decimal): boolean => n.times(2).isInteger();
const READING_WORDS = new Set(['hf', 'case', 'ol', 'open', 'reads', 'read', 'measured']);

/** One number alone is a section only where the rest of the print stands beside it: "35 5% 370". */
function loneSection(print: LabelPrint, rest: boolean): Decimal[] {
  const open = print.open().filter((i) => couldBeSection(print.number(i)));
  const [only, ...more] = open;
  return rest && only !== undefined && more.length === 0 ? [print.claim(only)] : [];
}

/** Numbers before a V, and the one before those in "440/370 V". */
function taggedVolts(print: LabelPrint): Decimal[] {
  const found: Decimal[] = [];
  for (const i of print.before((word) => VOLT_WORDS.has(word)))
    for (const j of print.chainBack(i, ['/', '-'], isVolts)) found.push(print.claim(j));
  return found;
}

function bareVolts(print: LabelPrint): Decimal | 'unclear' | null {
  const open = print.open().filter((i) => isVolts(print.number(i)));
  const last = open.at(-1);
  if (last === undefined) return null;
  const group = print.chainBack(last, ['/', '-'], isVolts);
  return group.length === open.length ? highest(group.map((i) => print.claim(i))) : 'unclear';
}

const highest = (all: Decimal[]): Decimal => {
  const taken = all.filter(isVolts);
  return Decimal.max(...(taken.length > 0 ? taken : all));
};

/** A number without a role that may be a section, or the voltage where none is known. */
const isUnclear = (print: LabelPrint, i: number, volts: Decimal | 'unclear' | null): boolean =>
  print.isTwoWays(i) || volts === null || couldBeSection(print.number(i));

function plausible(
  sections: Decimal[],
  volts: Decimal | null,
  read: [string, string] | null,
  usual: string,
): LabelReading {
  const [first = new Decimal(0), second] = sections;
  const herm = second ? Decimal.max(first, second) : first;
  const fan = second ? Decimal.min(first, second) : null;
  if (herm.lt(LEAST) || herm.gt(MOST_HERM)) return { problem: beyond(`${herm.toFixed()}\u2009µF`, '1 to 120\u2009µF') };
  if (fan && (fan.lt(LEAST) || fan.gt(MOST_FAN)))
    return { problem: beyond(`${fan.toFixed()}\u2009µF for FAN`, '1 to 60\u2009µF') };
  if (volts && !isVolts(volts)) return { problem: beyond(`${volts.toFixed()}\u2009V`, '200 to 700\u2009V') };
  const [below, above] = read ?? [usual, usual];
  return {
    label: {
      herm: figure(herm, 'µF'),
      fan: fan && figure(fan, 'µF'),
      below: decimalString(below, 4),
      above: decimalString(above, 4),
      printed: read !== null,
      volts: volts && figure(volts, 'V'),
    },
  };
}

const beyond = (what: string, range: string): string =>
  `${what} is not usual on a run capacitor: ${range}. Read the print again. ${EXAMPLE}`;

/** What run capacitors are made in (our setting). */
const LEAST = 1;
const MOST_HERM = 120;
const MOST_FAN = 60;
const isVolts = (n: Decimal): boolean => n.gte(200) && n.lte(700);
const couldBeSection = (n: Decimal): boolean => n.gte(LEAST) && n.lte(MOST_HERM);
const HERM_WORDS = new Set(['herm', 'hermetic', 'comp', 'compressor']);
const FAN_WORDS = new Set(['fan']);
const VOLT_WORDS = new Set(['v', 'vac', 'volt', 'volts', 'vrms', '~']);
