/** A start capacitor's reading against its printed range. */
import { plainWord, shareInside, type Word, windowMicrofarads, wordOf } from '../../calc/doubt.ts';
import { Exact, type Range, within } from '../../calc/exact.ts';
import { limitsMicrofarads } from '../../calc/tolerance.ts';
import type { CapacitorLabel, Parts } from '../../schema.ts';
import type { Force, Limit } from '../judgement.ts';
import { type Reading, readingOf } from '../read.ts';
import { say, sayRange, sayShare } from '../say.ts';
import { sayMeter } from '../section.ts';

/** The range printed on the part; a print with a tolerance instead gives its limits. µF. */
export const startRange = (label: CapacitorLabel): Range =>
  label.range
    ? { low: new Exact(label.range.low), high: new Exact(label.range.high) }
    : limitsMicrofarads(label.herm, label.below, label.above);

/** A negative capacitance is no reading. */
export function startReading(parts: Parts | undefined): Reading {
  const reading = readingOf(parts, 'start', 'µF');
  return reading.kind === 'figure' && reading.value.lt(0) ? { kind: 'none' } : reading;
}

export interface Judged {
  readonly value: Exact;
  readonly window: Range;
  readonly word: Word;
  readonly side: 'below' | 'inside' | 'above';
  /** Next to nothing, or absurdly much: the leads come before any word. */
  readonly odd: 'nothing' | 'absurd' | null;
}
/** More than this many times the upper end is absurd for the part, whatever is wrong with it (our setting). */
const ABSURD_TIMES = 3;

export function judgeStart(reading: Reading, range: Range, openShare: Limit, force: Force): Judged | null {
  if (reading.kind !== 'figure') return null;
  const { value } = reading;
  const window = windowMicrofarads(force.meter, value);
  const word = force.settings.rule === 'plain' ? plainWord(value, range) : wordOf(value, window, range);
  const side = within(value, range) ? 'inside' : value.lt(range.low) ? 'below' : 'above';
  const nothing = value.lt(range.low.times(openShare.value).div(100));
  const odd = nothing ? 'nothing' : value.gt(range.high.times(ABSURD_TIMES)) ? 'absurd' : null;
  return { value, window, word, side, odd };
}

/** What the reading is against the print, in words. */
export function sayStart({ value, window, word, side }: Judged, range: Range, force: Force): string {
  const print = `The start capacitor reads ${say(value, 'µF')}. The print allows ${sayRange(range, 'µF', 4, 0)}`;
  if (force.settings.rule === 'plain') return `${print}, so it is ${word === 'pass' ? 'in' : `out, ${side}`}.`;
  const share = sayShare(shareInside(window, range));
  return {
    pass: `${print}, and all of the doubt lies inside.`,
    'conditional pass': `${print}, and the doubt crosses a limit: P(in range) ${share}.`,
    'conditional fail': `${print}: it lies ${side}, and the doubt reaches in: P(in range) ${share}.`,
    fail: `${print}, and all of the doubt lies ${side} it.`,
  }[word];
}

export const startRule = ({ settings, meter }: Force): string =>
  settings.rule === 'plain'
    ? 'the range printed on the part; plain two-way rule of the shop'
    : `the range printed on the part; words of ILAC-G8, non-binary rule, doubt ${sayMeter(meter)} taken as rectangular`;
