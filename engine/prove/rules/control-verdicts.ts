/** R7 for the control circuit, the supply and what stands still with everything good: by the rule, with plain arithmetic. */
import type { Conclusion, Parts } from '../../schema.ts';
import { chosen, figure, ohmsIn, SAYS_CLASS } from './evidence.ts';
import { type Answer, isElectronic, plateVolts } from './verdicts.ts';

const PULL_IN = 20.4;
const OPEN = 20;
const CLOSED = 0.5;
const NONE = 5;
const SHORT = 4;
const GROUNDED = 500_000;
/** A motor to its own frame, at the meter's volts. */
const MOTOR_FRAME = 1_000_000;
/** Share of the LRA on the nameplate. */
const NEAR_LOCKED = 0.8;
const NOTHING_DRAWN = 2;
const UNPLACED = 'read live with probes that were not placed dead';

/** A 24 V circuit has not more of itself. */
const FOREIGN = 30;
const SWITCHES = ['delay', 'lp', 'hp', 'discharge'] as const;
/** Where the 24 V circuit is read, and what of it. */
const ON_24: readonly (readonly [string, readonly string[]])[] = [
  ['strip-24', ['start', 'coil']],
  ['across-24', SWITCHES],
  ['pull-24', ['coil', 'rc']],
  ['board', ['loaded', 'yc', 'float']],
  ['arrives', ['v']],
];
/** What a reading of that circuit may be followed by where line volts are on it. */
const NOT_CONCLUDED = /^(?:control-volts-foreign|control-undecided|chatter-undecided|cable-not-retested)$/;
const OF_CONTROL =
  /^(?:control-|coil-|transformer-|thermostat-|no-call|float-switch|high-pressure-(?:open|fan)|low-pressure|delay-|call-)/;

/** C5: three pairs read in this round, and none of them to ground. */
function hasGoodWindings(answers: readonly Answer[], round: string): boolean {
  const read = answers.findLast((a) => a.place.startsWith(round) && (a.parts.cr || a.parts.uv))?.parts ?? {};
  const pairs = [read.cr ?? read.uv, read.cs ?? read.vw, read.sr ?? read.uw];
  return (
    pairs.every((pair) => (figure(pair) ?? 0) > 0) && (read.g?.kind === 'over' || (figure(read.g) ?? 0) >= 500_000)
  );
}

/** P3: the FAN section, the fan's own part, or the new one that is in; the one section of a three-phase unit is its fan's. */
function fanCapacitorRead(answers: readonly Answer[], round: string): boolean {
  const own = answers.filter((a) => a.place.startsWith(round));
  const reads = (within: RegExp, key: string): boolean =>
    own.some(({ place, parts }) => {
      const read = parts[key];
      return within.test(place) && read?.kind === 'figure' && read.unit === 'µF' && Number(read.value) > 0;
    });
  const three = answers.some((a) => SAYS_CLASS.test(a.place) && chosen(a.parts.choice).includes('three-phase'));
  return (
    reads(/./, 'fan') || reads(/\/(another|yet-another|new-other~\d+)\//, 'herm') || (three && reads(/\/run\//, 'herm'))
  );
}

/** A sentence where the record does not carry the verdict, else null. Other verdicts are not looked at here. */
export function unprovenControl(c: Conclusion, answers: readonly Answer[]): string | null {
  const round = /^round~\d+/.exec(c.place)?.[0] ?? '';
  const at = (step: string): Answer | undefined =>
    answers.findLast((a) => a.place.startsWith(round) && a.place.endsWith(`/${step}`));
  const parts = (step: string): Parts => at(step)?.parts ?? {};
  const volts = (step: string, key: string): number => Math.abs(figure(parts(step)[key]) ?? Number.NaN);
  const amps = (step: string): number => Math.abs(figure(parts(step).comp) ?? Number.NaN);
  const locked = figure(answers.findLast((a) => a.place.endsWith('/restart/plate'))?.parts.lra) ?? Number.NaN;
  const said = (step: string): string => chosen(parts(step).choice ?? parts(step).ok)[0] ?? '';
  /** The answer at this step of the same try of the same page. */
  const beside = (of: Answer | undefined, step: string): Answer | undefined =>
    of && answers.findLast((a) => a.place === `${of.place.slice(0, of.place.lastIndexOf('/'))}/${step}`);
  /** Whether the delay after a change of call was over when this was read. */
  const late = (read: Answer | undefined): boolean => waited(beside(read, 'call'), read, tryBefore(answers, read));
  const least = (of: Answer | undefined, key: string): number => Math.abs(figure(of?.parts[key]) ?? Number.NaN);
  const within = (v: number, [low, high]: readonly [number, number]): boolean => v >= low && v <= high;
  /** P3, P4: the volts of the nameplate; a lost leg leaves half of them. */
  const fed = (step: string): boolean => within(volts(step, 'v'), plateVolts(answers, c.place));
  const printed = answers.some((a) => a.place.includes('/blower/') && chosen(a.parts.volts).length > 0);
  /** Where nobody read the plate indoors, one leg may be right, or what is left of two. */
  const fedIndoors = (step: string): boolean => printed && fed(step);
  const turnsFree = said(said('spin') === 'no' ? 'freed' : 'spin') === 'done';
  /** P3: three pairs of the fan read, and none to its frame. */
  const fan = answers.findLast((a) => a.place.startsWith(round) && /\/fan~\d+\/pairs$/.test(a.place))?.parts ?? {};
  const fanRead =
    ['first', 'second', 'third'].every((key) => (figure(fan[key]) ?? 0) > 0) &&
    (fan.frame?.kind === 'over' || (ohmsIn(fan.frame) ?? 0) >= GROUNDED);
  /** The same pairs at the terminals read open, and again on zeroed leads. */
  const openTwice = (step: string): boolean => {
    const [once, again] = [step, `${step}-again`].map((one) =>
      ['cr', 'cs', 'sr', 'first', 'second', 'third'].filter((key) => parts(`terminals/${one}`)[key]?.kind === 'over'),
    );
    return once !== undefined && once.length > 0 && once.join() === again?.join();
  };
  const placed = chosen(parts('probes').ok)[0] === 'done';
  // Read with the line locked, or live where the coil has its volts from its own cabinet.
  const strip = at('strip-24') ?? at('at-coil');
  const across24 = at('across-24') ?? at('across-live');
  const board = at('board');
  /** W4: the call reaches it, the volts stand across it, none after it, after five minutes. */
  const standsOpen = (key: string, name: string): string | null => {
    const across = across24;
    if (!(least(across, key) >= OPEN)) return `${name} called open without volts across it`;
    if (!(least(strip, 'start') >= OPEN && least(strip, 'coil') < OPEN))
      return `${name} called open without a call before it and none behind it`;
    return late(strip) && late(across) ? null : `${name} called open within five minutes of a change of call`;
  };
  /** M1, M2: read bad once, and again on bright metal. */
  const contactorAgain = answers.findLast(
    (a) => a.place.startsWith(round) && /\/(?:again|contactor-again)$/.test(a.place) && a.parts.pole1,
  )?.parts;
  const contactorFirst = answers.findLast(
    (a) => a.place.startsWith(round) && /\/line$/.test(a.place) && a.parts.pole1,
  )?.parts;
  if (OF_CONTROL.test(c.verdict) && !NOT_CONCLUDED.test(c.verdict)) {
    const lines = ON_24.some(([step, keys]) => keys.some((key) => volts(step, key) > FOREIGN));
    if (lines) return 'concluded of a 24 V circuit that line volts feed';
  }
  switch (c.verdict) {
    case 'contactor-coil-open':
      return [contactorFirst, contactorAgain].every((read) => read?.coil?.kind === 'over')
        ? null
        : 'a coil called open that did not read OL twice';
    case 'contactor-coil-shorted':
      return [contactorFirst, contactorAgain].every((read) => (ohmsIn(read?.coil) ?? SHORT) < SHORT)
        ? null
        : 'a coil called shorted that did not read so twice';
    case 'contactor-contacts': {
      const bad = (read: Parts | undefined, pole: string): boolean =>
        read?.[pole]?.kind === 'over' || (ohmsIn(read?.[pole]) ?? 0) > 1;
      return ['pole1', 'pole2', 'pole3'].some((pole) => bad(contactorFirst, pole) && bad(contactorAgain, pole))
        ? null
        : 'contacts condemned that did not read bad twice';
    }
    case 'ground-gone':
      return ['comp', 'fan', 'cable'].every((key) => {
        const read = parts('split')[key];
        return read?.kind === 'over' || (ohmsIn(read) ?? 0) >= GROUNDED;
      })
        ? null
        : 'a ground called gone with a branch that nobody read';
    case 'high-pressure-open':
    case 'high-pressure-fan':
    case 'high-pressure-left-dirty':
    case 'high-pressure-unexplained':
    case 'high-pressure-not-looked-into':
      return standsOpen('hp', 'the high-pressure switch');
    case 'box-high-pressure-reset':
      return said('tripped') === 'dirty' && said('wash') === 'yes'
        ? null
        : 'a high-pressure switch called reset without a dirty condenser that was cleaned';
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
    case 'float-switch-open': {
      const across = [volts('across-float', 'float'), volts('board', 'float')].find((v) => !Number.isNaN(v));
      if (c.verdict === 'float-switch-open' && !((across ?? 0) >= OPEN))
        return 'the float called open without volts across it';
      // W6: a float that nobody read may be open as well.
      if (c.verdict !== 'float-switch-open' && !((across ?? OPEN) < NONE || said('has-float') === 'none'))
        return 'a thermostat blamed beside a float switch that nobody read';
      if (chosen(beside(board, 'probes')?.parts.ok)[0] !== 'done') return UNPLACED;
      if (!(volts('board', 'loaded') >= PULL_IN && volts('board', 'yc') < NONE))
        return 'a call missed at the board without its source, or with volts there';
      // Whatever is said of the call: the unit was off while the probes were placed.
      const placedAt = beside(board, 'probes');
      const since = Date.parse(board?.at ?? '') - Date.parse(placedAt?.at ?? '');
      return late(strip) || (late(board) && since >= 5 * 60_000)
        ? null
        : '0 V decided within five minutes of a change of call';
    }
    case 'transformer-open': {
      // W1: primary in limits, R to C nothing, fuse good, secondary open.
      if (chosen(beside(board, 'probes')?.parts.ok)[0] !== 'done') return UNPLACED;
      const later = volts('primary-too', 'primary');
      const primary = Number.isNaN(later) ? volts('board', 'primary') : later;
      const fed = [120, 208, 240].some((v) => Math.abs(primary - v) <= v * 0.1 + 1e-9);
      const dead = parts('dead-line');
      const fuse = figure(dead.fuse1);
      if (!(volts('board', 'loaded') < NONE && fed)) return 'a transformer called open without its primary in limits';
      return fuse !== null && Math.abs(fuse) < 0.5 && (dead.secondary?.kind === 'over' || dead.primary?.kind === 'over')
        ? null
        : 'a transformer called open without a good fuse, or with windings that read';
    }
    case 'control-short-found': {
      // W2: the fuse open, and a branch below 4 Ω located before the new one.
      const shorts = ['where', 'run'].some((step) => least(at(step), 'outward') < SHORT);
      return (parts('dead-line').fuse1 ?? parts('tests/line').fuse1)?.kind === 'over' && shorts
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
      const closed = ['delay', 'lp', 'hp', 'discharge'].every((key) => !(least(across24, key) >= CLOSED));
      if (!(least(strip, 'coil') < PULL_IN && closed))
        return 'a wire condemned behind a switch that did not read closed';
      return late(strip) ? null : 'a wire called open within five minutes of a change of call';
    }
    case 'control-volts-dropped':
    case 'coil-volts-dropped':
    case 'control-joint-mended': {
      // W5: too few volts under load, and the cause: a switch that takes them, or none of those read.
      const own = c.verdict === 'control-volts-dropped' ? 'strip-24' : 'pull-24';
      const least = own === 'strip-24' ? volts(own, 'start') >= OPEN : volts(own, 'rc') >= 21.6;
      const read = ['delay', 'lp', 'hp', 'discharge'].map((key) => volts('across-24', key)).filter((v) => v >= 0);
      const takes = read.some((v) => v >= CLOSED) !== (c.verdict === 'control-joint-mended');
      if (!(least && volts(own, 'coil') < PULL_IN && takes && read.every((v) => v < OPEN)))
        return 'control volts called dropped with enough at the coil, or without what takes them';
      return own === 'pull-24' || (late(strip) && late(at('across-24')))
        ? null
        : 'a drop decided within five minutes of a change of call';
    }
    case 'reversing-not-commanded': {
      // None at a valve that cooling energises may be the delay; by the record's times it is over.
      const read = at('warm/at-24');
      const none = chosen(parts('warm/wiring').choice).includes('o') && least(read, 'solenoid') < NONE;
      return !none || waited(beside(read, 'call'), read)
        ? null
        : 'a command called missing within five minutes of a change of call';
    }
    case 'contactor-jammed': {
      const coil = [volts('strip-24', 'coil'), volts('pull-24', 'coil')].some((v) => v >= PULL_IN);
      const own = parts('at-coil');
      const live = volts('at-coil', 'coil') >= Number(chosen(own.rated)[0]) * 0.85 - 1e-9 && chosen(own.ok)[0] === 'no';
      return live || (coil && said('pulled') === 'no') ? null : 'called jammed without enough volts at its coil';
    }
    case 'contact-drop': {
      // M2: a drop is one across a closed pole, with amps flowing in the same sitting.
      const [sitting, poles] = [parts('figures'), parts('poles')];
      const flows = ['comp', 'comp2', 'comp3', 'fan'].some((key) => Math.abs(figure(sitting[key]) ?? 0) >= 0.5);
      const drops = ['p1', 'p2', 'p3'].map((key) => Math.abs(figure(poles[key]) ?? 0));
      return flows && drops.some((v) => v > 1) && drops.every((v) => v < OPEN)
        ? null
        : 'a contactor condemned on its poles without a load, or on a pole that was not closed';
    }
    case 'contactor-not-in': {
      const out = at('in-yet');
      const [on, seen] = [beside(out, 'closed'), beside(out, 'out-yet') ?? out];
      if (on && seen && Date.parse(seen.at) - Date.parse(on.at) < 5 * 60_000)
        return 'a contactor called out within five minutes of power';
      return waited(out, beside(out, 'out-yet') ?? out) ? null : 'a contactor called out within five minutes of a call';
    }
    case 'fan-motor-electric':
      // A unit with an electronic fan: what was measured is the compressor's capacitor, and volts alone are no command.
      if (isElectronic(answers)) return 'an electronic fan condemned on volts and the compressor’s capacitor';
      if (!turnsFree) return 'a fan motor condemned that nobody turned by hand';
      if (!fanCapacitorRead(answers, round)) return 'a fan motor condemned without its own capacitor read';
      if (!fanRead) return 'a fan motor condemned on volts at the end of leads that nobody read through';
      return fed('feed') ? null : 'a fan motor condemned without the volts of its nameplate at its leads';
    case 'blower-motor-electric':
      if (!turnsFree) return 'a blower motor condemned that nobody turned by hand';
      return fedIndoors('feed') ? null : 'a blower motor condemned without the volts of its nameplate at its leads';
    case 'electronic-blower-suspect':
      if (!placed) return UNPLACED;
      return fedIndoors('plug') && volts('tap', 'v') >= PULL_IN
        ? null
        : 'an electronic blower suspected without its line and its command';
    case 'electronic-motor-suspect':
      if (!placed) return UNPLACED;
      return fed('line') && said('command') === 'there'
        ? null
        : 'an electronic fan suspected without its line and its command';
    case 'board-fan-relay':
      return volts('feed', 'v') < 10 && fed('board') && said('switched') === 'board'
        ? null
        : 'a board condemned without volts in, or with volts out';
    case 'compressor-seized':
      if (!hasGoodWindings(answers, round)) return 'called seized without good windings and no ground';
      if (!waited(at('stopped'), at('tries')) || !waited(at('stopped-again'), at('assisted')))
        return 'called seized within five minutes of a stop';
      // Whatever was said of the rest: the record has it under power before each try.
      if (!apart(at('figures'), at('tries')) || !apart(at('tries'), at('assisted')))
        return 'called seized on a try that the record has within minutes of the one before';
      // A rotor that stands draws its locked-rotor amps, fewer only by what the volts lack; none is an open wire.
      if (!['tries', 'assisted'].every((step) => amps(step) >= NEAR_LOCKED * locked && amps(step) >= NOTHING_DRAWN))
        return 'called seized without its locked-rotor amps in both tries';
      return ['tries', 'assisted'].every((step) => volts(step, 'v') >= plateVolts(answers, c.place)[0]) &&
        said('outcome') === 'stands'
        ? null
        : 'called seized without volts during the try and an assist';
    case 'phase-monitor-holds-off':
      return placed ? null : UNPLACED;
    case 'compressor-winding-open':
    case 'overload-stays-open':
      if (!openTwice('three') && !openTwice('pairs')) return 'a compressor condemned at its terminals on one reading';
      return said('agreed') === 'agreed' && said('shell') === 'cold'
        ? null
        : 'a compressor condemned at its terminals without a senior, or not cold';
    case 'fan-to-frame':
    case 'compressor-low-to-ground': {
      // P2, C1, P6: the branch alone, and once more past its leads; what reads low before them is a wire.
      const low = (step: string, key: string): boolean =>
        (ohmsIn(parts(step)[key]) ?? Number.POSITIVE_INFINITY) < GROUNDED;
      return low('split', c.verdict === 'fan-to-frame' ? 'fan' : 'comp') && low('beyond', 'leads')
        ? null
        : 'a motor called grounded that does not read low alone and past its leads';
    }
    case 'blower-to-frame':
      return (ohmsIn(parts('speeds').frame) ?? MOTOR_FRAME) < MOTOR_FRAME &&
        (ohmsIn(parts('beyond').leads) ?? GROUNDED) < GROUNDED
        ? null
        : 'a blower motor called grounded that does not read low past its leads';
    case 'compressor-grounded':
      return said('agreed') === 'agreed' ? null : 'a compressor called grounded with its harness in the reading';
    case 'wire-chafed':
      return parts('retest').leads?.kind === 'over' || (figure(parts('retest').leads) ?? 0) >= 2_000_000
        ? null
        : 'a mended wire that was not read again';
    case 'runs-nothing-found':
    case 'blower-runs-nothing-found':
      // What opened on heat has a cause that waiting doesn't put right.
      return ['shell', 'warm'].some((step) => said(step) === 'hot')
        ? 'nothing found after an overload that opened on heat'
        : null;
    case 'external-overload-open':
      if (said('block/shell') !== 'cold') return 'an overload outside the shell condemned on a shell that is not cold';
      return parts('line').overload?.kind === 'over' ? null : 'an overload called open that did not read OL';
    case 'neutral-not-sound': {
      const [hn, hg, ng] = [volts('line', 'hn'), volts('line', 'hg'), volts('line', 'ng')];
      return ng > 5 || (hn < 50 && hg >= 50) ? null : 'a neutral called not sound without volts on it or missing to it';
    }
    case 'fan-was-meant-to-stand': {
      const meant = ['defrost', 'cold'].includes(said('meant'));
      return meant && said('watch') === 'started' && said('cools') === 'cold'
        ? null
        : 'a fan called meant to stand that was not seen to start again, or that doesn’t cool';
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
/** Five minutes between two readings under power, but for two in which the first of them is typed. */
const apart = (one: Answer | undefined, next: Answer | undefined): boolean =>
  one === undefined || next === undefined || Date.parse(next.at) - Date.parse(one.at) >= 3 * 60_000;
/** What the try before, of the same page, said of the call. */
function tryBefore(answers: readonly Answer[], read: Answer | undefined): Answer | undefined {
  const [, page, nth] = /^(.*)~(\d+)\/[^/]+$/.exec(read?.place ?? '') ?? [];
  return answers.findLast((a) => a.place === `${page}~${Number(nth) - 1}/call`);
}
