/** "MFD 45/5 VAC 440 HZ 60": a print whose units stand before their figures, turned round. */

const UNIT = '(?<![\\p{L}\\p{N}])(mfd|uf|[µμ]f|vac|volts?|v|hz)(?!\\p{L})';
const FIGURES = '[.,]?\\d[\\d.,]*(?: ?(?:[+/-]|to) ?\\d[\\d.,]*)*';
/** A dot before a digit is the figure's. */
const GAP = '(?:[ :=]|\\.(?!\\d)){0,3}\\n?';
const UNITS = new RegExp(UNIT, 'giu');
const PAIRS = new RegExp(`${UNIT}${GAP}(${FIGURES})`, 'giu');
const BEHIND = new RegExp(`^${GAP}${FIGURES}`, 'u');

/** The text, turned round where each of its units has a figure behind it and the first of them none before it. */
export function unitsBehind(text: string): string {
  const units = [...text.matchAll(UNITS)];
  const [first] = units;
  if (!first || /\d/.test(text.slice(0, first.index))) return text;
  const all = units.every(({ 0: unit, index }) => BEHIND.test(text.slice(index + unit.length, index + LONGEST)));
  return all ? text.replace(PAIRS, '$2 $1') : text;
}
const LONGEST = 60;
