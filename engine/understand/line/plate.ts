/**
 * A whole plate, typed or pasted, where some of its figures are asked: each goes to the field of its name. What is not
 * asked stays unread, and no other field may take it.
 */
import type { FieldPart } from '../field.ts';
import { ROLE_NAMES } from '../plate/parts.ts';
import { readPlate } from '../plate/plate.ts';
import type { Line } from './state.ts';

/** Raw figures by field key. Nothing, unless at least two of the asked ones are on it. */
export function claimPlate(line: Line): Record<string, string> {
  if (Object.keys(ROLE_NAMES).filter((role) => fieldOf(line, role) !== undefined).length < 2) return {};
  const { parts } = readPlate(line.text);
  const fields = parts.map(({ role, values }) => (values.length === 1 ? fieldOf(line, role) : undefined));
  const asked = fields.filter((field) => field !== undefined);
  if (asked.length < 2 || new Set(asked).size < asked.length) return {};
  const given: Record<string, string> = {};
  parts.forEach(({ role, from, to, values }, n) => {
    const field = fields[n];
    const [first, last] = line.tokensWithin(from, to);
    const value = figureIn(line, first, last, values[0] ?? '');
    if (field && value !== null) {
      given[field.key] = value;
      line.use(first, last);
    } else if (role !== 'heading' || line.fieldsAt(first) === null) line.keep(first, last);
  });
  return given;
}

const fieldOf = (line: Line, role: string): FieldPart | undefined =>
  line.lexicon.fields.find(({ key, words }) => key === role || words.includes(role));

/** The figure as typed, with the unit that is glued to it. */
function figureIn(line: Line, from: number, to: number, value: string): string | null {
  for (let i = from; i < to; i++) {
    const token = line.tokens[i];
    if (token?.kind === 'number' && sameFigure(token.text, value)) return line.slice(i, i + 1);
  }
  return null;
}

const sameFigure = (typed: string, value: string): boolean =>
  Number(/^[\d.,]*/.exec(typed)?.[0].replace(',', '.')) === Number(value);
