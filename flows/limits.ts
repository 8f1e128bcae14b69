/** Every limit of the manual, once, with its unit and where it comes from. Flows hand them to judgements by name. */
import type { Limit } from '../engine/vocabulary.ts';

const limit = (value: string, unit: string, source: string): Limit => ({ value, unit, source });
const OURS = 'our setting';
const PRACTICE = 'common practice, no single source';
const FUSE = limit('0.5', 'Ω', `a fuse out of its holder, cold: ${PRACTICE}`);
const NWS =
  'heat index categories of the US National Weather Service, as now in use (secondary source); each holds its beginning';

const known = {
  sourceMin: limit('100', 'V', `${OURS}: a known AC source reads at least this`),
  sourceWithin: limit('10', '%', `${OURS}: and this close to what it should be`),
  outlet: limit('120', 'V', 'nominal voltage of a US outlet, ANSI C84.1'),
  line208: limit('208', 'V', 'nominal system voltage, ANSI C84.1'),
  line230: limit('230', 'V', 'equipment rated voltage for a 240 V system, ANSI C84.1'),
  line240: limit('240', 'V', 'nominal system voltage, ANSI C84.1'),
  unit120: limit('120', 'V', 'print on the proving unit'),
  unit240: limit('240', 'V', 'print on the proving unit'),
};
const dead = limit('5', 'V', `${OURS}: absence of voltage; OSHA 1910.333(a)(1) speaks of 50 V to ground`);
/** What a 24 V circuit can’t have of itself. */
const foreign = limit('30', 'V', `${OURS}: above it a control terminal carries another circuit`);
const live = limit('50', 'V', '29 CFR 1910.333(a)(1), Note: below 50 V to ground need not be de-energised');

const bulletin = 'a compressor maker’s nameplate-voltage bulletin (secondary source)';
/** What a line has to keep while a motor runs or starts, by what the nameplate prints. */
const plateVolts = {
  low: limit('197', 'V', `single-phase 208/230 V hermetic, ${bulletin}`),
  lowThree: limit('187', 'V', `three-phase 208/230 V, ${bulletin}`),
  high: limit('253', 'V', `208/230 V, ${bulletin}`),
  ratedWithin: limit('10', '%', 'NEMA MG 1-12.44.1: rated voltage ±10 %'),
} as const;
const ohmmeter = {
  percent: limit('1', '%', `${OURS}: an ohmmeter’s doubt, with 3 counts`),
  counts: limit('3', 'count', `${OURS}: an ohmmeter’s doubt, with its percentage`),
  resolution: limit('0.1', 'Ω', `${OURS}: an ohmmeter’s finest digit`),
};
/** A resistance to ground at meter voltage: weaker than an insulation test. */
const toGround = {
  grounded: limit(
    '0.5',
    'MΩ',
    `${OURS}: a ground at meter voltage; a scroll maker accepts down to it (secondary source)`,
  ),
  clear: limit('2', 'MΩ', `${OURS}: no ground at meter voltage; a reciprocating maker’s limit (secondary source)`),
};
const equal = limit('5', '%', `${OURS}: three pairs of a three-phase or inverter motor are equal`);

const heat = {
  caution: limit('80', '°F', NWS),
  extremeCaution: limit('90', '°F', NWS),
  danger: limit('103', '°F', NWS),
  extremeDanger: limit('125', '°F', NWS),
  assumedHumidity: limit('50', '%', `${OURS}: where nobody read the humidity`),
  coldest: limit('-20', '°F', `${OURS}: an air temperature that people report`),
  hottest: limit('140', '°F', `${OURS}: an air temperature that people report`),
};

const habit = limit('10', '%', `the trade's habit, ${PRACTICE}; shown, never decides`);
const shell = {
  fail: limit('1', 'MΩ', `${OURS}: leak from a terminal to the case`),
  clear: limit('20', 'MΩ', `${OURS}: no leak to the case`),
};
const asked = limit('440', 'V', `${OURS}: asked for where no print shows volts`);

const valve = {
  within: limit('5', 'Δ°F', `beside a target superheat, ${PRACTICE}`),
  low: limit('8', 'Δ°F', `superheat behind an expansion valve, ${PRACTICE}; the label governs`),
  high: limit('12', 'Δ°F', `superheat behind an expansion valve, ${PRACTICE}; the label governs`),
  orificeLeast: limit('5', 'Δ°F', `target of a fixed orifice by wet-bulb and outdoor temperature, ${PRACTICE}`),
};
const liquid = {
  within: limit('3', 'Δ°F', `beside a target subcooling, ${PRACTICE}`),
  low: limit('8', 'Δ°F', `subcooling where no label says, ${PRACTICE}`),
  high: limit('15', 'Δ°F', `subcooling where no label says, ${PRACTICE}`),
};

/** A compressor's amps against its nameplate, at its restart and beside the air. */
const compressor = {
  nearLocked: limit('0.8', 'share of LRA', `${OURS}: from here a compressor counts as not starting`),
  mccRatio: limit(
    '1.56',
    'times RLA',
    'a trade glossary and a tip page (secondary sources); some makers divide by 1.44; what is printed governs',
  ),
};

export const LIMITS = {
  absence: { dead, live, ...known },
  bridge: { dead, ...known },
  residual: {
    batteryMin: limit('7', 'V', `${OURS}: a 9 V battery that proves a meter`),
    batteryMax: limit('10', 'V', `${OURS}: a 9 V battery that proves a meter`),
    residual: limit('5', 'V', `${OURS}: residual DC of a discharged capacitor`),
    agree: limit('0.5', 'V', `${OURS}: the three residuals of a dual part agree`),
  },
  hold: {
    residual: limit('5', 'V', `${OURS}: residual DC of a discharged capacitor`),
    ohms: limit('20000', 'Ω', `discharge resistor, ${PRACTICE}`),
    floor: limit('5', 's', `${OURS}: never held shorter`),
    unknown: limit('10', 's', `${OURS}: run capacitor of unknown rating`),
    unknownStart: limit('30', 's', `${OURS}: start capacitor of unknown rating`),
    watts: limit('5', 'W', `${OURS}; 2 W is ${PRACTICE}`),
  },
  label: { tolerance: limit('6', '%', `where the label prints none: ${PRACTICE}`) },
  sections: {
    openShare: limit('2', '%', `${OURS}: a section reading below this share of its rating is open`),
    habit,
  },
  shell,
  ohms: { shorted: limit('2', 'Ω', `${OURS}: steady near zero`) },
  restart: {
    ...plateVolts,
    linesApart: limit('5', '%', 'unbalance not recommended above, NEMA (secondary source)'),
    legsApart: limit('10', '%', `amps of three legs, ${PRACTICE}`),
    ...compressor,
    standing: limit('2', 'A', `a compressor that draws less stands, where its RLA is not known; ${PRACTICE}`),
    few: limit(
      '40',
      '% of RLA',
      `${OURS}: 60 to 85 % is usual, half where it is unloaded; with less it stands or is read wrong`,
    ),
    fewFan: limit('10', '% of FLA', `${OURS}: with less a motor stands, or is read wrong`),
    boxFall: limit('2', '°F', `${OURS}: a box that fell by less in 20 minutes does not pull down`),
    idle: limit('0.5', 'A', `${OURS}: below this a compressor draws nothing`),
    notIn: limit('20', 'V', `lost between L and T with nothing drawing: open or not in from here, ${PRACTICE}`),
    dropAsk: limit('3', 'V', `L1–L2 less T1–T2: from here each pole is read, ${PRACTICE}`),
    sag: limit('10', '%', `fall of the volts while starting, ${PRACTICE}`),
    splitLow: limit('14', 'Δ°F', `split at a restart, ${PRACTICE}; sources differ: 14–23, 16–22, 18–22`),
    splitHigh: limit('23', 'Δ°F', `split at a restart, ${PRACTICE}; sources differ: 14–23, 16–22, 18–22`),
  },
  split: {
    within: limit('3', 'Δ°F', `beside the expected split, ${PRACTICE}`),
    plainLow: limit('16', 'Δ°F', `split of return air of common humidity, ${PRACTICE}`),
    plainHigh: limit('22', 'Δ°F', `split of return air of common humidity, ${PRACTICE}`),
    coolest: limit('60', '°F', `${OURS}: return air for which a split is expected`),
    warmest: limit('95', '°F', `${OURS}: return air for which a split is expected`),
    cfmPerTon: limit('400', 'CFM', `airflow of a ton, ${PRACTICE}; expected split by our model of the coil`),
    leavingHumidity: limit('90', '%', `${OURS}: air leaves a wet coil so nearly saturated`),
    capacityPerDegree: limit(
      '1.75',
      '% per °F',
      `${OURS}: capacity for each degree of wet-bulb, after a trade-training article’s capacities (secondary source)`,
    ),
    dryCoil: limit(
      '90',
      '%',
      `${OURS}: share of the nominal capacity that a dry coil has, after the same article (secondary source)`,
    ),
  },
  superheat: {
    within: valve.within,
    valveLow: valve.low,
    valveHigh: valve.high,
    orificeLeast: valve.orificeLeast,
    impossible: limit('3', 'Δ°F', `${OURS}: this far below saturation a reading is wrong`),
  },
  subcooling: {
    ...liquid,
    impossible: limit('3', 'Δ°F', `${OURS}: this far above saturation a reading is wrong`),
  },
  circuit: {
    valveLow: valve.low,
    valveHigh: valve.high,
    orificeLeast: valve.orificeLeast,
    superheatWithin: valve.within,
    subcoolingWithin: liquid.within,
    subcoolingLow: liquid.low,
    subcoolingHigh: liquid.high,
    impossible: limit('3', 'Δ°F', `${OURS}: this far on the wrong side of saturation a reading is wrong`),
    suctionLow: limit('30', 'Δ°F', `suction saturation under the return air, ${PRACTICE}`),
    suctionHigh: limit('40', 'Δ°F', `suction saturation under the return air, ${PRACTICE}`),
    headLow: limit('15', 'Δ°F', `condensing above the outdoor air, ${PRACTICE}`),
    headHigh: limit('30', 'Δ°F', `condensing above the outdoor air, ${PRACTICE}`),
    doubt: limit('1', 'Δ°F', `${OURS}: doubt of gauge and clamp together; nearer to a limit counts both ways`),
  },
  condenser: {
    low: limit('5', 'Δ°F', `liquid line above the outdoor air, ${PRACTICE}`),
    high: limit('20', 'Δ°F', `liquid line above the outdoor air, ${PRACTICE}`),
    far: limit('25', 'Δ°F', `liquid line above the outdoor air: short of air above, ${PRACTICE}`),
  },
  drier: { fall: limit('3', 'Δ°F', `liquid line across a drier, ${PRACTICE}`) },
  heatStrips: { none: limit('0.5', 'A', `${OURS}: a clamp at rest; strips that heat draw many amps`) },
  notPumping: { usualLow: limit('60', '% of RLA', `usual running current, ${PRACTICE}`) },
  reversingCoil: {
    shorted: limit('4', 'Ω', `a 24\u2009V coil: ${PRACTICE}`),
    low: limit('10', 'Ω', `a 24\u2009V reversing valve’s solenoid: ${PRACTICE}`),
    high: limit('40', 'Ω', `a 24\u2009V reversing valve’s solenoid: ${PRACTICE}`),
  },
  reversingCommand: {
    pullIn: limit('20.4', 'V', `85 % of 24\u2009V, as for a contactor: ${PRACTICE}`),
    absent: limit('5', 'V', `${OURS}: below this a control circuit counts as without volts`),
  },
  valveLines: { through: limit('3', 'Δ°F', `warmed through a reversing valve, ${PRACTICE}`) },
  heatIndex: heat,
  urgency: {
    ...heat,
    goods: limit('41', '°F', 'FDA Food Code: perishable food is kept at or below'),
    goodsHours: limit('4', 'h', `${OURS}: hours above the limit after which goods count as lost`),
  },
  load: {
    hermLow: limit('30', 'µF', `smallest HERM section loaded where no marking is known, ${PRACTICE}`),
    hermHigh: limit('60', 'µF', `largest HERM section loaded where no marking is known, ${PRACTICE}`),
    fanSection: limit('5', 'µF', `usual FAN section, ${PRACTICE}`),
    volts: limit('440', 'V', `fits where 370 V is printed too, ${PRACTICE}`),
    coil: limit('24', 'V', `coil of a split’s contactor, ${PRACTICE}`),
    contacts: limit('40', 'A', `covers the usual house unit, ${PRACTICE}`),
    fuseLow: limit('3', 'A', `blade fuse of a control board, ${PRACTICE}`),
    fuseHigh: limit('5', 'A', `blade fuse of a control board, ${PRACTICE}`),
  },
  callerChecks: {
    below: limit('9', 'Δ°F', `${OURS}: 5 °C below the room, so that the thermostat surely calls`),
    wait: limit('5', 'min', `${OURS}: longer than the usual delay against short cycling`),
  },
  substitutes: { volts: asked },
  newPart: { volts: asked, ...shell, habit },
  history: { season: limit('180', 'days', `${OURS}: a second part within these is a second one in a season`) },
  contactDrop: {
    look: limit('0.5', 'V', `across a closed pole under load: ${PRACTICE}`),
    replace: limit('1', 'V', `across a closed pole under load: ${PRACTICE}`),
    open: limit('20', 'V', `across an open pole at least this: ${PRACTICE}`),
    idle: limit('0.5', 'A', `${OURS}: below this nothing loads a contactor`),
  },
  count: {
    one: limit('1', 'count', 'one part'),
    two: limit('2', 'count', 'two parts'),
    three: limit('3', 'count', 'three parts'),
  },
  // Two poles have two fuses, and a third leg a third; an indoor board has one.
  fuses: { good: FUSE, least: limit('2', 'count', 'one in each leg') },
  boardFuse: { good: FUSE, least: limit('1', 'count', 'the board’s own') },
  contactor: {
    contacts: limit('1', 'Ω', `a contact with the armature pressed in: ${PRACTICE}`),
    welded: limit('1', 'Ω', `a contact with the armature up: ${PRACTICE}`),
    shorted: limit('4', 'Ω', `a 24\u2009V coil: ${PRACTICE}`),
    low: limit('8', 'Ω', `a 24\u2009V coil, DC resistance: ${PRACTICE}`),
    high: limit('20', 'Ω', `a 24\u2009V coil, DC resistance: ${PRACTICE}`),
    rated: limit('24', 'V', 'the coil that this band is for'),
  },
  compressorWindings: { ...ohmmeter, ...toGround, equal },
  fanWindings: {
    ...ohmmeter,
    grounded: limit('1', 'MΩ', `${OURS}: a fan motor to its frame at meter voltage`),
    clear: limit('5', 'MΩ', 'IEEE 43: random-wound motors, written for 1 hp and more (secondary source)'),
  },
  /** A fan on three lines: equal pairs, its frame as for any fan. */
  threeFanWindings: {
    ...ohmmeter,
    grounded: limit('1', 'MΩ', `${OURS}: a fan motor to its frame at meter voltage`),
    clear: limit('5', 'MΩ', 'IEEE 43: random-wound motors, written for 1 hp and more (secondary source)'),
    equal,
  },
  blowerWindings: {
    ...ohmmeter,
    grounded: limit('1', 'MΩ', `${OURS}: a blower motor to its frame at meter voltage`),
    clear: limit('5', 'MΩ', 'IEEE 43: random-wound motors, written for 1 hp and more (secondary source)'),
  },
  threeWindings: { ...ohmmeter, ...toGround, equal },
  loadsToGround: {
    ...toGround,
    volts: limit('120', 'V', 'a leg to ground, nominal, ANSI C84.1'),
    gfci: limit('6', 'mA', 'class A GFCI trips at 6 mA at the latest, value from memory'),
    breaker: limit('15', 'A', 'smallest standard breaker, NEC 240.6, value from memory'),
    beside: limit('10', '%', `${OURS}: from this share of the breaker on a leak counts beside the load`),
  },
  insulation: {
    scroll: limit('0.5', 'MΩ', 'a scroll compressor maker’s bulletin (secondary source)'),
    reciprocating: limit('2', 'MΩ', 'a reciprocating compressor maker’s service handbook (secondary source)'),
    motor: limit('1', 'MΩ', `${OURS}: a fan or blower motor; IEEE 43 asks 5 from 1 hp up (secondary source)`),
    testVolts: limit(
      '500',
      'V',
      'test voltage of windings below 1000\u2009V, table of a motor-repair body (secondary source)',
    ),
    good: limit('100', 'MΩ', `the trade’s band, ${PRACTICE}`),
    fair: limit('50', 'MΩ', `the trade’s band, ${PRACTICE}`),
    watch: limit('20', 'MΩ', `the trade’s band, ${PRACTICE}`),
    at40: limit('5', 'MΩ', 'IEEE 43 at 40\u2009°C: random-wound motors, written for 1 hp and more (secondary source)'),
  },
  windingResidual: {
    residual: limit('5', 'V', `${OURS}: residual DC of a winding after an insulation test`),
    batteryMin: limit('7', 'V', `${OURS}: a 9 V battery that proves a meter`),
    batteryMax: limit('10', 'V', `${OURS}: a 9 V battery that proves a meter`),
  },
  nameplate: {
    ratioLow: limit('3', 'times RLA', `${OURS}: LRA and RLA that can belong together`),
    ratioHigh: limit('9', 'times RLA', `${OURS}: LRA and RLA that can belong together`),
    usualLow: limit('4', 'times RLA', 'usual LRA, value from memory'),
    usualHigh: limit('8', 'times RLA', 'usual LRA, value from memory'),
    mcaWithin: limit('5', '%', `${OURS}: plates print MCA rounded`),
  },
  supply: {
    low: limit('197', 'V', `single-phase 208/230\u2009V welded hermetic, ${bulletin}`),
    lowScroll: limit('188', 'V', `single-phase 208/230\u2009V scroll or semi-hermetic, ${bulletin}`),
    lowThree: limit('187', 'V', `three-phase 208/230\u2009V, ${bulletin}`),
    high: limit('253', 'V', `208/230\u2009V, ${bulletin}`),
    rated115: limit('115', 'V', 'equipment rated voltage for a 120 V system, ANSI C84.1'),
    ratedWithin: limit('10', '%', 'NEMA MG 1-12.44.1: rated voltage ±10 %'),
    present: limit('50', 'V', `${OURS}: from here a pair counts as alive`),
    neutral: limit('5', 'V', `${OURS}: neutral to ground of a sound neutral`),
    sag: limit('10', '%', `fall at the start, ${PRACTICE}`),
    contacts: limit('3', 'V', `${OURS}: lost between line and load side, raises the question`),
    report: limit('2', '%', 'unbalance, two unit manuals (secondary source)'),
    stop: limit('5', '%', 'unbalance not recommended above, NEMA (secondary source)'),
    singlePhase: limit('65', '%', `${OURS}: two lines at most this share of the third`),
    highLeg: limit('10', '%', `${OURS}: a leg this close to √3 times the others is a high leg`),
  },
  /** Read again where one reading was out, and where the volts are lost. */
  supplyLocated: { ...plateVolts, sag: limit('10', '%', `fall at the start, ${PRACTICE}`) },
  /** Both run by ear: below two amps the compressor doesn’t. */
  runningAmps: {
    ...compressor,
    idle: limit('2', 'A', `${PRACTICE}: below 2 A the compressor is not what draws`),
    usualLow: limit('60', '% of RLA', `usual running current, ${PRACTICE}`),
    usualHigh: limit('85', '% of RLA', `usual running current, ${PRACTICE}`),
    legs: limit('10', '%', `unbalance of three legs’ amps, ${PRACTICE}`),
  },
  underLoad: {
    clampPercent: limit('2', '%', `${OURS}: a clamp meter of unknown make`),
    clampCounts: limit('5', 'count', `${OURS}: a clamp meter of unknown make`),
    clampStep: limit('0.01', 'A', `${OURS}: a clamp meter of unknown make`),
    voltsPercent: limit('1', '%', `${OURS}: a voltmeter of unknown make`),
    voltsCounts: limit('3', 'count', `${OURS}: a voltmeter of unknown make`),
    voltsStep: limit('0.1', 'V', `${OURS}: a voltmeter of unknown make`),
    lineMost: limit('253', 'V', `${OURS}: volts up to here may be the line's`),
    openShare: limit('2', '%', `${OURS}: below this share of its rating the clamp may sit on another wire`),
  },
  coilVolts: {
    rated: limit('24', 'V', 'the coil that these limits are for; others in proportion'),
    pullIn: limit('85', '%', 'contactor pull-in, IEC 60947-4-1 (value from memory) and common practice'),
    high: limit('28', 'V', `control volts in use: ${PRACTICE}`),
    absent: limit('5', 'V', `${OURS}: below this a control circuit counts as without volts`),
    loaded: limit('21.6', 'V', `R–C under load: ${PRACTICE}`),
  },
  controlThere: {
    from: limit('20.4', 'V', 'pull-in of a 24\u2009V contactor, IEC 60947-4-1 (value from memory) and common practice'),
    none: limit('5', 'V', `${OURS}: below this a control circuit counts as without volts`),
    most: foreign,
  },
  foreignVolts: { most: foreign },
  during: { ...plateVolts, none: limit('10', 'V', `${OURS}: below this a motor counts as not fed`) },
  /** Where nobody read the plate of an indoor unit: a leg to neutral, or two legs. */
  fedVolts: {
    ...plateVolts,
    none: limit('10', 'V', `${OURS}: below this a motor counts as not fed`),
    leg: limit('120', 'V', 'a leg to neutral, nominal, ANSI C84.1'),
    lowest: limit('208', 'V', 'two lines, lowest nominal, ANSI C84.1'),
    highest: limit('240', 'V', 'two lines, highest nominal, ANSI C84.1'),
  },
  callPath: {
    open: limit('20', 'V', `across an open switch at least this: ${PRACTICE}`),
    none: limit('5', 'V', `${OURS}: below this a control circuit counts as without volts`),
  },
  breaker: { drop: limit('0.2', 'V', `across a closed breaker under load: ${PRACTICE}`) },
  outward: { shorted: limit('4', 'Ω', `Y to C outward, less is a short: ${PRACTICE}`) },
  closedOhms: { closed: limit('1', 'Ω', `an external overload, cold, near zero: ${PRACTICE}`) },
  readsAgain: { most: limit('1000', 'Ω', `${OURS}: a pair of windings, or a closed overload, reads less`) },
  groundBranches: { ...toGround },
  delay: { least: limit('5', 'min', `anti-short-cycle delay after a change of call: ${PRACTICE}`) },
  /** An electronic motor's own bus, from the means off. */
  busRest: {
    least: limit('5', 'min', `an electronic motor’s bus, or what its label says where that is more: ${PRACTICE}`),
  },
  /** Between two starts of one compressor, and how often it is tried before a senior. */
  starts: {
    least: limit('5', 'min', `pressures even out between starts: ${PRACTICE}`),
    typed: limit('2', 'min', `${OURS}: a reading is on the record within this`),
    tries: limit('3', 'count', `starts, or rounds of tests and a start, before a senior: ${PRACTICE}`),
  },
  hop: {
    closed: limit('0.5', 'V', `across a closed switch less than this: ${PRACTICE}`),
    open: limit('20', 'V', `across an open switch at least this: ${PRACTICE}`),
    pullIn: limit(
      '20.4',
      'V',
      'pull-in of a 24\u2009V contactor, IEC 60947-4-1 (value from memory) and common practice',
    ),
  },
  transformer: {
    rated: limit('24', 'V', 'rated secondary volts'),
    loaded: limit('21.6', 'V', `R–C under load: ${PRACTICE}`),
    primaryWithin: limit('10', '%', `${OURS}: the tap's volts, as for rated voltage`),
    absent: limit('5', 'V', `${OURS}: below this a secondary counts as without volts`),
    lowLine: limit('100', 'V', `${OURS}: below this a primary counts as without volts`),
  },
  bus: {
    residual: limit('5', 'V', `${OURS}: residual DC of an inverter's bus`),
    stop: limit('50', 'V', `${OURS}: above this after the label's time the bleeder has failed`),
    batteryMin: limit('7', 'V', `${OURS}: a 9 V battery that proves a meter`),
    batteryMax: limit('10', 'V', `${OURS}: a 9 V battery that proves a meter`),
  },
  startCapacitor: {
    openShare: limit('2', '%', `${OURS}: a start capacitor reading below this share of its range is open`),
    shorted: limit('2', 'Ω', `${OURS}: steady near zero`),
  },
  singleSection: {
    openShare: limit('2', '%', `${OURS}: a section reading below this share of its rating is open`),
    shorted: limit('2', 'Ω', `${OURS}: steady near zero`),
  },
  bleedResistor: {
    low: limit('10000', 'Ω', `bleed resistor, one end off: ${PRACTICE}`),
    high: limit('20000', 'Ω', `bleed resistor, one end off: ${PRACTICE}`),
  },
  potentialRelay: {
    closed: limit('0.5', 'Ω', `contacts 1–2 at rest: ${PRACTICE}`),
    coilLow: limit('2000', 'Ω', `coil 5–2: ${PRACTICE}`),
    coilHigh: limit('20000', 'Ω', `coil 5–2: ${PRACTICE}`),
  },
  currentRelay: {
    closed: limit('1', 'Ω', `a closed contact at rest: ${PRACTICE}`),
    coil: limit('1', 'Ω', `coil: ${PRACTICE}`),
  },
  ptc: {
    low: limit('3', 'Ω', 'cold; value from memory, it only advises'),
    high: limit('20', 'Ω', 'cold; value from memory, it only advises'),
  },
  isolation: {
    minutes: limit('30', 'min', `${OURS}: without an answer of the holder`),
    control: foreign,
  },
} as const;
