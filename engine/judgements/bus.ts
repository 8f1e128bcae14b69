import { battery } from './battery.ts';
import { judgement } from './judgement.ts';
import { chose, past, volts } from './probing.ts';
import { confirmed, figureOf } from './read.ts';
import { finding, say } from './say.ts';

/**
 * P–N volts DC of an inverter's bus, between two readings of a battery that prove the meter on DC. Within the residual
 * it goes on; up to the stop it waits on; above it, once the label's time is over, the bleeder has failed.
 */
export const bus = judgement({
  id: 'bus',
  semantics: 1,
  takes: ['readings', 'waited'],
  limits: ['residual', 'stop', 'batteryMin', 'batteryMax'],
  outcomes: ['go', 'wait', 'stop', 'meter', 'undecided'],
  run({ readings, waited }, limits) {
    const pn = figureOf(readings, 'pn', 'V')?.abs() ?? null;
    const batteries = [
      battery('Battery before', figureOf(readings, 'batteryBefore', 'V'), limits, METER),
      battery('Battery after', figureOf(readings, 'batteryAfter', 'V'), limits, METER),
    ];
    const shown = pn ? say(pn, 'V') : 'no reading';
    const [residual, stop] = [say(limits.residual.value, 'V'), say(limits.stop.value, 'V')];
    const line = (word: string, text: string, source = limits.residual.source) =>
      finding({ name: 'P–N, DC', reading: shown, limits: `${residual} or less`, word, text, source });
    const proofs = batteries.map((b) => b.finding);
    if (pn === null) {
      return { outcome: 'undecided', findings: [...proofs, line('missing', 'The bus was not read.')] };
    }
    // High is believed without a proof of the meter; low isn't.
    if (pn.gt(limits.stop.value)) {
      const over = confirmed(waited);
      const text = over
        ? `${shown} on the bus is above ${stop} after the label’s time. The bleeder has failed: close up.`
        : `${shown} on the bus is above ${stop}. Wait the label’s time, hands off.`;
      return {
        outcome: over ? 'stop' : 'wait',
        findings: [...proofs, line(over ? 'stop' : 'wait', text, limits.stop.source)],
      };
    }
    if (pn.gt(limits.residual.value)) {
      const text = `${shown} on the bus lies between ${residual} and ${stop}. Wait 5 minutes more, then read again.`;
      return { outcome: 'wait', findings: [...proofs, line('wait', text)] };
    }
    if (batteries.some((b) => b.is !== 'proved')) {
      const outcome = batteries.some((b) => b.is === 'out') ? 'meter' : 'undecided';
      const text = `${shown} on the bus counts only between two readings of the battery.`;
      return { outcome, findings: [...proofs, line('not proved', text, limits.batteryMin.source)] };
    }
    return { outcome: 'go', findings: [...proofs, line('go', `${shown} on the bus, ${residual} or less.`)] };
  },
  probe(limits) {
    const at = (
      pn: Parameters<typeof past>[0],
      before: Parameters<typeof past>[0],
      after: Parameters<typeof past>[0],
    ) => volts({ batteryBefore: before, pn, batteryAfter: after });
    const { residual, stop, batteryMin: low, batteryMax: high } = limits;
    const waited = { ok: chose('yes') };
    return [
      { readings: at(residual.value, low.value, high.value) },
      { readings: at(residual.value, past(low.value, '-0.01'), high.value) },
      { readings: at(residual.value, low.value, past(high.value, '0.01')) },
      { readings: at(past(residual.value, '0.01'), low.value, high.value) },
      { readings: at(stop.value, low.value, high.value), waited },
      { readings: at(past(stop.value, '0.01'), low.value, high.value) },
      { readings: at(past(stop.value, '0.01'), low.value, high.value), waited },
      { readings: volts({ pn: residual.value, batteryAfter: low.value }) },
      {},
    ];
  },
});

const METER = {
  proved: (shown: string, band: string) => `The battery reads ${shown}, inside ${band}: the meter reads DC.`,
  out: (shown: string, band: string) => `The battery reads ${shown}, outside ${band}: the meter is not proved.`,
};
