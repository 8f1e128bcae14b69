/** R7 for the control circuit, the supply and what stands still with everything good: by the rule, with plain arithmetic. */
import type { Conclusion, Parts } from '../schema.ts';
import { chosen, figure } from './evidence.ts';
import { type Answer, plateVolts } from './verdicts.ts';

const PULL_IN = 20.4;
const OPEN = 20;
const CLOSED = 0.5;
const NONE = 5;
const SHORT = 4;

/** C5: three pairs read in this round, and none of them to ground. */
function hasGoodWindings(answers: readonly Answer[], round: string): boolean {
  const read = answers.findLast((a) => a.place.startsWith(round) && (a.parts.cr || a.parts.uv))?.parts ?? {};
  const pairs = [read.cr ?? read.uv, read.cs ?? read.vw, read.sr ?? read.uw];
  return (
    pairs.every((pair) => (figure(pair) ?? 0) > 0) && (read.g?.kind === 'over' || (figure(read.g) ?? 0) >= 500_000)
  );
}

/** A sentence where the record does not carry the verdict, else null. Other verdicts are not looked at here. */
export function unprovenControl(c: Conclusion, answers: readonly Answer[]): string | null {
  const round = /^round~\d+/.exec(c.place)?.[0] ?? '';
  const at = (step: string): Answer | undefined =>
    answers.findLast((a) => a.place.startsWith(round) && a.place.endsWith(`/${step}`));
  const parts = (step: string): Parts => at(step)?.parts ?? {};
  const volts = (step: string, key: string): number => Math.abs(figure(parts(step)[key]) ?? Number.NaN);
  const said = (step: string): string => chosen(parts(step).choice ?? parts(step).ok)[0] ?? '';
  /** The answer at this step of the same try of the same page. */
  const beside = (of: Answer | undefined, step: string): Answer | undefined =>
    of && answers.findLast((a) => a.place === `${of.place.slice(0, of.place.lastIndexOf('/'))}/${step}`);
  /** Whether the delay after a change of call was over when this was read. */
  const late = (read: Answer | undefined): boolean => waited(beside(read, 'call'), read, tryBefore(answers, read));
  const least = (of: Answer | undefined, key: string): number => Math.abs(figure(of?.parts[key]) ?? Number.NaN);
  const strip = at('strip-24');
  const board = at('board');
  /** W4: the call reaches it, the volts stand across it, none after it, after five minutes. */
  const standsOpen = (key: string, name: string): string | null => {
    const across = at('across-24');
    if (!(least(across, key) >= OPEN)) return `${name} called open without volts across it`;
    if (!(volts('strip-24', 'start') >= OPEN && volts('strip-24', 'coil') < OPEN))
      return `${name} called open without a call before it and none behind it`;
    return late(strip) && late(across) ? null : `${name} called open within five minutes of a change of call`;
  };
  switch (c.verdict) {
    case 'high-pressure-open':
    case 'high-pressure-fan':
    case 'high-pressure-unexplained':
    case 'high-pressure-not-looked-into':
      return standsOpen('hp', 'the high-pressure switch');
    case 'low-pressure-open':
      return standsOpen('lp', 'the low-pressure switch');
    case 'discharge-thermostat-open':
      return standsOpen('discharge', 'the discharge thermostat');
    case 'delay-stays-open':
      return standsOpen('delay', 'the delay');
    case 'no-call-outdoors':
      return volts('strip-24', 'start') < OPEN && late(strip)
        ? null
        : '0 V decided within five minutes of a change of call';
    case 'thermostat-cable-mended':
    case 'thermostat-cable-open':
      // W6: 24 V at one end and none at the other, and a delay takes them away as well.
      if (!(volts('board', 'yc') >= OPEN)) return 'a cable called open without volts where it begins';
      if (!(volts('strip-24', 'start') < OPEN)) return 'a cable called open without a reading where it ends';
      if (
        c.verdict === 'thermostat-cable-mended' &&
        c.place.includes('/outdoor-end/') &&
        !(volts('arrives', 'v') >= PULL_IN)
      )
        return 'a cable’s end called mended without its volts there';
      return late(strip) ? null : '0 V decided within five minutes of a change of call';
    case 'thermostat-or-its-cable':
    case 'float-switch-open':
      if (c.verdict === 'float-switch-open' && !(volts('board', 'float') >= OPEN))
        return 'the float called open without volts across it';
      if (!(volts('board', 'loaded') >= PULL_IN && volts('board', 'yc') < NONE))
        return 'a call missed at the board without its source, or with volts there';
      return late(strip) || late(board) ? null : '0 V decided within five minutes of a change of call';
    case 'transformer-open': {
      // W1: primary in limits, R to C nothing, fuse good, secondary open.
      const primary = volts('board', 'primary');
      const fed = [120, 208, 240].some((v) => Math.abs(primary - v) <= v * 0.1 + 1e-9);
      const dead = parts('dead-line');
      const fuse = figure(dead.fuse1);
      if (!(volts('board', 'loaded') < NONE && fed)) return 'a transformer called open without its primary in limits';
      return fuse !== null && Math.abs(fuse) < 0.5 && dead.secondary?.kind === 'over'
        ? null
        : 'a transformer called open without a good fuse, or with a secondary that reads';
    }
    case 'control-short-found': {
      // W2: the fuse open, and a branch below 4 Ω located before the new one.
      const shorts = ['where', 'run'].some((step) => least(at(step), 'outward') < SHORT);
      return parts('dead-line').fuse1?.kind === 'over' && shorts
        ? null
        : 'a new board fuse without a blown one and a short that was located';
    }
    case 'thermostat-cable-shorted':
    case 'board-holds-the-call': {
      const held = volts('bare', 'v');
      const fits = c.verdict === 'board-holds-the-call' ? held >= PULL_IN : held < NONE;
      return said('pulled') === 'done' && volts('off-24', 'v') >= PULL_IN && fits
        ? null
        : 'a call located without Y off the board, or without its volts';
    }
    case 'control-wire-open': {
      const closed = ['delay', 'lp', 'hp', 'discharge'].every((key) => !(volts('across-24', key) >= CLOSED));
      if (!(volts('strip-24', 'coil') < OPEN && closed))
        return 'a wire condemned behind a switch that did not read closed';
      return late(strip) ? null : 'a wire called open within five minutes of a change of call';
    }
    case 'contactor-jammed': {
      const coil = [volts('strip-24', 'coil'), volts('pull-24', 'coil')].some((v) => v >= PULL_IN);
      return coil && said('pulled') === 'no' ? null : 'called jammed without enough volts at its coil';
    }
    case 'fan-motor-electric':
      if (said('spin') !== 'done') return 'a fan motor condemned that nobody turned by hand';
      return volts('feed', 'v') >= 100 ? null : 'a fan motor condemned without volts at its leads';
    case 'blower-motor-electric':
      return said('spin') === 'done' ? null : 'a blower motor condemned that nobody turned by hand';
    case 'board-fan-relay':
      return volts('feed', 'v') < 10 && volts('board', 'v') >= 100 && said('switched') === 'board'
        ? null
        : 'a board condemned without volts in, or with volts out';
    case 'compressor-seized':
      if (!hasGoodWindings(answers, round)) return 'called seized without good windings and no ground';
      if (!waited(at('stopped'), at('tries')) || !waited(at('stopped-again'), at('assisted')))
        return 'called seized within five minutes of a stop';
      return ['tries', 'assisted'].every((step) => volts(step, 'v') >= plateVolts(answers, c.place)[0]) &&
        said('outcome') === 'stands'
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
    case 'supply-out': {
      // S2: one reading doesn't suffice, and a drop shows only while something draws.
      const again = parts('repeat');
      const drew = ['runs', 'starts'].includes(chosen(again.load)[0] ?? '');
      const [unit, feed] = [volts('repeat', 'unit'), volts('repeat', 'feed')];
      const lost = ['p1', 'p2', 'p3'].reduce((sum, key) => sum + Math.abs(figure(again[key]) ?? 0), 0);
      if (!(unit > 0)) return 'a supply called out on one reading';
      // Out before the means as well, or read on both sides while something drew.
      const [low, high] = plateVolts(answers, c.place);
      const before = feed < low || feed > high || Math.abs(unit - feed) < 0.1 * unit;
      return (drew && (feed > 0 || lost > 0)) || before ? null : 'a supply called out and not located';
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
function waited(call: Answer | undefined, read: Answer | undefined, before?: Answer): boolean {
  if (call === undefined || read === undefined) return false;
  // A call that was changed at the try before, or nobody knew when, is no older than that.
  const begun = before && chosen(before.parts.choice)[0] !== 'earlier' ? before : call;
  if (begun === call && chosen(call.parts.choice)[0] === 'earlier') return true;
  return Date.parse(read.at) - Date.parse((chosen(call.parts.choice)[0] === 'earlier' ? begun : call).at) >= 5 * 60_000;
}
/** What the try before, of the same page, said of the call. */
function tryBefore(answers: readonly Answer[], read: Answer | undefined): Answer | undefined {
  const [, page, nth] = /^(.*)~(\d+)\/[^/]+$/.exec(read?.place ?? '') ?? [];
  return answers.findLast((a) => a.place === `${page}~${Number(nth) - 1}/call`);
}
