/**
 * Words with the preferred unit beside the figures: “The goods are at 46 °F (7.8 °C)”. What pages and judgements say is
 * written in °F and psig and stays so, in the record and on the screen; the other unit is computed when it is shown.
 */

import { sayUnit } from '../say-unit.ts';
import type { Unit, Units } from '../schema.ts';
import { type Convertible, inPreferred, isConvertible, preferredFor, prefersOther, writtenUnit } from './other.ts';
import { SENTENCES } from './sentences.ts';

const THIN = '\u2009';
const FIGURE = '[−-]?\\d+(?:\\.\\d+)?';
/** One figure, a range, or a list, with its unit; never one that has another unit beside it already. */
const quantity = (unit: string): string => `${FIGURE}(?:(?:–| to |, )${FIGURE})*[${THIN} ]${unit}(?![\\p{L}\\d]| \\()`;
const PSIG = new RegExp(quantity('psig'), 'gu');
const DEGREES = new RegExp(quantity('°F'), 'gu');

interface Sentence {
  readonly says: RegExp;
  readonly units: readonly ('°F' | 'Δ°F')[];
}
const SAID: readonly Sentence[] = SENTENCES.map((sentence) => {
  const marks = sentence.match(/\{[td]\}/g) ?? [];
  const fixed = sentence.split(/\{[td]\}/).map((words) => words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return {
    says: new RegExp(fixed.join(`(${quantity('°F')})`), 'gu'),
    units: marks.map((mark) => (mark === '{t}' ? '°F' : 'Δ°F')),
  };
});

/** A sentence of a page or a judgement. What isn't known for a temperature or a difference stays as it is. */
export function besideText(text: string, units: Units | undefined): string {
  if (!prefersOther(units) || !/°F|psig/.test(text)) return text;
  const pressed = text.replace(PSIG, (said) => withOther(said, 'psig', units));
  return SAID.reduce(
    (sofar, { says, units: kinds }) =>
      sofar.replace(says, (whole: string, ...groups: unknown[]) => {
        let from = 0;
        return kinds.reduce((now, kind, i) => {
          const said = String(groups[i]);
          const at = now.indexOf(said, from);
          const put = withOther(said, kind, units);
          from = at + put.length;
          return now.slice(0, at) + put + now.slice(at + said.length);
        }, whole);
      }),
    pressed,
  );
}

/** Words of which is known what their degrees are: a cell of a table, what is said of one field. */
export function besideAll(text: string, unit: Unit, units: Units | undefined): string {
  if (!isConvertible(unit) || !prefersOther(units)) return text;
  return text.replace(unit === 'psig' ? PSIG : DEGREES, (said) => withOther(said, unit, units));
}

/** A figure as it is kept, with its unit and the preferred one: 46 °F (7.8 °C). */
export function besideFigure(value: string, unit: Unit, units: Units | undefined): string {
  const said = unit === 'count' ? value : `${value}${THIN}${sayUnit(unit)}`;
  return isConvertible(unit) ? withOther(said, unit, units) : said;
}

function withOther(said: string, unit: Convertible, units: Units | undefined): string {
  const preferred = preferredFor(unit, units);
  if (preferred === null) return said;
  const figures = said.replace(/[\u2009 ](?:°F|psig)$/u, '');
  const other = figures.replace(new RegExp(FIGURE, 'gu'), (figure) =>
    inPreferred(figure.replace('−', '-'), unit, preferred),
  );
  return `${said} (${other}${THIN}${writtenUnit(preferred)})`;
}
