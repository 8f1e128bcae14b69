/** The print of a start capacitor: a range of microfarads, and volts. */
import { Decimal } from 'decimal.js';
import { decimalString, figure } from '../../quantity.ts';
import { unitOf } from '../unit.ts';
import type { LabelReading } from './label.ts';
import { markOther } from './other.ts';
import type { LabelPrint } from './print.ts';

/** Judged by its printed range, so below and above are the way from its upper end. Never throws. */
export function readStartLabel(print: LabelPrint): LabelReading {
  markOther(print);
  const ranges = print.pairs(['-', 'to', '/'], (n) => n.gte(LEAST) && n.lte(MOST));
  const rising = ranges.filter(([a, b]) => print.number(a).lt(print.number(b)) && !isVoltsUnit(print.text(b + 1)));
  const [range, ...more] = rising;
  if (!range || more.length > 0) return { problem: `No range of microfarads is found in that. ${EXAMPLE}` };
  const [a, b] = range;
  const unit = unitOf(print.text(b + 1));
  if (unit?.of === 'µF' && (unit.doubt || !new Decimal(unit.factor).eq(1)))
    return { problem: `Type the range in µF. ${EXAMPLE}` };
  const [low, high] = [print.claim(a), print.claim(b)];
  const left = print.open();
  const volts = left.filter((i) => print.number(i).gte(LEAST_VOLTS) && print.number(i).lte(MOST_VOLTS));
  const unclear = left.find((i) => !volts.includes(i) && !isHarmless(print, i));
  // "110-125 VAC": the higher one is what it stands.
  const [lowest, at = lowest, ...others] = volts;
  const joined = at === lowest || (at === (lowest ?? 0) + 2 && ['-', '/', 'to'].includes(print.text(at - 1)));
  if (unclear !== undefined || others.length > 0 || !joined)
    return { problem: `“${print.text(unclear ?? lowest ?? 0)}” is not clear in that. ${EXAMPLE}` };
  const span = high.minus(low).times(100).div(high);
  return {
    label: {
      herm: figure(high, 'µF'),
      fan: null,
      below: decimalString(span, 4),
      above: '0',
      printed: true,
      volts: at === undefined ? null : figure(print.claim(at), 'V'),
      range: { low: figure(low, 'µF'), high: figure(high, 'µF') },
    },
  };
}

/** A part number or a date beside the range decides nothing. */
const isHarmless = (print: LabelPrint, i: number): boolean => !print.isTwoWays(i) && print.number(i).gt(MOST);
const isVoltsUnit = (word: string): boolean => ['v', 'vac', 'volt', 'volts'].includes(word);
const EXAMPLE = 'Type it as printed, such as 161-193 MFD 250 VAC.';
/** What start capacitors are made in (our setting): µF and V. */
const [LEAST, MOST] = [10, 1500];
const [LEAST_VOLTS, MOST_VOLTS] = [110, 450];
