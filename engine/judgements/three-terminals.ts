import type { Exact } from '../calc/exact.ts';
import { type Naming, type PairwiseMicrofarads, terminalsOf } from '../calc/terminals.ts';
import type { Finding, Parts } from '../schema.ts';
import { judgement } from './judgement.ts';
import { over, print, reads, untaken } from './probing.ts';
import { figureOf, printOf, readingOf } from './read.ts';
import { finding, say } from './say.ts';
import { sayNaming, terminalFindings } from './three-terminals-findings.ts';

const PAIRS = ['xy', 'xz', 'yz'] as const;

/**
 * The terminals of an unmarked dual part from three readings, µF, wires off: `xy` first to second terminal, `xz` first
 * to third, `yz` second to third. Tabs, counted in the same order, settle what the meter's doubt leaves open, where
 * they agree with the nearest naming; alone they prove nothing. Source: physics; the tabs are common practice.
 */
export const threeTerminals = judgement({
  id: 'three-terminals',
  semantics: 1,
  takes: ['readings', 'label', 'tabs'],
  limits: [],
  outcomes: ['determined', 'ambiguous', 'doesnt-fit', 'undecided'],
  run({ readings, label, tabs }, _limits, force) {
    const undecided = (text: string) => ({
      outcome: 'undecided' as const,
      findings: [unread(readings, text)],
    });
    if (printOf(label)?.fan === null) return undecided('A part with one section has no FAN terminal to find.');
    const pairs = pairwise(readings);
    if (pairs === null)
      return undecided('Three readings above zero are needed. With OL or zero, look at the wires and the range first.');
    const found = terminalsOf(force.meter, pairs);
    const counted = byTabs(tabs);
    const agree = counted !== null && sayNaming(counted) === sayNaming(found.nearest);
    const findings = terminalFindings(pairs, found, counted, force);
    if (found.is === 'does-not-fit') return { outcome: 'doesnt-fit', findings };
    // The nearest naming must itself fit, or the tabs would decide alone.
    const settled = found.is === 'determined' || (agree && found.fitting.includes(found.nearest));
    return { outcome: settled ? 'determined' : 'ambiguous', findings };
  },
  probe: () => {
    const large = reads({ xy: '60.1', xz: '30.1', yz: '20.1' }, 'µF');
    const near = reads({ xy: '45', xz: '45.1', yz: '22.5' }, 'µF');
    return [
      { readings: large },
      { readings: near },
      { readings: near, tabs: reads({ t1: 4, t2: 1, t3: 3 }, 'count') },
      { readings: near, tabs: reads({ t1: 1, t2: 4, t3: 3 }, 'count') },
      { readings: reads({ xy: '60', xz: '30', yz: '30' }, 'µF') },
      { readings: large, label: print({ herm: '60', fan: null }) },
      { readings: { ...large, yz: over } },
      { readings: { ...large, yz: untaken } },
      { readings: { ...large, ...reads({ xz: 0 }, 'µF') } },
      {},
    ];
  },
});

/** All three, above zero; else null. */
function pairwise(readings: Parts | undefined): PairwiseMicrofarads | null {
  const [xy, xz, yz] = PAIRS.map((key) => figureOf(readings, key, 'µF'));
  return xy?.gt(0) && xz?.gt(0) && yz?.gt(0) ? { xy, xz, yz } : null;
}

/** The most tabs is C, then HERM, the fewest is FAN; null where two are alike or one wasn't counted. */
function byTabs(tabs: Parts | undefined): Omit<Naming, 'residualMicrofarads'> | null {
  const counts = (['t1', 't2', 't3'] as const).flatMap((key, i) => {
    const count = figureOf(tabs, key, 'count');
    return count ? [{ terminal: (['X', 'Y', 'Z'] as const)[i] ?? 'X', count }] : [];
  });
  const [c, herm, fan] = counts.sort((a, b) => b.count.cmp(a.count));
  if (!c || !herm || !fan || !falls(c.count, herm.count) || !falls(herm.count, fan.count)) return null;
  return { c: c.terminal, herm: herm.terminal, fan: fan.terminal };
}
const falls = (a: Exact, b: Exact): boolean => a.gt(b);

function unread(readings: Parts | undefined, text: string): Finding {
  const shown = PAIRS.map((key) => {
    const reading = readingOf(readings, key, 'µF');
    return reading.kind === 'figure' ? say(reading.value, 'µF') : reading.kind === 'over' ? 'OL' : 'no reading';
  });
  return finding({ name: 'Terminals', reading: shown.join(', '), word: 'undecided', text });
}
