import { shareVolts } from '../../calc/control-circuit.ts';
import { Exact } from '../../calc/exact.ts';
import { judgement } from '../judgement.ts';
import { chose, past, volts } from '../probing.ts';
import { chosenOf, confirmed, figureOf } from '../read.ts';
import { finding, say, sayRange } from '../say.ts';
import { ratedVolts } from './contactor-coil.ts';

/**
 * Volts at a contactor's coil, the least of them while it pulls in, and R–C under the same load where it was read. Too
 * low is told apart by R–C: low there too is the source, else a wire or a switch drops it. Enough and not in is the
 * contactor, where R–C has volts as well. No volts decide nothing within the delay after a change of call.
 */
export const coilVolts = judgement({
  id: 'coil-volts',
  semantics: 2,
  takes: ['readings', 'pulled', 'rated', 'waited'],
  limits: ['rated', 'pullIn', 'high', 'absent', 'loaded'],
  outcomes: ['good', 'not-in', 'low', 'drop', 'source', 'high', 'absent', 'wait', 'undecided'],
  run({ readings, pulled, rated, waited }, limits) {
    const coil = figureOf(readings, 'coil', 'V')?.abs() ?? null;
    const source = figureOf(readings, 'rc', 'V')?.abs() ?? null;
    const own = ratedVolts(rated) ?? new Exact(limits.rated.value);
    const shown = coil ? say(coil, 'V') : 'no reading';
    if (own === 'other' || own.lte(0)) {
      const text = 'The coil’s rated volts are not one figure, so its volts are not judged.';
      return {
        outcome: 'undecided',
        findings: [finding({ name: 'Coil volts', reading: shown, word: 'not judged', text })],
      };
    }
    // All limits are of a coil of the rated volts; another coil has them in proportion.
    const scale = own.div(limits.rated.value);
    const { low } = shareVolts(own, limits.pullIn.value, 100);
    const high = scale.times(limits.high.value);
    const range = sayRange({ low, high }, 'V', 2, 0);
    const assumed = rated === undefined ? ` A ${say(own, 'V')} coil is assumed.` : '';
    const line = (word: string, text: string) =>
      finding({
        name: 'Coil volts',
        reading: shown,
        limits: range,
        word,
        text: `${text}${assumed}`,
        source: limits.pullIn.source,
      });
    if (coil === null)
      return { outcome: 'undecided', findings: [line('missing', 'The volts at the coil were not read.')] };
    const [least, most] = [say(low, 'V'), say(high, 'V')];
    if (coil.lt(scale.times(limits.absent.value))) {
      if (!confirmed(waited)) {
        const text = `${shown} at the coil. The delay after a change of call may still run: it decides nothing yet.`;
        return { outcome: 'wait', findings: [line('wait', text)] };
      }
      return { outcome: 'absent', findings: [line('absent', `${shown} at the coil: the call does not reach it.`)] };
    }
    if (coil.gt(high)) return { outcome: 'high', findings: [line('high', `${shown} at the coil is above ${most}.`)] };
    if (coil.gte(low) && source?.lt(scale.times(limits.absent.value))) {
      const text = `${shown} at the coil and ${say(source, 'V')} at R–C: what feeds it can’t have less. Read both again.`;
      return { outcome: 'undecided', findings: [line('contradicts', text)] };
    }
    if (coil.gte(low)) {
      const notIn = chosenOf(pulled, 'ok').includes('no');
      const text = notIn
        ? `${shown} at the coil, ${least} or more, and it does not pull in. It is jammed, dirty or its coil is bad.`
        : `${shown} at the coil ${confirmed(pulled) ? 'while it pulls in' : 'while it should pull in'}, inside ${range}.`;
      return { outcome: notIn ? 'not-in' : 'good', findings: [line(notIn ? 'not in' : 'good', text)] };
    }
    const loaded = scale.times(limits.loaded.value);
    const first = line('low', `${shown} at the coil is under ${least}. It chatters or stays out.`);
    if (source === null) return { outcome: 'low', findings: [first] };
    const weak = source.lt(loaded);
    const text = weak
      ? `R–C reads ${say(source, 'V')} under load, under ${say(loaded, 'V')}: the source is low. Look at tap, VA and primary.`
      : `R–C reads ${say(source, 'V')} under load, ${say(loaded, 'V')} or more: a wire or a switch between drops it.`;
    const second = finding({
      ...{ name: 'R–C', reading: say(source, 'V'), limits: `${say(loaded, 'V')} or more`, word: weak ? 'low' : 'good' },
      ...{ text, source: limits.loaded.source },
    });
    return { outcome: weak ? 'source' : 'drop', findings: [first, second] };
  },
  probe(limits) {
    const { low } = shareVolts(limits.rated.value, limits.pullIn.value, 100);
    const under = past(low, '-0.01');
    const waited = { ok: chose('yes') };
    return [
      { readings: volts({ coil: low }) },
      { readings: volts({ coil: low }), pulled: { ok: chose('yes') } },
      { readings: volts({ coil: low }), pulled: { ok: chose('no') } },
      { readings: volts({ coil: low, rc: past(limits.absent.value, '-0.01') }), pulled: { ok: chose('no') } },
      { readings: volts({ coil: low, rc: limits.absent.value }), pulled: { ok: chose('no') } },
      { readings: volts({ coil: limits.high.value }) },
      { readings: volts({ coil: past(limits.high.value, '0.01') }) },
      { readings: volts({ coil: under }) },
      { readings: volts({ coil: under, rc: limits.loaded.value }) },
      { readings: volts({ coil: under, rc: past(limits.loaded.value, '-0.01') }) },
      { readings: volts({ coil: limits.absent.value }) },
      { readings: volts({ coil: past(limits.absent.value, '-0.01') }) },
      { readings: volts({ coil: past(limits.absent.value, '-0.01') }), waited },
      { readings: volts({ coil: '24' }), rated: { volts: chose('120') } },
      { readings: volts({ coil: '24' }), rated: { volts: chose('other') } },
      {},
    ];
  },
});
