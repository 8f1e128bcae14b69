import type { Figure } from '../../calc/exact.ts';
import { battery } from '../battery.ts';
import { judgement } from '../judgement.ts';
import { chose, past, volts } from '../probing.ts';
import { figureOf } from '../read.ts';
import { finding, say } from '../say.ts';
import { testVolts } from './insulation-rule.ts';
import { told } from './look.ts';

/**
 * Whether a winding is empty after an insulation test: volts DC to ground under `winding`, between two readings of a
 * battery that prove the meter on DC. `test` is what it was tested with: an ohmmeter alone leaves no charge. High is
 * believed without a proof of the meter; low isn't.
 */
export const windingResidual = judgement({
  id: 'winding-residual',
  semantics: 1,
  takes: ['readings', 'test'],
  limits: ['residual', 'batteryMin', 'batteryMax'],
  outcomes: ['no-charge', 'ask', 'discharged', 'charged', 'meter', 'undecided'],
  run({ readings, test }, limits) {
    const most = say(limits.residual.value, 'V');
    const said = (reading: string, word: string, text: string, source = limits.residual.source) =>
      finding({ name: 'Winding, DC', reading, limits: `${most} or less`, word, text, source });
    if (testVolts(test) === null && told(test).length > 0) {
      const text = 'An ohmmeter alone puts too few volts on a winding to charge it.';
      return { outcome: 'no-charge', findings: [said('an ohmmeter’s', 'no charge', text, 'physics')] };
    }
    if (readings === undefined) {
      const text = `The test left a charge. It is gone when the winding reads ${most} or less.`;
      return { outcome: 'ask', findings: [said('not read', 'charged', text)] };
    }
    const value = figureOf(readings, 'winding', 'V')?.abs() ?? null;
    const shown = value ? say(value, 'V') : 'no reading';
    const batteries = [
      battery('Battery, before', figureOf(readings, 'batteryBefore', 'V'), limits, METER),
      battery('Battery, after', figureOf(readings, 'batteryAfter', 'V'), limits, METER),
    ];
    const proofs = batteries.map((b) => b.finding);
    if (value === null) {
      return { outcome: 'undecided', findings: [...proofs, said(shown, 'missing', 'The winding was not read.')] };
    }
    if (value.gt(limits.residual.value)) {
      const text = `The winding still holds ${shown}, over ${most}. Hold the tool on longer, on bare metal.`;
      return { outcome: 'charged', findings: [...proofs, said(shown, 'charged', text)] };
    }
    if (batteries.some((b) => b.is !== 'proved')) {
      const outcome = batteries.some((b) => b.is === 'out') ? 'meter' : 'undecided';
      const text = `${shown} on the winding counts only between two readings of the battery.`;
      return { outcome, findings: [...proofs, said(shown, 'not proved', text, limits.batteryMin.source)] };
    }
    return {
      outcome: 'discharged',
      findings: [...proofs, said(shown, 'discharged', `The winding holds ${shown}, ${most} or less.`)],
    };
  },
  probe({ residual, batteryMin: low, batteryMax: high }) {
    const test = { choice: chose('500') };
    const at = (before: Figure, winding: Figure, after: Figure) =>
      volts({ batteryBefore: before, winding, batteryAfter: after });
    return [
      { test, readings: at(low.value, residual.value, high.value) },
      { test, readings: at(low.value, past(residual.value, '0.01'), high.value) },
      { test, readings: at(low.value, '-300', high.value) },
      { test, readings: at(past(low.value, '-0.01'), residual.value, high.value) },
      { test, readings: at(low.value, residual.value, past(high.value, '0.01')) },
      { test, readings: volts({ winding: residual.value, batteryAfter: low.value }) },
      { test, readings: {} },
      { test },
      { test: { choice: chose('meter') } },
      {},
    ];
  },
});

const METER = {
  proved: (shown: string) => `The meter read the battery at ${shown}.`,
  out: (shown: string) => `${shown} does not prove the meter on DC. The winding’s reading does not count.`,
};
