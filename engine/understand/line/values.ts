/** Where a value of a line begins and ends, with the unit typed behind it. */
import { isClimbing, isOver } from '../field.ts';
import { unitOf } from '../unit.ts';
import type { Line } from './state.ts';

/**
 * End of the value at `i`; 0 where none begins. "38.4 uF", "1.2 meg", "ol", "_". With `named` also the words that
 * mean OL only behind a name: "case open", "case still climbing". A field's name is a unit only where no value follows
 * it: in "sr 3.6 g ol" g is a field, in "241 v comp 13" v is volts.
 */
export function valueEnd(line: Line, i: number, named: boolean): number {
  const token = line.tokens[i];
  if (!token || line.isUsed(i) || token.kind === 'mark' || line.fieldsAt(i) || token.text.includes(':')) return 0;
  const numeric = token.kind === 'number';
  if (!numeric && !named && !OVER_ALONE.has(token.text)) return 0;
  let end = 0;
  let words = token.text;
  let unit = numeric ? token.text.replace(/^[<>+-]{0,2} ?[0-9.,]*/, '') : '';
  if (numeric || isOver(words) || isClimbing(words)) end = i + 1;
  for (let j = i + 1; j < i + LONGEST; j++) {
    const next = line.tokens[j];
    if (next?.kind !== 'word' || line.isUsed(j) || isName(line, j, unit)) break;
    words += ` ${next.text}`;
    unit += next.text;
    if (numeric ? isUnit(line, unit) : isOver(words) || isClimbing(words)) end = j + 1;
  }
  return end;
}

const isUnit = (line: Line, spelling: string): boolean =>
  unitOf(spelling) !== null || (line.isWarm && DEGREES.test(spelling));
const DEGREES = /^(?=.)(?:°|degs?|degrees?)?[fc]?$/;

function isName(line: Line, j: number, before: string): boolean {
  const name = line.fieldsAt(j);
  if (!name) return false;
  const next = line.tokens[j + name.length];
  const text = next?.text ?? '';
  const valued =
    line.isMark(j + name.length, ':=') || next?.kind === 'number' || isOver(text) || BEGINS_CLIMBING.has(text);
  return valued || !isUnit(line, before + (line.tokens[j]?.text ?? ''));
}

/** "volts" and "ac" behind the number. */
const LONGEST = 3;
const OVER_ALONE = new Set(['ol', 'o.l', 'o/l']);
const BEGINS_CLIMBING = new Set('climb climbs climbing still keeps rising rises'.split(' '));
