/**
 * A plate or a print, typed or pasted with its line breaks: run and start capacitors, motors, contactors, data plates
 * of units. Every piece is said with what it was taken for; what isn't understood comes back in the words typed, and
 * no figure is guessed.
 */

import { fold, lower } from '../fold.ts';
import { lookalikeIn } from '../lookalike.ts';
import { matches } from '../matches.ts';
import { scanNumber } from '../number.ts';
import { AMPS, keyedOf, PRESSURES, VOLTS } from './keyed.ts';
import { type PlatePart, type PlateRole, ROLE_NAMES } from './parts.ts';
import { type PlateRule, patternOf } from './pattern.ts';
import { HEADINGS, RULES, UNKEYED } from './rules.ts';

export type PlateKind = 'run capacitor' | 'start capacitor' | 'motor' | 'contactor' | 'unit';
export interface PlateReading {
  /** null where its figures don't tell. */
  readonly kind: PlateKind | null;
  /** In the order of the text. */
  readonly parts: readonly PlatePart[];
  /** What wasn't understood, as typed. */
  readonly unread: readonly string[];
}

/** Reads a plate. A text that is too long for one is wholly unread. Never throws. */
export function readPlate(text: string): PlateReading {
  const trimmed = text.trim();
  if (trimmed === '') return { kind: null, parts: [], unread: [] };
  if (text.length > LONGEST) return { kind: null, parts: [], unread: [trimmed] };
  const plate = new Plate(text);
  for (const rule of RULES) plate.apply(rule);
  plate.applyKeyed();
  const kind = kindOf(new Set(plate.parts.map(({ role }) => role)));
  plate.applyHeadings();
  return { kind, parts: plate.parts.sort((a, b) => a.from - b.from), unread: plate.unread() };
}

/** What was read, in a sentence for a person. */
export function sayPlate({ kind, parts, unread }: PlateReading): string {
  const taken = parts.flatMap(({ role, text }) =>
    role === 'heading' ? [] : [`${text.replace(/\s+/g, ' ')} (${ROLE_NAMES[role]})`],
  );
  return [
    ...(kind === null ? [] : [`That reads as the print of a ${kind}.`]),
    ...(taken.length === 0 ? [] : [`Taken: ${taken.join('; ')}.`]),
    ...(unread.length === 0 ? [] : [`Not understood: ${unread.map((piece) => `“${piece}”`).join(', ')}.`]),
  ].join(' ');
}

/** Characters: a data plate with all its lines. */
const LONGEST = 2000;

class Plate {
  readonly parts: PlatePart[] = [];
  readonly #text: string;
  /** What is still unread; a piece that is taken becomes bars of the same length. */
  #left: string;

  constructor(text: string) {
    this.#text = text;
    const plain = fold(text).replaceAll(TAKEN, ' ');
    // A line with a figure that can't be told is left unread: what stands beside it would read as another plate.
    this.#left = lower(
      plain.replace(/[^\n;]+/g, (line) => (lookalikeIn(line) === null ? line : UNTOLD.repeat(line.length))),
    );
  }

  apply(rule: PlateRule): void {
    for (const match of matches(patternOf(rule), this.#left)) {
      const groups = match.slice(1).filter((group) => group !== undefined);
      const values = groups.map((group) => (rule.words ? this.#typed(group, match) : figure(group)));
      const known = values.filter((value) => value !== null);
      const fits = rule.words || known.every((value) => isWithin(value, rule));
      if (fits && known.length === values.length)
        this.#take(rule.role, rule.unit, known, match.index, match.index + match[0].length);
    }
  }

  /** Twice: what the amps take may leave the volts one way to be read. */
  applyKeyed(): void {
    for (const family of [VOLTS, AMPS, PRESSURES, VOLTS, AMPS])
      for (const { role, from, to, figure: at } of keyedOf(this.#left, family)) {
        const values = this.#left
          .slice(at.from, at.to)
          .split(/ ?[/-] ?/)
          .map(figure);
        const known = values.filter((value) => value !== null);
        if (known.length === values.length) this.#take(role, family.unit, known, from, to);
      }
    for (const rule of UNKEYED) this.apply(rule);
  }

  #typed(group: string, match: RegExpExecArray): string {
    const from = match.index + match[0].indexOf(group);
    return fold(this.#text.slice(from, from + group.length));
  }

  applyHeadings(): void {
    for (const { 0: word, index } of matches(HEADINGS, this.#left))
      this.#take('heading', '', [], index, index + word.length);
  }

  #take(role: PlateRole, unit: string, values: readonly string[], from: number, to: number): void {
    const piece = this.#text.slice(from, to);
    const [lead, tail] = [piece.length - piece.trimStart().length, piece.length - piece.trimEnd().length];
    this.parts.push({ role, text: piece.trim(), values, unit, from: from + lead, to: to - tail });
    this.#left = this.#left.slice(0, from) + TAKEN.repeat(to - from) + this.#left.slice(to);
  }

  unread(): string[] {
    const pieces: string[] = [];
    for (const { 0: piece, index } of matches(UNREAD, this.#left))
      if (/[\p{L}\p{N}\p{Extended_Pictographic}\ufffe]/u.test(piece)) {
        const typed = this.#text.slice(index, index + piece.length);
        pieces.push(typed.replace(TRIM, '').trim() || typed.trim());
      }
    return pieces;
  }
}

/** What ends an unread run without saying anything; a point or minus before a figure is the figure's. */
const TRIM = /^(?:[\s/:()=]|[.-](?!\d))+|[\s/:.()=]+$/g;
/** A run that nothing has taken; a comma parts it but for a decimal one. */
const UNREAD = /(?:[^\uffff\n,;|]|(?<=\d),(?=\d))+/g;
const UNTOLD = '\ufffe';
/** No character of any text; one that is typed all the same is a space. */
const TAKEN = '\uffff';

/** A plain decimal, or null where the number can be read in two ways. */
function figure(typed: string): string | null {
  const number = scanNumber(typed.replace(/^[.,]/, '0.'));
  return number?.ok ? number.value : null;
}

const isWithin = (value: string, { from, to }: PlateRule): boolean => Number(value) >= from && Number(value) <= to;

function kindOf(roles: ReadonlySet<PlateRole>): PlateKind | null {
  const has = (...some: PlateRole[]): boolean => some.some((role) => roles.has(role));
  if (has('mca', 'mop', 'refrigerant', 'charge', 'rla')) return 'unit';
  if (has('horsepower', 'speed')) return 'motor';
  if (has('coil-volts', 'resistive', 'poles')) return 'contactor';
  if (has('range')) return 'start capacitor';
  return has('sections') ? 'run capacitor' : null;
}
