/** C–R, C–S and S–R of one try: what they say together, and the words for it. */
import type { Exact } from '../../calc/exact.ts';
import {
  doubtOhms,
  isAboveDoubt,
  misfitPercent,
  openPattern,
  spreadPercent,
  sumRule,
  type Terminals,
  terminalsFromOhms,
} from '../../calc/windings.ts';
import type { Windings } from '../../picture/data.ts';
import type { Finding, Parts } from '../../schema.ts';
import { pictured } from '../figures.ts';
import type { Limit } from '../judgement.ts';
import type { Reading } from '../read.ts';
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

const KEYS = ['cr', 'cs', 'sr'] as const;
const NAMES = ['C–R', 'C–S', 'S–R'] as const;
export type PairsLimits = OhmmeterLimits & Readonly<Record<'equal', Limit>>;
export type PairsState =
  | 'missing'
  | 'common'
  | 'start'
  | 'run'
  | 'all'
  | 'impossible'
  | 'near-zero'
  | 'equal'
  | 'fits'
  | 'other-terminals'
  | 'misfit';
export interface Pairs {
  readonly is: PairsState;
  readonly three: Three;
}

export function findPairs(parts: Parts | undefined, limits: PairsLimits): Pairs {
  const three = threeOf(parts, KEYS);
  return { three, is: stateOf(three, limits) };
}

function stateOf(three: Three, limits: PairsLimits): PairsState {
  if (isMissing(three)) return 'missing';
  const whole = wholeOf(three);
  if (!whole) {
    const [cr, cs, sr] = [three[0].kind === 'over', three[1].kind === 'over', three[2].kind === 'over'];
    const pattern = openPattern({ cr, cs, sr });
    return pattern === 'none' ? 'impossible' : pattern;
  }
  const doubt = doubtBy(limits);
  if (whole.some((r) => !isAboveDoubt(doubt, r))) return 'near-zero';
  // By share alone: on small windings the doubt would let every set of three pass as equal.
  if (spreadPercent(whole).lte(limits.equal.value)) return 'equal';
  const [cr, cs, sr] = whole;
  const swapped = cr.minus(cs).gt(doubtOhms(doubt, cr).plus(doubtOhms(doubt, cs)));
  if (!swapped && sumRule(doubt, sr, cs, cr).fits) return 'fits';
  return terminals(whole, limits).rule.fits ? 'other-terminals' : 'misfit';
}

const terminals = ([cr, cs, sr]: Whole, limits: PairsLimits): Terminals =>
  terminalsFromOhms(
    [
      { ends: ['C', 'R'], ohms: cr },
      { ends: ['C', 'S'], ohms: cs },
      { ends: ['S', 'R'], ohms: sr },
    ],
    doubtBy(limits),
  );

const WORDS: Readonly<Record<PairsState, string>> = {
  missing: 'missing',
  common: 'open to C',
  start: 'start open',
  run: 'run open',
  all: 'all open',
  impossible: 'contradiction',
  'near-zero': 'too near zero',
  equal: 'three equal',
  fits: 'sum fits',
  'other-terminals': 'other terminals',
  misfit: 'sum does not fit',
};

export function pairsFinding(
  name: string,
  { is, three }: Pairs,
  shell: 'hot' | 'cold' | 'unknown',
  limits: PairsLimits,
  again = false,
): Finding {
  const whole = wholeOf(three);
  const rule = whole && terminals(whole, limits).rule;
  return finding({
    name,
    reading: sayPairs(NAMES, three),
    limits: rule && 'the largest pair is the sum of the others',
    doubt: rule && `±${say(rule.doubtOhms, 'Ω', 3)} on the sum`,
    word: WORDS[is],
    text: whole ? readText(is, whole, limits, again) : openText(is, shell),
    source: is === 'equal' ? limits.equal.source : `${DOUBT_SOURCE}; ${limits.percent.source}`,
    // Three equal pairs have no C, R and S to draw.
    ...(is === 'equal' || is === 'missing' ? {} : pictured(triangle(is, three, rule?.doubtOhms ?? null))),
  });
}

function triangle(is: PairsState, [cr, cs, sr]: Three, doubt: Exact | null): Windings {
  const ohms = (reading: Reading): string | null =>
    reading.kind === 'figure' ? reading.value.toFixed() : reading.kind === 'over' ? 'OL' : null;
  const readings = { crOhms: ohms(cr), csOhms: ohms(cs), srOhms: ohms(sr) };
  return { kind: 'windings', ...readings, doubtOhms: doubt?.toFixed() ?? null, word: WORDS[is] };
}

function openText(is: PairsState, shell: 'hot' | 'cold' | 'unknown'): string {
  switch (is) {
    case 'common':
      return `Both pairs to C read OL and S–R reads. ${SHELL[shell]}`;
    case 'start':
      return 'C–S and S–R read OL and C–R reads: the start winding or its lead is open. Look at plug and lead, read at the plug.';
    case 'run':
      return 'C–R and S–R read OL and C–S reads: the run winding or its lead is open. Look at plug and lead, read at the plug.';
    case 'all':
      return 'All three pairs read OL. The plug is off, or a three-phase overload is open: look.';
    case 'impossible':
      return 'One pair reads OL, and the two others lead around it. One of the readings is wrong.';
    default:
      return 'Not all three pairs were read.';
  }
}

/** Where the try before was as odd. */
const TWICE = 'It is so twice: a senior decides.';
const SHELL = {
  hot: 'The shell is hot: the internal overload is open. That is no failed compressor. Let it cool for hours and find why.',
  cold: 'The shell is cold: look at the C lead, the plug and an external overload first.',
  unknown: 'Whether the shell is hot or cold decides what that means.',
} as const;

function readText(is: PairsState, whole: Whole, limits: PairsLimits, again: boolean): string {
  const [cr, cs, sr] = whole;
  const found = terminals(whole, limits);
  const [least, middle, largest] = [...whole].sort((a, b) => a.cmp(b)) as [...Whole];
  const sum = sayOhms(least.plus(middle));
  switch (is) {
    case 'fits': {
      const unlike = found.told ? '' : ' This meter can’t tell the terminals apart here.';
      return `S–R reads ${sayOhms(sr)}, C–R and C–S together ${sayOhms(cr.plus(cs))}: the sum fits.${unlike}`;
    }
    case 'other-terminals':
      return `The readings fit other terminals: ${otherNames(found)}. The windings are not blamed. ${again ? TWICE : 'Check which wire is which and read again.'}`;
    case 'equal':
      return `The three pairs are equal within ${say(limits.equal.value, '%')}. A three-phase or inverter motor reads so, and S, R, C don’t apply to it.`;
    case 'near-zero':
      return `${sayOhms(least)} is within the meter’s doubt of ${say(doubtOhms(doubtBy(limits), least), 'Ω', 3)}: a short would read the same. Zero the leads, or take a finer meter.`;
    default:
      return `The largest pair reads ${sayOhms(largest)}, the two others together ${sum}: ${say(misfitPercent(largest, middle, least), '%', 1, 1)} off. It condemns nothing. ${again ? TWICE : 'Zero the leads and read again.'}`;
  }
}

/** "S is in truth C", for the terminals that are called something else. */
const otherNames = ({ common, start, run }: Terminals): string =>
  (
    [
      ['C', common],
      ['S', start],
      ['R', run],
    ] as const
  )
    .filter(([is, called]) => is !== called)
    .map(([is, called]) => `${called} is in truth ${is}`)
    .join(', ');
