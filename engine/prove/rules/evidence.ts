/**
 * What the record proves about an isolation, read from its entries alone and by the rule, not by the page: who is fit,
 * what is locked, which line was between its own two provings, what was left in each capacitor, and what undid it.
 * Shares no code with the fold or the judgements; the figures of the rules stand here a second time on purpose.
 */
import type { Entry, Parts, Value } from '../../schema.ts';

export interface Evidence {
  readonly fit: boolean;
  readonly means: boolean;
  readonly locked: boolean;
  readonly look: number | null;
  /** What the look showed of the run capacitor’s sections. */
  readonly print: 'one' | 'two' | null;
  readonly terminals: string;
  readonly line: boolean;
  readonly residual: boolean;
  /** After the age alone: the lock has to be confirmed with the line. */
  readonly again: boolean;
  /** The line said so. Where that line stops counting, the lock has to be confirmed again. */
  readonly confirmed: boolean;
  readonly holder: string | null;
  readonly lastAt: number;
  readonly stated: number;
  readonly secondFeed: boolean;
  readonly neutral: boolean;
  /** Three lines were named at the means. */
  readonly three: boolean;
  /** An inverter's bus read within its limit, between two proofs of the meter on DC. */
  readonly bus: boolean;
  /** When it was last said to be off so that an electronic motor's bus can empty; null where power was on since. */
  readonly offAt: number | null;
  /** Five minutes after that somebody said that they were over. */
  readonly rested: boolean;
  /** Pairs of the last line that read between 5 and 50 V. */
  readonly between: readonly string[];
  readonly unitClass: string | null;
  /** What the insulation is tested with, as it was said last. */
  readonly tester: string;
  /** An insulation test put its volts on a winding, and no residual within its limit was read since. */
  readonly wound: boolean;
  /** What is in a walk-in or reach-in was named, and does not burn. */
  readonly calm: boolean;
  /** In this round the coil was said to be on 24 V from another cabinet. */
  readonly apart: boolean;
  /** What the last insulation test allows: a start after a trip, or none. */
  readonly insulated: boolean;
  /** The compressor read low to ground at its own leads in this round. */
  readonly grounded: boolean;
  /** Which gate each answer stood for, so that taking one back can be followed. */
  readonly seqs: Readonly<Record<number, string>>;
}
export const NOTHING: Evidence = {
  fit: false,
  means: false,
  locked: false,
  look: null,
  print: null,
  terminals: '',
  line: false,
  residual: false,
  again: false,
  confirmed: false,
  holder: null,
  lastAt: 0,
  stated: 0,
  secondFeed: false,
  neutral: false,
  three: false,
  bus: false,
  offAt: null,
  rested: false,
  between: [],
  unitClass: null,
  tester: '',
  wound: false,
  calm: false,
  apart: false,
  insulated: false,
  grounded: false,
  seqs: {},
};

const STATED: Readonly<Record<string, number>> = {
  outlet: 120,
  line240: 240,
  line230: 230,
  line208: 208,
  unit120: 120,
  unit240: 240,
};
export const chosen = (v: Value | undefined): readonly string[] => (v?.kind === 'choice' ? v.chosen : []);
export const figure = (v: Value | undefined): number | null => (v?.kind === 'figure' ? Number(v.value) : null);
/** Class A1 of ASHRAE 34: what is known here not to burn. */
const A1: readonly string[] = ['r-22', 'r-134a', 'r-404a', 'r-410a'];
/** A resistance in Ω, in whichever unit it was typed. */
export const ohmsIn = (v: Value | undefined): number | null =>
  v?.kind === 'figure' ? Number(v.value) * (v.unit === 'MΩ' ? 1_000_000 : 1) : null;
const LINES = ['l1l2', 'l1l3', 'l2l3', 'l1g', 'l2g', 'l3g'];
const PAIRS = [...LINES, 'hn', 'hg', 'ng', 't1g', 't2g', 't3g', 'x12', 'x1g', 'x2g'];

/** Kinds of unit, and of a blower's drive, with a run capacitor: none seen there is one not found. */
const RUN_CAPACITOR: Readonly<Record<Cabinet, readonly string[]>> = {
  outdoor: ['psc', 'ecm'],
  indoor: ['psc'],
  inverter: [],
};
/** All that R1 asks for, of this person, at this minute of this record. */
export function isDead(e: Evidence, by: string, at: number, cabinet: Cabinet = 'outdoor'): string | null {
  if (!e.fit) return 'nobody said they and the meter are fit';
  if (!e.means) return 'the means are not named';
  if (!e.locked) return 'nothing is locked';
  if (!e.line) return 'no line of readings between two good provings';
  if (cabinet === 'inverter' && !e.bus) return 'no reading of the bus within its limit';
  if (cabinet !== 'inverter' && e.look === null) return 'nobody counted the capacitors';
  if (e.look === 0 && !e.residual && RUN_CAPACITOR[cabinet].includes(e.unitClass ?? ''))
    return 'no capacitor was seen where a motor needs one';
  if ((e.look ?? 0) > 0 && !e.residual) return 'no residual line within its limit';
  if (cabinet === 'indoor' && e.unitClass === 'ecm' && !e.rested)
    return 'an electronic motor’s bus that has not rested since power was on';
  if (e.holder !== by) return `the lock is ${e.holder ?? 'nobody'}’s`;
  if (at - e.lastAt > 30 * 60_000) return 'the isolation is older than 30 minutes';
  return null;
}

/** The evidence of each cabinet. Hands in one are never covered by what was proved of the other. */
export type Watched = Readonly<Record<Cabinet, Evidence>>;
export const CABINETS = ['outdoor', 'indoor', 'inverter'] as const;
export type Cabinet = (typeof CABINETS)[number];
export const UNWATCHED: Watched = { outdoor: NOTHING, indoor: NOTHING, inverter: NOTHING };

/**
 * By the page, not by the compiler: the blower's page and that of the source have their hands in the indoor unit, the
 * inverter's in a unit with a bus, every other in the outdoor one, and so has what leads back out of them. The innermost
 * page counts.
 */
export function cabinetOf(place: string): Cabinet {
  if (place.startsWith('dead:'))
    return (/^dead:(indoor|inverter)\//.exec(place)?.[1] as Cabinet | undefined) ?? 'outdoor';
  if (/(^|\/)inverter\//.test(place)) return 'inverter';
  const inner = /^(?:.*\/)?(blower|source|outdoors|outdoor-end)\//.exec(place)?.[1] ?? 'outdoors';
  return inner.startsWith('outdoor') ? 'outdoor' : 'indoor';
}

export const followAll = (all: Watched, entry: Entry): Watched => ({
  outdoor: follow(all.outdoor, entry, 'outdoor'),
  indoor: follow(all.indoor, entry, 'indoor'),
  inverter: follow(all.inverter, entry, 'inverter'),
});

function follow(e: Evidence, entry: Entry, cabinet: Cabinet): Evidence {
  switch (entry.kind) {
    case 'answered':
      return answered(e, entry, cabinet);
    case 'voided':
      if (entry.body.reason === 'age') return { ...noLine(e), again: true };
      return entry.body.reason === 'offline' ? undone(e) : powered(undone(e));
    case 'alarmed':
      return powered(undone(e));
    case 'handed-over':
      return { ...powered(undone(e)), fit: false, means: false, holder: null };
    case 'acknowledged':
      return e.holder === null && entry.by !== '' ? { ...e, holder: entry.by } : e;
    case 'withdrawn':
      return withdrawn(e, entry.body.of);
    case 'amended': {
      const { parts } = entry.body;
      if (e.seqs[entry.body.of] === 'label') return secondSection(e, parts);
      if (e.seqs[entry.body.of] === 'emptied')
        return { ...e, wound: e.wound || !windingIn({ ...EMPTY_WINDING, ...parts }) };
      if (e.look === null || e.seqs[entry.body.of] !== 'look') return e;
      const look = figure(parts.count) ?? e.look;
      const seen = { print: printed(parts.print) ?? e.print, terminals: chosen(parts.terminals)[0] ?? e.terminals };
      const more = look > e.look || (isOne(e) && !isOne(seen));
      return { ...e, look, ...seen, ...(more ? noLine(e) : {}) };
    }
    case 'approved':
      return entry.body.what === 'lock-alternative' && entry.body.cabinet === cabinet && e.means ? lockedAnew(e) : e;
    default:
      return e;
  }
}

/** R3 and R2: power, lock, emergency, live work. From the lock on, everything again. */
const undone = (e: Evidence): Evidence => ({
  ...noLine(e),
  locked: false,
  look: null,
  again: false,
});
/** A lock that is asked about itself needs no confirming. */
const lockedAnew = (e: Evidence): Evidence => ({ ...e, locked: true, again: false, confirmed: false });
/** What a line proved, and what it confirmed, goes with it. */
const noLine = (e: Evidence): Evidence => ({
  ...e,
  line: false,
  residual: false,
  bus: false,
  again: e.again || e.confirmed,
  confirmed: false,
});

/** Power was on, or may have been: an electronic motor’s bus is full again. */
const powered = (e: Evidence): Evidence => ({ ...e, offAt: null, rested: false });

function withdrawn(e: Evidence, of: number): Evidence {
  switch (e.seqs[of]) {
    case 'fit':
      return { ...undone(e), fit: false, means: false };
    case 'means':
      return { ...undone(e), means: false };
    case 'locked':
      return undone(e);
    case 'look':
      return { ...noLine(e), look: null };
    case 'line':
      return noLine(e);
    case 'bridge':
      return { ...e, line: false, residual: false, bus: false };
    case 'residual':
      return { ...e, residual: false };
    case 'bus':
      return { ...e, bus: false };
    // Taken back, a test is none: it is taken anew with the same leads on.
    case 'megohms':
      return { ...e, wound: false, insulated: false };
    case 'emptied':
      return { ...e, wound: true };
    default:
      return e;
  }
}

function answered(before: Evidence, entry: Entry & { kind: 'answered' }, cabinet: Cabinet): Evidence {
  let e = before;
  const { parts, place, skipped, offline } = entry.body;
  // Whatever is said of the wait, the times of the record decide.
  if (cabinetOf(place) === cabinet && /\/(rest|longer)$/.test(place) && e.offAt !== null)
    e = { ...e, rested: Date.parse(entry.at) - e.offAt >= 5 * 60_000 };
  if (skipped !== undefined || offline) return e;
  const name = place.slice(place.lastIndexOf('/') + 1);
  const own = cabinetOf(place) === cabinet;
  const gate = own && place.startsWith('dead:');
  const by = gate && e.holder === null ? entry.by : e.holder;
  const at = Date.parse(entry.at);
  const lasting = { ...e, holder: by, lastAt: by === entry.by ? at : e.lastAt };
  const known = (gate: string): Evidence['seqs'] => ({ ...lasting.seqs, [entry.seq]: gate });
  if (own && parts.winding)
    return { ...undone(lasting), wound: lasting.wound && !windingIn(parts), seqs: known('emptied') };
  if (own && parts.megohms) {
    const volts = lasting.tester !== 'meter';
    const holds = parts.megohms.kind === 'over' || (ohmsIn(parts.megohms) ?? 0) >= 500_000 - 1e-6;
    return { ...lasting, wound: lasting.wound || volts, insulated: volts && holds, seqs: known('megohms') };
  }
  if (own && place.endsWith('/split') && parts.comp)
    return { ...lasting, grounded: (ohmsIn(parts.comp) ?? Number.POSITIVE_INFINITY) < 500_000 - 1e-6 };
  if (/\/box\/(goods|plate)$/.test(place)) return { ...lasting, calm: A1.includes(chosen(parts.refrigerant)[0] ?? '') };
  if (own && name === 'off' && chosen(parts.choice)[0] === 'now') return { ...powered(lasting), offAt: at };
  if (name === 'observation') return { ...lasting, insulated: false, grounded: false, apart: false };
  if (own && name === 'coil' && parts.choice) return { ...lasting, apart: chosen(parts.choice)[0] === '24' };
  if (own && parts.test) return { ...lasting, tester: chosen(parts.test)[0] ?? '' };
  if (isLive(place, parts) || turnsOn(place, parts)) return own ? powered(undone(lasting)) : undone(lasting);
  if (isTooMuchForControl(place, parts)) return undone(lasting);
  if (cabinet === 'indoor' ? own && /(^|-)drive$/.test(name) : SAYS_CLASS.test(name))
    return { ...lasting, unitClass: chosen(parts.choice)[0] ?? null };
  if (own && OWN_PRINT.test(place)) return { ...secondSection(lasting, parts), seqs: known('label') };
  if (!gate) return lasting;
  if (name === 'fit' || name === 'unfit')
    return { ...lasting, fit: chosen(parts.ok)[0] === 'yes' || chosen(parts.ready)[0] === 'yes', seqs: known('fit') };
  if (name === 'means') {
    const source = chosen(parts.source)[0] ?? '';
    return {
      ...lasting,
      means: chosen(parts.means).length > 0,
      stated: STATED[source] ?? figure(parts.stated) ?? 0,
      secondFeed: !chosen(parts.feeds).includes('none'),
      neutral: chosen(parts.supply)[0] === 'neutral',
      three: chosen(parts.supply)[0] === 'three',
      seqs: known('means'),
    };
  }
  if (name === 'locked' || name === 'tag') {
    const answer = chosen(parts.ok)[0];
    if (answer === 'no') return { ...undone(lasting), means: false };
    return { ...(answer === 'yes' ? lockedAnew(lasting) : { ...lasting, locked: false }), seqs: known('locked') };
  }
  if (name === 'look') return { ...lasting, look: figure(parts.count), ...sections(parts), seqs: known('look') };
  if (parts.pn) return { ...lasting, bus: busIn(parts), seqs: known('bus') };
  if (parts.batteryBefore)
    return { ...lasting, residual: residualIn(parts, e.look ?? 0, isOne(e)), seqs: known('residual') };
  if (parts.before) return line(lasting, parts, name === 'bridge', entry.seq, cabinet);
  return lasting;
}

function line(e: Evidence, parts: Parts, bridged: boolean, seq: number, cabinet: Cabinet): Evidence {
  const proves = (v: Value | undefined): boolean => {
    const volts = Math.abs(figure(v) ?? 0);
    return volts >= 100 && Math.abs(volts - e.stated) <= e.stated * 0.1 + 1e-9;
  };
  const proved = proves(parts.before) && proves(parts.after);
  const read = PAIRS.filter((p) => figure(parts[p]) !== null);
  const size = (p: string): number => Math.abs(figure(parts[p]) ?? 0);
  const confirmed = chosen(parts.still)[0] === 'yes';
  const none = noLine(e);
  if (bridged) {
    const all = e.between.length > 0 && e.between.every((p) => figure(parts[p]) !== null && size(p) <= 5);
    if (!proved) return none;
    return all
      ? { ...e, line: true, again: false, seqs: { ...e.seqs, [seq]: 'bridge' } }
      : { ...undone(none), means: false };
  }
  if (read.some((p) => size(p) >= 50)) return { ...undone(none), means: false };
  const due = [
    ...(e.three || (cabinet === 'outdoor' && e.unitClass === 'three-phase')
      ? [...LINES, 't1g', 't2g', 't3g']
      : e.neutral
        ? ['hn', 'hg', 'ng', 't1g']
        : ['l1l2', 'l1g', 'l2g', 't1g', 't2g']),
    ...(e.secondFeed ? ['x12', 'x1g', 'x2g'] : []),
  ];
  if (!proved || (none.again && !confirmed) || due.some((p) => figure(parts[p]) === null)) return none;
  const between = read.filter((p) => size(p) > 5);
  if (between.length > 0) return { ...none, between, confirmed, seqs: { ...e.seqs, [seq]: 'line' } };
  return {
    ...e,
    line: true,
    again: false,
    confirmed,
    residual: false,
    bus: false,
    between: [],
    seqs: { ...e.seqs, [seq]: 'line' },
  };
}

/** Questions for the print of the run capacitor itself, not of a second one, a new one or the diagram's. */
const OWN_PRINT = /^(?!.*(another\/|(new-other|with-motor)~|\/motor\/)).*\/(wires|print|diagram|rating)$/;
/** One section was discharged, and now the print shows two: nobody knows what is left in the other. */
const secondSection = (e: Evidence, parts: Parts): Evidence =>
  isOne(e) && printed(parts.print) === 'two' ? { ...noLine(e), look: null } : e;
const printed = (v: Value | undefined): Evidence['print'] =>
  v?.kind !== 'label' ? null : v.label.fan === null ? 'one' : 'two';
const sections = ({ print, terminals }: Parts): Pick<Evidence, 'print' | 'terminals'> => ({
  print: printed(print),
  terminals: chosen(terminals)[0] ?? '',
});
/** A print with one value, or two terminals where no print was read; three terminals beside it, and it is not. */
export const isOne = ({ print, terminals }: Pick<Evidence, 'print' | 'terminals'>): boolean =>
  terminals !== 'three' && (print === null ? terminals === 'two' : print === 'one');

const proves9V = (parts: Parts): boolean =>
  [parts.batteryBefore, parts.batteryAfter].every((v) => {
    const volts = Math.abs(figure(v) ?? 0);
    return volts >= 7 && volts <= 10;
  });
const busIn = (parts: Parts): boolean =>
  proves9V(parts) && figure(parts.pn) !== null && Math.abs(figure(parts.pn) ?? 99) <= 5;

/** 8.7: what an insulation test left on a winding, between two proofs of the meter on DC. */
const windingIn = (parts: Parts): boolean =>
  proves9V(parts) && figure(parts.winding) !== null && Math.abs(figure(parts.winding) ?? 99) <= 5;
/** What an amended line has where nothing was changed in it. */
const EMPTY_WINDING: Parts = Object.fromEntries(
  [['batteryBefore', '9'] as const, ['winding', '0'] as const, ['batteryAfter', '9'] as const].map(([key, value]) => [
    key,
    { kind: 'figure', value, unit: 'V', typed: value },
  ]),
);

function residualIn(parts: Parts, count: number, one: boolean): boolean {
  const battery = proves9V(parts);
  const due = [...(one ? ['hc'] : ['hc', 'fc', 'hf']), ...['c2', 'c3', 'c4'].slice(0, Math.max(0, count - 1))];
  const low = due.every((k) => figure(parts[k]) !== null && Math.abs(figure(parts[k]) ?? 99) <= 5);
  const [hc, fc, hf] = ['hc', 'fc', 'hf'].map((k) => figure(parts[k]) ?? 0) as [number, number, number];
  const agree = [hc - fc, Math.abs(hc) - Math.abs(fc)].some((d) => Math.abs(Math.abs(hf) - Math.abs(d)) <= 0.5 + 1e-9);
  return battery && low && (one || agree);
}

/** Hands or leads inside: µF, Ω or MΩ read, or an act done. */
export const isInside = (place: string, parts: Parts): boolean =>
  !place.startsWith('dead:') &&
  (Object.values(parts).some((v) => (v.kind === 'figure' && ['µF', 'Ω', 'MΩ'].includes(v.unit)) || v.kind === 'over') ||
    chosen(parts.ok).includes('done'));
/** Where the kind of the outdoor unit is said: before its pages, or before the source of the 24 V is sought indoors. */
export const SAYS_CLASS = /(^|\/)(class|source-kind)$/;
/** By its name: a reading on the 24 V circuit stands at a step that says so. */
const isOn24 = (place: string): boolean => /24$/.test(place);
export const isControl = (place: string, parts: Parts): boolean =>
  isOn24(place) && Object.values(parts).some((v) => v.kind === 'figure' && v.unit === 'V');
/** More than 30 V on a control terminal, or more than 5 V on a line terminal that was read beside it. */
const isTooMuchForControl = (place: string, parts: Parts): boolean =>
  isOn24(place) &&
  Object.entries(parts).some(
    ([k, v]) => v.kind === 'figure' && v.unit === 'V' && Math.abs(Number(v.value)) > (k === 'l1l2' ? 5 : 30),
  );
/** By the step's name: closed up or the probes placed, people clear, and then the lock comes off and power goes on. */
export const turnsOn = (place: string, parts: Parts): boolean =>
  /\/(probes|closed|shut|qualified)$|(^|\/)(supply|runs-on\/source)\/ready$|coil-live~\d+\/call$|\/breaker\/panel$/.test(
    place,
  ) && ['yes', 'done', 'now', 'earlier'].includes(chosen(parts.ok ?? parts.choice)[0] ?? '');
/** Volts or amps read outside make-dead, the nameplate's own figures and those of the 24 V circuit apart. */
export const isLive = (place: string, parts: Parts): boolean =>
  !place.startsWith('dead:') &&
  !isOn24(place) &&
  Object.entries(parts).some(
    ([k, v]) =>
      v.kind === 'figure' && ['V', 'A'].includes(v.unit) && !['rla', 'lra', 'fla', 'mca', 'mop', 'rating'].includes(k),
  );
