/**
 * Three pairs of a motor whose leads nobody has named: a fan with a run capacitor (the largest is the sum of the others),
 * or a three-phase or inverter motor (all three alike).
 */
import type { Exact } from '../../calc/exact.ts';
import { areEqual, doubtOhms, isAboveDoubt, misfitPercent, spreadPercent, sumRule } from '../../calc/windings.ts';
import type { Finding, Parts } from '../../schema.ts';
import type { Limit } from '../judgement.ts';
import { finding, say } from '../say.ts';
import {
  DOUBT_SOURCE,
  doubtBy,
  isMissing,
  type OhmmeterLimits,
  sayOhms,
  sayPairs,
  type Three,
  threeOf,
  type Whole,
  wholeOf,
} from './look.ts';

export const PLAIN_KEYS = ['first', 'second', 'third'] as const;
const NAMES = ['first pair', 'second pair', 'third pair'] as const;
/** `equal`: how far three pairs may spread and still be alike; null for a motor whose largest pair is a sum. */
export interface PlainLimits {
  readonly meter: OhmmeterLimits;
  readonly equal: Limit | null;
}
export type PlainState = 'missing' | 'all-open' | 'two-open' | 'one-open' | 'near-zero' | 'fits' | 'misfit';
export interface PlainPairs {
  readonly is: PlainState;
  readonly three: Three;
}

export function findPlain(parts: Parts | undefined, limits: PlainLimits): PlainPairs {
  const three = threeOf(parts, PLAIN_KEYS);
  return { three, is: stateOf(three, limits) };
}

const OPEN: readonly PlainState[] = ['fits', 'one-open', 'two-open', 'all-open'];
function stateOf(three: Three, { meter, equal }: PlainLimits): PlainState {
  if (isMissing(three)) return 'missing';
  const whole = wholeOf(three);
  if (!whole) return OPEN[three.filter((r) => r.kind === 'over').length] ?? 'missing';
  const doubt = doubtBy(meter);
  if (whole.some((r) => !isAboveDoubt(doubt, r))) return 'near-zero';
  if (equal) return areEqual(whole, equal.value, doubt) ? 'fits' : 'misfit';
  const [least, middle, largest] = sorted(whole);
  return sumRule(doubt, largest, middle, least).fits ? 'fits' : 'misfit';
}
const sorted = (whole: Whole): Whole => [...whole].sort((a, b) => a.cmp(b)) as [Exact, Exact, Exact];

const WORDS: Readonly<Record<PlainState, string>> = {
  missing: 'missing',
  'all-open': 'all open',
  'two-open': 'one lead open',
  'one-open': 'contradiction',
  'near-zero': 'too near zero',
  fits: 'fits',
  misfit: 'does not fit',
};

export function plainFinding(
  name: string,
  { is, three }: PlainPairs,
  limits: PlainLimits,
  warm: 'hot' | 'cool' | 'unknown',
  twice = false,
): Finding {
  const whole = wholeOf(three);
  const { meter, equal } = limits;
  const doubt = doubtBy(meter);
  const room = whole && !equal ? sumRule(doubt, ...sorted(whole)).doubtOhms : null;
  return finding({
    name,
    reading: sayPairs(NAMES, three),
    limits: equal ? `equal within ${say(equal.value, '%')} or the doubt` : 'the largest pair is the sum of the others',
    doubt: room && `±${say(room, 'Ω', 3)} on the sum`,
    word: WORDS[is],
    text: whole ? readText(is, whole, limits, twice) : openText(is, warm, equal !== null),
    source: equal ? equal.source : `${DOUBT_SOURCE}; ${meter.percent.source}`,
  });
}

function openText(is: PlainState, warm: 'hot' | 'cool' | 'unknown', alike: boolean): string {
  if (is === 'missing') return 'Not all three pairs were read.';
  if (is === 'one-open') return 'One pair reads OL, and the two others lead around it. One of the readings is wrong.';
  if (alike && is === 'two-open')
    return 'Two pairs read OL: one lead or winding is open. Look at plug and leads before the motor.';
  const seen = is === 'all-open' ? 'All three pairs read OL.' : 'Two pairs read OL: what they share is open.';
  return `${seen} ${WARM[warm]}`;
}
const WARM = {
  hot: 'The motor is hot: its thermal protector may be open. Let it cool and read again.',
  cool: 'The motor is cool, so no protector explains it: a winding, or a lead or plug on the way to it.',
  unknown: 'Whether the motor is hot or cool decides what that means.',
} as const;

function readText(is: PlainState, whole: Whole, { meter, equal }: PlainLimits, twice: boolean): string {
  const [least, middle, largest] = sorted(whole);
  const again = `It condemns nothing. ${twice ? 'It is so twice: a senior decides.' : 'Zero the leads and read again.'}`;
  if (is === 'near-zero') {
    const doubt = say(doubtOhms(doubtBy(meter), least), 'Ω', 3);
    return `${sayOhms(least)} is within the meter’s doubt of ${doubt}: a short would read the same. Zero the leads, or take a finer meter.`;
  }
  if (equal) {
    const spread = say(spreadPercent(whole), '%', 3);
    return is === 'fits'
      ? `The three pairs are alike: they spread by ${spread}.`
      : `The three pairs spread by ${spread}, past ${say(equal.value, '%')} and the doubt. ${again}`;
  }
  const sum = `The largest pair reads ${sayOhms(largest)}, the two others together ${sayOhms(least.plus(middle))}`;
  return is === 'fits'
    ? `${sum}: the sum fits.`
    : `${sum}: ${say(misfitPercent(largest, middle, least), '%', 1, 1)} off. ${again}`;
}
