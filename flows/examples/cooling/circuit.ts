/** Worked calls of a certified person at the circuit, R-410A behind an expansion valve unless said. */
import type { Example } from '../../../engine/vocabulary.ts';
import { LIVE, toCircuit, toGauges } from './lines.ts';

const raised = (title: string, readings: string, verdict: string, ...more: readonly string[]): Example => ({
  title,
  lines: [...toGauges(), readings, ...more],
  then: [verdict],
  ends: 'raised',
});
export const CIRCUIT: readonly Example[] = [
  {
    title: 'The circuit is in order',
    lines: [...toGauges(), 'suct 118 head 342 big 50 small 94 ret 75 wet bulb 63 od 85', ...LIVE],
    then: ['circuit-in-order', 'runs-nothing-found'],
    ends: 'done',
  },
  raised(
    'Short of refrigerant: superheat high, subcooling low',
    'suct 80 head 230 big 48 small 76 ret 75 wet bulb 63 od 85',
    'undercharge',
  ),
  raised(
    'A drier that restricts: 9 °F across',
    'suct 80 head 342 big 48 small 87 ret 75 wet bulb 63 od 85',
    'liquid-restricted',
    'before 96 after 87',
  ),
  raised(
    'Reads restricted, nothing found across',
    'suct 80 head 342 big 48 small 87 ret 75 wet bulb 63 od 85',
    'restriction-not-located',
    'before 96 after 95',
  ),
  raised(
    'Air or load: suction and superheat low',
    'suct 85 head 342 big 28 small 94 ret 75 wet bulb 63 od 85',
    'airflow-by-superheat',
  ),
  raised('Too much in it, or air', 'suct 150 head 480 big 62 small 105 ret 75 wet bulb 63 od 85', 'overcharge-or-air'),
  raised(
    'Head high, the rest normal: the condenser’s air',
    'suct 150 head 480 big 62 small 119 ret 75 wet bulb 63 od 85',
    'condenser-air-elsewhere',
  ),
  raised(
    'It doesn’t pump, and what reads the same is ruled out',
    'suct 160 head 250 big 66 small 82 ret 75 wet bulb 63 od 85',
    'compressor-not-pumping',
    'comp 7.1 valve, unloader, rotation',
  ),
  raised(
    'High suction, low head, amps not low: open',
    'suct 160 head 250 big 66 small 82 ret 75 wet bulb 63 od 85',
    'pumping-undecided',
    'comp 12.5 valve',
  ),
  raised(
    'The valve feeds too much, bulb tight',
    'suct 160 head 342 big 57 small 103 ret 75 wet bulb 63 od 85',
    'metering-device',
    'bulb tight',
  ),
  {
    title: 'The bulb was loose: strapped and proven',
    lines: [...toGauges(), 'suct 160 head 342 big 57 small 103 ret 75 wet bulb 63 od 85', 'loose', ...LIVE],
    then: ['bulb-loose', 'repair-proven'],
    ends: 'done',
  },
  raised(
    'Subcooling on the edge of its range: undecided',
    'suct 80 head 230 big 48 small 70.3 ret 75 wet bulb 63 od 85',
    'circuit-undecided',
  ),
  {
    title: 'Not ready: it has run for five minutes',
    lines: [...toCircuit(), 'certified', '410a txv', 'not 15 minutes'],
    then: ['not-ready-for-gauges'],
    ends: 'left',
  },
];
