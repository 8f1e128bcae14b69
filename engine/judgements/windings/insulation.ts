import type { Parts } from '../../schema.ts';
import { judgement } from '../judgement.ts';
import { probeInsulation } from './insulation-probe.ts';
import { enoughFor, INSULATION_LIMITS, megohmsOf, standing, testVolts } from './insulation-rule.ts';
import {
  allowed,
  banded,
  COLD,
  corrected,
  HEATER,
  LOW_IN_OHMS,
  METER,
  refuse,
  said,
  TWICE,
  unknownState,
} from './insulation-words.ts';
import { told } from './look.ts';

const OUTCOMES = ['ask', 'good', 'none-found', 'low', 'warm-first', 'grounded', 'refused', 'undecided'] as const;

/**
 * Insulation of a winding to ground, MΩ: key `megohms`, the maker's figure under `maker`. `state` tells vacuum,
 * electronics, heater, cold or none, `test` the test volts or `meter`, `machine` scroll, reciprocating or motor. The maker's
 * figure comes before that of the kind; a motor's is shown at 40 °C too where `winding` tells its °F; the trade's bands only advise.
 * Nothing is tested under vacuum. `earlierTest`: what the try before was taken with.
 */
export const insulation = judgement({
  id: 'insulation',
  semantics: 1,
  takes: ['state', 'test', 'machine', 'maker', 'temperature', 'reading', 'earlier', 'earlierTest'],
  limits: INSULATION_LIMITS,
  outcomes: OUTCOMES,
  run({ state, test, machine, maker, temperature, reading, earlier, earlierTest }, limits) {
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
      ...(last.kind === 'figure' && told(machine).includes('motor') ? corrected(last.value, temperature, limits) : []),
    ];
    if (is === 'missing' || is === 'open') return { outcome: 'undecided', findings };
    if (is === 'enough' && testVolts(test) === null) return { outcome: 'none-found', findings: [...findings, METER] };
    if (is === 'enough' && was === 'low' && isOhmmeter(earlierTest))
      return { outcome: 'undecided', findings: [...findings, LOW_IN_OHMS] };
    if (is === 'enough') return { outcome: 'good', findings };
    if (now.includes('cold')) return { outcome: 'warm-first', findings: [...findings, COLD] };
    if (now.includes('heater')) return { outcome: 'low', findings: [...findings, HEATER] };
    return was === 'low' ? { outcome: 'grounded', findings: [...findings, TWICE] } : { outcome: 'low', findings };
  },
  probe: (limits) => probeInsulation(limits),
});

/** What an ohmmeter finds low is a ground that its few volts already show; more volts that pass don't take it back. */
const isOhmmeter = (test: Parts | undefined): boolean => told(test).includes('meter');
/** What may stand beside a test. Whoever can't say whether there is a vacuum doesn't test. */
const SAFE = ['none', 'cold', 'heater'] as const;
