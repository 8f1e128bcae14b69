import { Exact } from '../../calc/exact.ts';
import { bandOfMegohms, type Enough, enoughMegohms } from '../../calc/insulation.ts';
import type { Finding, Parts } from '../../schema.ts';
import { judgement, type Limit } from '../judgement.ts';
import { chose, over, past, reads, untaken } from '../probing.ts';
import { figureOf, type Reading, readingOf } from '../read.ts';
import { finding, say } from '../say.ts';
import { told } from './look.ts';

const LIMITS = ['scroll', 'reciprocating', 'motor', 'testVolts', 'good', 'fair', 'watch'] as const;
type InsulationLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;
const OUTCOMES = ['ask', 'good', 'none-found', 'low', 'warm-first', 'grounded', 'refused', 'undecided'] as const;

/**
 * Insulation of a winding to ground, MΩ: key `megohms`, the maker's figure under `maker`. `state` tells vacuum,
 * electronics, heater, cold or none, `test` the test volts or `meter`, `machine` scroll, reciprocating or motor. The maker's
 * figure comes before that of the kind; the trade's bands only advise. Nothing is tested under vacuum.
 */
export const insulation = judgement({
  id: 'insulation',
  semantics: 1,
  takes: ['state', 'test', 'machine', 'maker', 'reading', 'earlier'],
  limits: LIMITS,
  outcomes: OUTCOMES,
  run({ state, test, machine, maker, reading, earlier }, limits) {
    const now = told(state);
    const refusal = refuse(now, test, limits);
    if (refusal) return { outcome: 'refused', findings: [refusal] };
    if (!SAFE.some((option) => now.includes(option))) return { outcome: 'undecided', findings: [unknownState] };
    if (reading === undefined) return { outcome: 'ask', findings: [allowed(limits)] };
    const enough = enoughFor(machine, maker, limits);
    const [last, first] = [megohmsOf(reading), megohmsOf(earlier)];
    const [is, was] = [standing(last, enough, limits), standing(first, enough, limits)];
    const findings = [
      ...(was === 'missing' ? [] : [said('Insulation, earlier', first, was, enough, limits)]),
      said('Insulation', last, is, enough, limits),
      ...(last.kind === 'figure' ? [banded(last.value, limits)] : []),
    ];
    if (is === 'missing' || is === 'open') return { outcome: 'undecided', findings };
    if (is === 'enough' && testVolts(test) === null) return { outcome: 'none-found', findings: [...findings, METER] };
    if (is === 'enough') return { outcome: 'good', findings };
    if (now.includes('cold')) return { outcome: 'warm-first', findings: [...findings, COLD] };
    if (now.includes('heater')) return { outcome: 'low', findings: [...findings, HEATER] };
    return was === 'low' ? { outcome: 'grounded', findings: [...findings, TWICE] } : { outcome: 'low', findings };
  },
  probe: (limits) => probeInsulation(limits),
});

/** What may stand beside a test. Whoever can't say whether there is a vacuum doesn't test. */
const SAFE = ['none', 'cold', 'heater'] as const;
type Standing = 'missing' | 'low' | 'open' | 'enough';

const unknownState = finding({
  name: 'Before the test',
  reading: 'not told',
  word: 'missing',
  text: 'Nobody said whether the compressor is under vacuum and the electronics are unplugged. Don’t test before that is known.',
});
const COLD = finding({
  name: 'Cold shell',
  reading: 'cold',
  word: 'warm first',
  text: 'Liquid refrigerant in a cold shell reads low. Warm it for 12 to 24 hours and repeat before any verdict.',
  source: 'common practice, no single source',
});
const HEATER = finding({
  name: 'Crankcase heater',
  reading: 'connected',
  word: 'again without',
  text: 'The crankcase heater is still in the circuit. Take it off and repeat.',
  source: 'common practice, no single source',
});

const METER = finding({
  name: 'Test voltage',
  reading: 'an ohmmeter’s',
  word: 'weaker',
  text: 'At an ohmmeter’s voltage no ground was found. An insulation test says more.',
  source: 'our setting',
});
const TWICE = finding({
  name: 'Insulation, both tries',
  reading: 'low',
  word: 'grounded',
  text: 'Low twice: grounded. Never energise it, tag it, and have a senior confirm.',
  source: 'a reciprocating compressor maker’s service handbook (secondary source)',
});

/** The volts of an insulation tester; null for an ohmmeter and where nobody said. */
function testVolts(test: Parts | undefined): Exact | null {
  const digits = told(test)
    .flatMap((option) => option.match(/^\d{2,5}$/g) ?? [])
    .at(0);
  return digits === undefined ? null : new Exact(digits);
}

function refuse(now: readonly string[], test: Parts | undefined, limits: InsulationLimits): Finding | null {
  const most = limits.testVolts;
  const volts = testVolts(test);
  const no = (reading: string, text: string, source: string): Finding =>
    finding({ name: 'Before the test', reading, word: 'refused', text, source });
  if (now.includes('vacuum')) {
    const text =
      'Never test or power a compressor under vacuum: its terminals arc at low pressure. Break the vacuum first.';
    return no('vacuum', text, 'a compressor maker’s rule confirmed by a training article (secondary source); physics');
  }
  if (now.includes('electronics')) {
    const text = 'Electronics are still connected: the test destroys them. Unplug them first.';
    return no('electronics', text, 'common practice, no single source');
  }
  if (volts?.gt(most.value)) {
    const text = `${say(volts, 'V')} is too much: ${say(most.value, 'V')} DC at most.`;
    return no(say(volts, 'V'), text, most.source);
  }
  return null;
}

const allowed = ({ testVolts: most }: InsulationLimits): Finding =>
  finding({
    name: 'Before the test',
    reading: 'clear',
    limits: `${say(most.value, 'V')} DC at most`,
    word: 'go on',
    text: `Test with ${say(most.value, 'V')} DC at most, for one minute. Discharge the winding afterwards.`,
    source: most.source,
  });

const KINDS = {
  scroll: 'a scroll compressor’s',
  reciprocating: 'a reciprocating compressor’s',
  motor: 'a fan or blower motor’s',
} as const;
interface Rule {
  readonly enough: Enough | null;
  readonly of: string;
  readonly source: string;
}
function enoughFor(machine: Parts | undefined, maker: Parts | undefined, limits: InsulationLimits): Rule {
  const printed = figureOf(maker, 'maker', 'MΩ');
  const kind = (['scroll', 'reciprocating', 'motor'] as const).find((k) => told(machine).includes(k));
  const enough = enoughMegohms(printed?.gt(0) ? printed : null, kind ? limits[kind].value : null);
  if (enough?.by === 'maker') return { enough, of: 'the maker’s', source: 'the maker’s figure' };
  return kind
    ? { enough, of: KINDS[kind], source: limits[kind].source }
    : { enough, of: '', source: `${limits.scroll.source}; ${limits.reciprocating.source}` };
}

/** A resistance is never below zero. */
function megohmsOf(parts: Parts | undefined): Reading {
  const reading = readingOf(parts, 'megohms', 'MΩ');
  return reading.kind === 'figure' && reading.value.lt(0) ? { kind: 'none' } : reading;
}

/** Where the kind is unknown, only what is low or enough for every compressor decides. */
function standing(reading: Reading, { enough }: Rule, { scroll, reciprocating }: InsulationLimits): Standing {
  if (reading.kind !== 'figure') return reading.kind === 'over' ? 'enough' : 'missing';
  if (enough) return reading.value.lt(enough.megohms) ? 'low' : 'enough';
  if (reading.value.lt(scroll.value)) return 'low';
  return reading.value.lt(reciprocating.value) ? 'open' : 'enough';
}

function said(name: string, reading: Reading, is: Standing, rule: Rule, limits: InsulationLimits): Finding {
  const shown = reading.kind === 'figure' ? say(reading.value, 'MΩ') : reading.kind === 'over' ? 'OL' : 'no reading';
  const [least, most] = [say(limits.scroll.value, 'MΩ'), say(limits.reciprocating.value, 'MΩ')];
  const any = rule.enough ? '' : ', whatever its kind';
  const limit = rule.enough ? `${rule.of} ${say(rule.enough.megohms, 'MΩ')}` : `${least} to ${most}, by kind`;
  const text = {
    missing: 'The insulation was not read.',
    low: `${shown} to ground is below ${rule.enough ? limit : least}${any}. It counts when it is low twice, at its own harness, heater off.`,
    open: `${shown} to ground is enough for a scroll and low for a reciprocating compressor. Which one it is decides.`,
    enough: `${shown} to ground is not below ${rule.enough ? limit : most}${any}.`,
  }[is];
  return finding({
    name,
    reading: shown,
    limits: rule.enough ? `${limit} or more` : limit,
    word: is,
    text,
    source: rule.source,
  });
}

function banded(megohms: Exact, { good, fair, watch }: InsulationLimits): Finding {
  const band = bandOfMegohms(megohms, good.value, fair.value, watch.value);
  const text = {
    good: `Above ${say(good.value, 'MΩ')}: the trade calls it good.`,
    fair: `Between ${say(fair.value, 'MΩ')} and ${say(good.value, 'MΩ')}: the trade calls it fair.`,
    watch: `Between ${say(watch.value, 'MΩ')} and ${say(fair.value, 'MΩ')}: the trade watches it.`,
    suspect: `Below ${say(watch.value, 'MΩ')}: the trade calls it suspect.`,
  }[band];
  return finding({
    name: 'Trade’s band',
    reading: say(megohms, 'MΩ'),
    word: band,
    text: `${text} The band advises and decides nothing.`,
    source: good.source,
  });
}

function probeInsulation(
  limits: InsulationLimits,
): Partial<Record<'state' | 'test' | 'machine' | 'maker' | 'reading' | 'earlier', Parts>>[] {
  const of = (option: string): Parts => ({ choice: chose(option) });
  const at = (value: string | Exact): Parts => reads({ megohms: value }, 'MΩ');
  const base = { state: of('none'), test: of(limits.testVolts.value) };
  const under = (limit: Limit): Parts => at(past(limit.value, '-0.01'));
  const kinds = (['scroll', 'reciprocating', 'motor'] as const).flatMap((kind) => [
    { ...base, machine: of(kind), reading: at(limits[kind].value) },
    { ...base, machine: of(kind), reading: under(limits[kind]) },
  ]);
  const maker = reads({ maker: 5 }, 'MΩ');
  const low = { ...base, machine: of('scroll'), reading: under(limits.scroll) };
  return [
    base,
    ...kinds,
    { ...base, reading: at(limits.scroll.value) },
    { ...base, reading: under(limits.scroll) },
    { ...base, reading: at(limits.reciprocating.value) },
    { ...base, reading: under(limits.reciprocating) },
    { ...base, maker, reading: at('5') },
    { ...base, maker, reading: at('4.99') },
    ...[limits.good, limits.fair, limits.watch].flatMap((border) => [
      { ...base, reading: at(border.value) },
      { ...base, reading: under(border) },
      { ...base, reading: at(past(border.value, '0.01')) },
    ]),
    { ...base, reading: { megohms: over } },
    { ...low, earlier: low.reading },
    { ...low, state: of('cold'), earlier: low.reading },
    { ...low, state: of('heater'), earlier: low.reading },
    { ...low, earlier: { megohms: over } },
    { ...base, test: of('meter'), reading: at(limits.reciprocating.value) },
    { ...base, test: of(past(limits.testVolts.value, 1).toFixed()), reading: at('100') },
    { ...base, state: of('vacuum') },
    { ...base, state: of('electronics') },
    { ...base, state: of('cant') },
    { ...base, reading: { megohms: untaken } },
    {},
  ];
}
