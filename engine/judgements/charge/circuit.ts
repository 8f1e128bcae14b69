import { Exact } from '../../calc/exact.ts';
import { subcooling as subcoolingOf, superheat as superheatOf } from '../../calc/refrigerant/superheat.ts';
import type { Finding, Parts } from '../../schema.ts';
import { CAUSES, COLUMNS, type Column, type Level, type Pattern } from '../cooling/cause-table.ts';
import { refrigerantOf, saturationOf } from '../cooling/refrigerant.ts';
import { refrigerantCause } from '../cooling/refrigerant-cause.ts';
import { subcooling, subcoolingTarget } from '../cooling/subcooling.ts';
import { superheat, superheatTarget } from '../cooling/superheat.ts';
import { judgement, type Limit } from '../judgement.ts';
import { chose } from '../probing.ts';
import { confirmed, figureOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';
import { levelsOf, patternsOf, turned } from './levels.ts';
import { probeCircuit } from './probe.ts';

const LIMITS = [
  'valveLow',
  'valveHigh',
  'orificeLeast',
  'superheatWithin',
  'subcoolingWithin',
  'subcoolingLow',
  'subcoolingHigh',
  'impossible',
  'suctionLow',
  'suctionHigh',
  'headLow',
  'headHigh',
  'doubt',
] as const;
export type CircuitLimits = Readonly<Record<(typeof LIMITS)[number], Limit>>;

/**
 * Pressures and line temperatures of a circuit that runs, and what they come to together. `which`: `refrigerant`,
 * `metering` (txv, fixed), the label's subcooling as `target`. `readings`: psig `suction` and `liquid`, °F
 * `suctionLine`, `liquidLine`, `return`, `wb`, `outdoor`. `ready`: one confirmation of all that
 * has to be so first (certified, stable, no ice, clean). A
 * reading within the doubt of a limit counts both ways, and only a cause that both share is named.
 */
export const circuit = judgement({
  id: 'circuit',
  semantics: 1,
  takes: ['which', 'readings', 'ready'],
  limits: LIMITS,
  outcomes: [...CAUSES, 'metering', 'undecided'],
  run({ which, readings, ready }, limits, force) {
    const lines = [
      superheat.run(
        {
          refrigerant: which,
          readings: moved(readings, { suction: 'suction', line: 'suctionLine' }),
          target: targets(which, readings),
        },
        { ...limits, within: limits.superheatWithin },
        force,
      ),
      subcooling.run(
        { refrigerant: which, readings: moved(readings, { liquid: 'liquid', line: 'liquidLine' }), target: which },
        {
          within: limits.subcoolingWithin,
          low: limits.subcoolingLow,
          high: limits.subcoolingHigh,
          impossible: limits.impossible,
        },
        force,
      ),
    ];
    const levels = allLevels(which, readings, limits);
    const said = [...(lines[0]?.findings ?? []), ...(lines[1]?.findings.slice(-1) ?? []), ...levels.findings];
    const { pattern } = levels;
    if (pattern === null || lines.some(({ outcome }) => outcome === 'undecided'))
      return {
        outcome: 'undecided',
        findings: [...said, open('It takes every figure of the circuit. One alone concludes nothing.')],
      };
    const judged = patternsOf(pattern).map((one) => causeOf(one, ready, force));
    const causes = [...new Set(judged.map(({ outcome }) => outcome))];
    const [only] = judged;
    if (causes.length === 1 && only) return { outcome: only.outcome, findings: [...said, ...only.findings] };
    const near = COLUMNS.filter((column) => pattern[column].length > 1).join(' and ');
    const text = `Too near a limit: ${near}. Within ${say(limits.doubt.value, '°F')} it could be either, and the causes differ.`;
    return { outcome: 'undecided', findings: [...said, open(text)] };
  },
  probe: probeCircuit,
});

const open = (text: string): Finding =>
  finding({ name: 'Pattern', reading: 'open', word: 'not judged', text, source: 'common practice, no single source' });

/** What the cause table asks for, item by item. */
const ALL_READY: Parts = { certified: chose('yes'), stable: chose('yes'), 'no-ice': chose('yes'), clean: chose('yes') };

type Cause = (typeof CAUSES)[number] | 'metering' | 'undecided';
/** By the cause table; superheat alone beside three that are normal is the metering device. */
function causeOf(pattern: Pattern, ready: Parts | undefined, force: Parameters<typeof refrigerantCause.run>[2]) {
  const parts = Object.fromEntries(COLUMNS.map((column) => [column, chose(pattern[column])]));
  const judged: { outcome: Cause; findings: readonly Finding[] } = refrigerantCause.run(
    { pattern: parts, ready: confirmed(ready) ? ALL_READY : {} },
    {},
    force,
  );
  const rest = COLUMNS.every((column) => (pattern[column] === 'normal') !== (column === 'superheat'));
  const isReady = judged.findings[0]?.word !== 'not judged';
  if (judged.outcome !== 'undecided' || !rest || !isReady) return judged;
  const text =
    'Superheat alone is out and the rest is normal. That is the metering device, once bulb and air are checked.';
  const reading = COLUMNS.map((column) => `${column} ${pattern[column]}`).join(', ');
  const said = finding({
    name: 'Pattern',
    reading,
    word: 'metering',
    text,
    source: 'common practice, no single source',
  });
  return { outcome: 'metering' as const, findings: [said] };
}

function allLevels(which: Parts | undefined, readings: Parts | undefined, limits: CircuitLimits) {
  const name = refrigerantOf(which);
  const [suction, liquid] = [saturationOf(readings, name, 'suction'), saturationOf(readings, name, 'liquid')];
  const at = (key: string) => figureOf(readings, key, '°F');
  const range = (low: Limit, high: Limit) => ({ low: new Exact(low.value), high: new Exact(high.value) });
  const under = suction.is === 'known' ? at('return')?.minus(suction.fahrenheit) : undefined;
  const over = liquid.is === 'known' ? at('outdoor') && liquid.fahrenheit.minus(at('outdoor') ?? 0) : undefined;
  // The further the suction's saturation lies under the return, the lower the suction.
  const low = under && turned(levelsOf(under, range(limits.suctionLow, limits.suctionHigh), limits.doubt.value));
  const head = over && levelsOf(over, range(limits.headLow, limits.headHigh), limits.doubt.value);
  const line = (
    title: string,
    value: Exact | null | undefined,
    usual: ReturnType<typeof range>,
    levels: readonly Level[] | undefined,
    limit: Limit,
  ) =>
    finding({
      name: title,
      reading: value ? say(value, '°F') : 'no reading',
      limits: sayRange(usual, '°F', 1, 0),
      word: levels ? levels.join(' or ') : 'not judged',
      text: value ? `${title}: ${say(value, '°F')}.` : `${title}: a pressure or a temperature is missing.`,
      source: limit.source,
    });
  const findings = [
    line(
      'Suction saturation under the return air',
      under,
      range(limits.suctionLow, limits.suctionHigh),
      low,
      limits.suctionLow,
    ),
    line(
      'Condensing above the outdoor air',
      over,
      range(limits.headLow, limits.headHigh),
      head || undefined,
      limits.headLow,
    ),
  ];
  const target = superheatTarget(targets(which, readings), { ...limits, within: limits.superheatWithin });
  const cool = subcoolingTarget(which, {
    within: limits.subcoolingWithin,
    low: limits.subcoolingLow,
    high: limits.subcoolingHigh,
  });
  const [gas, fluid] = [at('suctionLine'), at('liquidLine')];
  if (!low || !head || target.range === null || !gas || !fluid || suction.is === 'open' || liquid.is === 'open')
    return { pattern: null, findings };
  const pattern: Readonly<Record<Column, readonly Level[]>> = {
    suction: low,
    head,
    superheat: levelsOf(superheatOf(gas, suction.fahrenheit), target.range, limits.doubt.value),
    subcooling: levelsOf(subcoolingOf(liquid.fahrenheit, fluid), cool.range, limits.doubt.value),
  };
  return { pattern, findings };
}

/** Parts under the names that the judgement of one line takes. */
const moved = (parts: Parts | undefined, names: Readonly<Record<string, string>>): Parts =>
  Object.fromEntries(
    Object.entries(names).flatMap(([to, from]) => {
      const part = parts !== undefined && Object.hasOwn(parts, from) ? parts[from] : undefined;
      return part ? [[to, part]] : [];
    }),
  );
/** The label's figure is the subcooling's: superheat goes by what meters. */
const targets = (which: Parts | undefined, readings: Parts | undefined): Parts => ({
  ...moved(which, { metering: 'metering' }),
  ...moved(readings, { wb: 'wb', outdoor: 'outdoor' }),
});
