/** The tolerance of a print: ±6 %, 6%, +/-5%, -5/+10%. */
import type { LabelPrint } from './print.ts';

/** Percent below and above; null where none is printed; `unclear` where there are two, one side only, or too much. */
export function readTolerance(print: LabelPrint): [string, string] | 'unclear' | null {
  const found: [string, string][] = [];
  for (const i of print.open()) {
    if (!print.isOpen(i)) continue;
    const two = twoSided(print, i);
    if (two === 'unclear') return two;
    if (two) found.push(two);
    else if (isPercent(print, i) || print.text(i - 1) === '±') {
      if (isSigned(print, i) || print.text(i - 1) === '+' || print.isTwoWays(i)) return 'unclear';
      const each = print.claim(i).toFixed();
      found.push([each, each]);
    }
  }
  const [first, ...more] = found;
  if (!first) return null;
  const same = more.every(([below, above]) => below === first[0] && above === first[1]);
  return same && first.every((side) => Number(side) <= MOST) && first.some((side) => Number(side) > 0)
    ? first
    : 'unclear';
}

/** No run capacitor is printed with a wider tolerance (our setting). */
const MOST = 30;

const isPercent = (print: LabelPrint, i: number): boolean => ['%', 'percent', 'pct'].includes(print.text(i + 1));
const isSigned = (print: LabelPrint, i: number): boolean => ['+', '-'].includes(print.text(i - 1)) && print.isTight(i);

/** "-5/+10%", "-5%/+10%", "+10% -5%". */
function twoSided(print: LabelPrint, i: number): [string, string] | 'unclear' | null {
  if (!isSigned(print, i)) return null;
  let j = i + 1;
  if (isPercent(print, i)) j++;
  const parted = j > i + 1 || print.text(j) === '/';
  if (['/', ','].includes(print.text(j))) j++;
  const sign = print.text(i - 1);
  const opposite = sign === '-' ? '+' : '-';
  const k = j + 1;
  if (print.text(j) !== opposite || !print.isOpen(k) || !isSigned(print, k) || !isPercent(print, k)) return null;
  // "45+5-6%" may be two sections and half a tolerance.
  if (!parted || (print.isNumber(i - 2) && print.isTight(i - 1))) return 'unclear';
  if (print.isTwoWays(i) || print.isTwoWays(k)) return 'unclear';
  const [first, second] = [print.claim(i).toFixed(), print.claim(k).toFixed()];
  return sign === '-' ? [first, second] : [second, first];
}
