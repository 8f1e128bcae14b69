/** Limits and what is in force, for the tests of judgements. The manual's own limits live with the flows. */
import type { Force, Limit } from '../../engine/judgements/judgement.ts';
import { figure } from '../../engine/quantity.ts';
import type {
  CapacitorLabel,
  Meter,
  Parts,
  Past,
  Settings,
  StockItem,
  Truck,
  Unit,
  Value,
} from '../../engine/schema.ts';

const limit = (value: string, unit: string): Limit => ({ value, unit, source: 'set for this test' });
const stated = {
  sourceMin: limit('100', 'V'),
  sourceWithin: limit('10', '%'),
  outlet: limit('120', 'V'),
  line208: limit('208', 'V'),
  line230: limit('230', 'V'),
  line240: limit('240', 'V'),
  unit120: limit('120', 'V'),
  unit240: limit('240', 'V'),
};
const toGround = { grounded: limit('0.5', 'MΩ'), clear: limit('2', 'MΩ') };
const ohmmeter = { percent: limit('1', '%'), counts: limit('3', 'count'), resolution: limit('0.1', 'Ω') };
const ground = {
  ...toGround,
  volts: limit('120', 'V'),
  gfci: limit('6', 'mA'),
  breaker: limit('15', 'A'),
  beside: limit('10', '%'),
};
const plateVolts = {
  low: limit('197', 'V'),
  lowThree: limit('187', 'V'),
  high: limit('253', 'V'),
  ratedWithin: limit('10', '%'),
};
const running = {
  ...plateVolts,
  linesApart: limit('5', '%'),
  legsApart: limit('10', '%'),
  boxFall: limit('2', '°F'),
  standing: limit('2', 'A'),
  few: limit('40', '% of RLA'),
  fewFan: limit('10', '% of FLA'),
  nearLocked: limit('0.8', 'share of LRA'),
  mccRatio: limit('1.56', 'times RLA'),
  idle: limit('0.5', 'A'),
  dropAsk: limit('3', 'V'),
  notIn: limit('20', 'V'),
  sag: limit('10', '%'),
  splitLow: limit('14', 'Δ°F'),
  splitHigh: limit('23', 'Δ°F'),
};
const heat = {
  caution: limit('80', '°F'),
  extremeCaution: limit('90', '°F'),
  danger: limit('103', '°F'),
  extremeDanger: limit('125', '°F'),
  assumedHumidity: limit('50', '%'),
  coldest: limit('-20', '°F'),
  hottest: limit('140', '°F'),
};
const AIR = {
  within: limit('3', 'Δ°F'),
  plainLow: limit('16', 'Δ°F'),
  plainHigh: limit('22', 'Δ°F'),
  coolest: limit('60', '°F'),
  warmest: limit('95', '°F'),
  cfmPerTon: limit('400', 'CFM'),
  leavingHumidity: limit('90', '%'),
  capacityPerDegree: limit('1.75', '% per °F'),
  dryCoil: limit('90', '%'),
};
export const LIMITS = {
  absence: { dead: limit('5', 'V'), live: limit('50', 'V'), ...stated },
  bridge: { dead: limit('5', 'V'), ...stated },
  residual: {
    batteryMin: limit('7', 'V'),
    batteryMax: limit('10', 'V'),
    residual: limit('5', 'V'),
    agree: limit('0.5', 'V'),
  },
  hold: {
    residual: limit('5', 'V'),
    ohms: limit('20000', 'Ω'),
    floor: limit('5', 's'),
    unknown: limit('10', 's'),
    unknownStart: limit('30', 's'),
    watts: limit('5', 'W'),
  },
  capacitors: {},
  more: { than: limit('1', 'count') },
  'print-sections': {},
  motors: {},
  substitutes: { volts: limit('440', 'V') },
  diagram: {},
  history: { season: limit('180', 'days') },
  'contact-drop': {
    look: limit('0.5', 'V'),
    replace: limit('1', 'V'),
    open: limit('20', 'V'),
    idle: limit('0.5', 'A'),
  },
  'new-part': {
    volts: limit('440', 'V'),
    fail: limit('1', 'MΩ'),
    clear: limit('20', 'MΩ'),
    habit: limit('10', '%'),
  },
  known: {},
  sight: {},
  tabs: {},
  'section-values': { openShare: limit('2', '%'), habit: limit('10', '%') },
  'case-leak': { fail: limit('1', 'MΩ'), clear: limit('20', 'MΩ') },
  'section-ohms': { shorted: limit('2', 'Ω') },
  restart: running,
  'blower-restart': running,
  'compressor-windings': { ...ohmmeter, ...toGround, equal: limit('5', '%') },
  'blower-windings': { ...ohmmeter, grounded: limit('1', 'MΩ'), clear: limit('5', 'MΩ') },
  'fan-windings': { ...ohmmeter, grounded: limit('1', 'MΩ'), clear: limit('5', 'MΩ') },
  'three-windings': { ...ohmmeter, ...toGround, equal: limit('5', '%') },
  'loads-to-ground': ground,
  'leads-to-ground': ground,
  insulation: {
    scroll: limit('0.5', 'MΩ'),
    reciprocating: limit('2', 'MΩ'),
    motor: limit('1', 'MΩ'),
    testVolts: limit('500', 'V'),
    good: limit('100', 'MΩ'),
    fair: limit('50', 'MΩ'),
    watch: limit('20', 'MΩ'),
    at40: limit('5', 'MΩ'),
  },
  'winding-residual': {
    residual: limit('5', 'V'),
    batteryMin: limit('7', 'V'),
    batteryMax: limit('10', 'V'),
  },
  nameplate: {
    ratioLow: limit('3', 'times RLA'),
    ratioHigh: limit('9', 'times RLA'),
    usualLow: limit('4', 'times RLA'),
    usualHigh: limit('8', 'times RLA'),
    mcaWithin: limit('5', '%'),
  },
  supply: {
    low: limit('197', 'V'),
    lowScroll: limit('188', 'V'),
    lowThree: limit('187', 'V'),
    high: limit('253', 'V'),
    rated115: limit('115', 'V'),
    ratedWithin: limit('10', '%'),
    present: limit('50', 'V'),
    neutral: limit('5', 'V'),
    sag: limit('10', '%'),
    contacts: limit('3', 'V'),
    report: limit('2', '%'),
    stop: limit('5', '%'),
    singlePhase: limit('65', '%'),
    highLeg: limit('10', '%'),
  },
  'running-amps': {
    nearLocked: limit('0.8', 'share of LRA'),
    idle: limit('0.5', 'A'),
    mccRatio: limit('1.56', 'times RLA'),
    usualLow: limit('60', '% of RLA'),
    usualHigh: limit('85', '% of RLA'),
    legs: limit('10', '%'),
  },
  alternative: {},
  observed: {},
  tripped: {},
  airflow: AIR,
  condenser: { low: limit('5', 'Δ°F'), high: limit('20', 'Δ°F'), far: limit('25', 'Δ°F') },
  'heat-strips': { none: limit('0.5', 'A') },
  circuit: {
    valveLow: limit('8', 'Δ°F'),
    valveHigh: limit('12', 'Δ°F'),
    orificeLeast: limit('5', 'Δ°F'),
    superheatWithin: limit('5', 'Δ°F'),
    subcoolingWithin: limit('3', 'Δ°F'),
    subcoolingLow: limit('8', 'Δ°F'),
    subcoolingHigh: limit('15', 'Δ°F'),
    impossible: limit('3', 'Δ°F'),
    suctionLow: limit('30', 'Δ°F'),
    suctionHigh: limit('40', 'Δ°F'),
    headLow: limit('15', 'Δ°F'),
    headHigh: limit('30', 'Δ°F'),
    doubt: limit('1', 'Δ°F'),
  },
  drier: { fall: limit('3', 'Δ°F') },
  'may-burn': {},
  'box-holds': {},
  'not-pumping': { usualLow: limit('60', '% of RLA') },
  'leak-search': {},
  'reversing-coil': { shorted: limit('4', 'Ω'), low: limit('10', 'Ω'), high: limit('40', 'Ω') },
  'reversing-command': { pullIn: limit('20.4', 'V'), absent: limit('5', 'V') },
  'valve-lines': { through: limit('3', 'Δ°F') },
  'three-terminals': {},
  'under-load': {
    clampPercent: limit('2', '%'),
    clampCounts: limit('5', 'count'),
    clampStep: limit('0.01', 'A'),
    voltsPercent: limit('1', '%'),
    voltsCounts: limit('3', 'count'),
    voltsStep: limit('0.1', 'V'),
    lineMost: limit('253', 'V'),
    openShare: limit('2', '%'),
  },
  'coil-volts': {
    rated: limit('24', 'V'),
    pullIn: limit('85', '%'),
    high: limit('28', 'V'),
    absent: limit('5', 'V'),
    loaded: limit('21.6', 'V'),
  },
  'unit-class': {},
  'supply-located': { ...plateVolts, sag: limit('10', '%') },
  'fed-volts': {
    ...plateVolts,
    none: limit('10', 'V'),
    leg: limit('120', 'V'),
    lowest: limit('208', 'V'),
    highest: limit('240', 'V'),
  },
  'volts-held': { ...plateVolts, none: limit('10', 'V') },
  'volts-there': { from: limit('20.4', 'V'), none: limit('5', 'V'), most: limit('30', 'V') },
  'call-path': { open: limit('20', 'V'), none: limit('5', 'V') },
  breaker: { drop: limit('0.2', 'V') },
  outward: { shorted: limit('4', 'Ω') },
  'closed-ohms': { closed: limit('1', 'Ω') },
  'foreign-volts': { most: limit('30', 'V') },
  'reads-again': { most: limit('1000', 'Ω') },
  'ground-branches': { grounded: limit('0.5', 'MΩ'), clear: limit('2', 'MΩ') },
  'evened-out': { least: limit('5', 'min'), typed: limit('2', 'min') },
  'minutes-since': { least: limit('5', 'min') },
  hop: { closed: limit('0.5', 'V'), open: limit('20', 'V'), pullIn: limit('20.4', 'V') },
  transformer: {
    rated: limit('24', 'V'),
    loaded: limit('21.6', 'V'),
    primaryWithin: limit('10', '%'),
    absent: limit('5', 'V'),
    lowLine: limit('100', 'V'),
  },
  bus: {
    residual: limit('5', 'V'),
    stop: limit('50', 'V'),
    batteryMin: limit('7', 'V'),
    batteryMax: limit('10', 'V'),
  },
  'single-section': { openShare: limit('2', '%'), shorted: limit('2', 'Ω') },
  'start-capacitor': { openShare: limit('2', '%'), shorted: limit('2', 'Ω') },
  'bleed-resistor': { low: limit('10000', 'Ω'), high: limit('20000', 'Ω') },
  'potential-relay': { closed: limit('0.5', 'Ω'), coilLow: limit('2000', 'Ω'), coilHigh: limit('20000', 'Ω') },
  'current-relay': { closed: limit('1', 'Ω'), coil: limit('1', 'Ω') },
  ptc: { low: limit('3', 'Ω'), high: limit('20', 'Ω') },
  fuses: { good: limit('0.5', 'Ω'), least: limit('2', 'count') },
  contactor: {
    contacts: limit('1', 'Ω'),
    welded: limit('1', 'Ω'),
    shorted: limit('4', 'Ω'),
    low: limit('8', 'Ω'),
    high: limit('20', 'Ω'),
    rated: limit('24', 'V'),
  },
  superheat: {
    within: limit('5', 'Δ°F'),
    valveLow: limit('8', 'Δ°F'),
    valveHigh: limit('12', 'Δ°F'),
    orificeLeast: limit('5', 'Δ°F'),
    impossible: limit('3', 'Δ°F'),
  },
  subcooling: {
    within: limit('3', 'Δ°F'),
    low: limit('8', 'Δ°F'),
    high: limit('15', 'Δ°F'),
    impossible: limit('3', 'Δ°F'),
  },
  'refrigerant-cause': {},
  danger: {},
  'called-before': {},
  'likely-causes': {},
  'caller-checks': { below: limit('9', 'Δ°F'), wait: limit('5', 'min') },
  load: {
    ...{
      hermLow: limit('30', 'µF'),
      hermHigh: limit('60', 'µF'),
      fanSection: limit('5', 'µF'),
      volts: limit('440', 'V'),
    },
    ...{ coil: limit('24', 'V'), contacts: limit('40', 'A'), fuseLow: limit('3', 'A'), fuseHigh: limit('5', 'A') },
  },
  'heat-index': heat,
  urgency: { ...heat, goods: limit('41', '°F'), goodsHours: limit('4', 'h') },
  split: AIR,
} as const;

/** ±(1.9 % + 2 counts), 0.1 µF from 10 µF up, 0.01 below. */
export const METER: Meter = { percent: '1.9', counts: 2, fine: '0.01', coarse: '0.1', split: '10', known: true };
/** What is assumed where nobody said which meter it is. */
export const ASSUMED: Meter = { percent: '3', counts: 5, fine: '0.1', coarse: '0.1', split: '10', known: false };
export const SETTINGS: Settings = { hertz: '60', rule: 'doubt', emergencyNumber: '911', tagWithExtraMeasure: true };
export const FORCE: Force = { settings: SETTINGS, meter: METER, truck: null, equipment: null };

/** A capacitor on a truck, by its print ("45+5 440") and how many are left. */
export const stock = (print: string, count = 1, of: Partial<StockItem> = {}): StockItem => {
  const [sections = '', volts = ''] = print.split(' ');
  const none = { range: null, protection: null, life: null };
  return {
    ...{ id: print.replaceAll(/[+ ]/g, '-'), name: `Part ${print}`, kind: 'run', sections: sections.split('+'), volts },
    ...{ ...none, count, low: 0 },
    ...of,
  };
};
/** A unit with its record, as of 14 July 2026. */
export const recorded = (...history: Partial<Past>[]): Force['equipment'] => ({
  ...{ id: 'unit', name: 'Unit 1', version: 1, facts: {}, asOf: '2026-07-14T12:00:00.000Z' },
  history: history.map((past) => ({
    ...{ at: '2026-06-03T20:00:00.000Z', job: 'job', what: 'fitted', item: 'Part 45+5', herm: null, fan: null },
    ...past,
  })),
});
export const truck = (...items: StockItem[]): Truck => ({ id: 'truck', name: 'Truck 1', version: 1, items });

type Cell = number | string | 'OL' | '_';
const cell = (value: Cell, unit: Unit): Value =>
  value === 'OL'
    ? { kind: 'over', typed: 'OL' }
    : value === '_'
      ? { kind: 'untaken' }
      : { kind: 'figure', value: figure(value, unit), unit, typed: String(value) };
/** Answers of one question in one unit: a figure, `OL`, or `_` for left out. */
export const parts = (unit: Unit, of: Readonly<Record<string, Cell>>): Parts =>
  Object.fromEntries(Object.entries(of).map(([key, value]) => [key, cell(value, unit)]));
export const choice = (key: string, ...chosen: string[]): Parts => ({ [key]: { kind: 'choice', chosen } });
export const yes = choice('ok', 'yes');
/** "45+5" or "45", ±6 % 440 V unless said. */
export const labelled = (print: string, of: Partial<CapacitorLabel> = {}): Parts => {
  const [herm = '', fan] = print.split('+');
  const label = { herm, fan: fan ?? null, below: '6', above: '6', printed: true, volts: '440', ...of };
  return { print: { kind: 'label', label, typed: { ref: 'label', hash: '0'.repeat(64) } } };
};

/** What may be in force when an answer is judged. */
export const FORCES: readonly Force[] = [
  FORCE,
  { ...FORCE, equipment: recorded({ herm: '44.1', fan: '4.98' }) },
  { ...FORCE, meter: ASSUMED, equipment: recorded({ at: '2025-06-03T20:00:00.000Z' }) },
  { ...FORCE, settings: { ...SETTINGS, tagWithExtraMeasure: false } },
  {
    ...FORCE,
    truck: truck(stock('45+5 440', 2), stock('40 440'), stock('5 440'), stock('45+5 370'), stock('50 440', 0)),
  },
];
