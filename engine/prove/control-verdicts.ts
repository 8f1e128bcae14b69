/** R7 for the control circuit, the supply and what stands still with everything good: by the rule, with plain arithmetic. */
import type { Conclusion, Parts } from '../schema.ts';
import { chosen, figure } from './evidence.ts';
import { type Answer, plateVolts } from './verdicts.ts';

const PULL_IN = 20.4;
const OPEN = 20;
const CLOSED = 0.5;

/** A sentence where the record does not carry the verdict, else null. Other verdicts are not looked at here. */
export function unprovenControl(c: Conclusion, answers: readonly Answer[]): string | null {
  const round = /^round~\d+/.exec(c.place)?.[0] ?? '';
  const at = (step: string): Answer | undefined =>
    answers.findLast((a) => a.place.startsWith(round) && a.place.endsWith(`/${step}`));
  const parts = (step: string): Parts => at(step)?.parts ?? {};
  const volts = (step: string, key: string): number => Math.abs(figure(parts(step)[key]) ?? Number.NaN);
  const said = (step: string): string => chosen(parts(step).choice ?? parts(step).ok)[0] ?? '';
  switch (c.verdict) {
    case 'high-pressure-open':
    case 'high-pressure-fan':
    case 'high-pressure-unexplained':
      return volts('across-24', 'hp') >= OPEN ? null : 'the high-pressure switch called open without volts across it';
    case 'low-pressure-open':
      return volts('across-24', 'lp') >= OPEN ? null : 'the low-pressure switch called open without volts across it';
    case 'delay-stays-open':
      return volts('across-24', 'delay') >= OPEN && waited(at('call'), at('across-24'))
        ? null
        : 'the delay called open before its time was over';
    case 'thermostat-cable-mended':
    case 'thermostat-cable-open':
    case 'thermostat-or-its-cable': {
      // Asked after a call that did not arrive: within five minutes of its change that says nothing.
      const strip = at('strip-24');
      const none = volts('strip-24', 'start') < OPEN;
      return strip === undefined || !none || waited(at('call'), strip)
        ? null
        : '0 V decided within five minutes of a change of call';
    }
    case 'control-wire-open': {
      const closed = ['delay', 'lp', 'hp', 'discharge'].every((key) => !(volts('across-24', key) >= CLOSED));
      return volts('strip-24', 'coil') < OPEN && closed
        ? null
        : 'a wire condemned behind a switch that did not read closed';
    }
    case 'contactor-jammed': {
      const coil = [volts('strip-24', 'coil'), volts('pull-24', 'coil')].some((v) => v >= PULL_IN);
      return coil && said('pulled') === 'no' ? null : 'called jammed without enough volts at its coil';
    }
    case 'fan-motor-electric':
      return volts('feed', 'v') >= 100 ? null : 'a fan motor condemned without volts at its leads';
    case 'board-fan-relay':
      return volts('feed', 'v') < 10 && volts('board', 'v') >= 100
        ? null
        : 'a board condemned without volts in, or with volts out';
    case 'compressor-seized':
      return volts('tries', 'v') >= plateVolts(answers)[0] && said('assist') === 'stands'
        ? null
        : 'called seized without volts during the try and an assist';
    case 'compressor-winding-open':
    case 'overload-stays-open':
      return said('agreed') === 'agreed' && said('shell') === 'cold'
        ? null
        : 'a compressor condemned at its terminals without a senior, or not cold';
    case 'wire-chafed':
      return parts('retest').leads?.kind === 'over' || (figure(parts('retest').leads) ?? 0) >= 2_000_000
        ? null
        : 'a mended wire that was not read again';
    case 'external-overload-open':
      return parts('line').overload?.kind === 'over' ? null : 'an overload called open that did not read OL';
    case 'neutral-not-sound': {
      const [hn, hg, ng] = [volts('line', 'hn'), volts('line', 'hg'), volts('line', 'ng')];
      return ng > 5 || (hn < 50 && hg >= 50) ? null : 'a neutral called not sound without volts on it or missing to it';
    }
    case 'leg-lost': {
      const legs = ['l1g', 'l2g'].some((key) => volts('line', key) >= 50) || figure(parts('line').l2l3) !== null;
      return legs ? null : 'a leg called lost without volts on both to ground';
    }
    default:
      return null;
  }
}

/** Whether the delay after a change of call is over, by what was said or by the times of the record. */
function waited(call: Answer | undefined, read: Answer | undefined): boolean {
  if (call === undefined || read === undefined) return false;
  if (chosen(call.parts.choice)[0] === 'earlier') return true;
  return Date.parse(read.at) - Date.parse(call.at) >= 5 * 60_000;
}
