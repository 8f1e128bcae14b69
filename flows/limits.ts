/** Every limit of the manual, once, with its unit and where it comes from. Flows hand them to judgements by name. */
import type { Limit } from '../engine/vocabulary.ts';

const limit = (value: string, unit: string, source: string): Limit => ({ value, unit, source });
const OURS = 'our setting';
const PRACTICE = 'common practice, no single source';

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
const live = limit('50', 'V', '29 CFR 1910.333(a)(1), Note: below 50 V to ground need not be de-energised');

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
    watts: limit('5', 'W', `${OURS}; 2 W is ${PRACTICE}`),
  },
  label: { tolerance: limit('6', '%', `where the label prints none: ${PRACTICE}`) },
  sections: {
    openShare: limit('2', '%', `${OURS}: a section reading below this share of its rating is open`),
    habit: limit('10', '%', `the trade's habit, ${PRACTICE}; shown, never decides`),
  },
  shell: {
    fail: limit('1', 'MΩ', `${OURS}: leak from a terminal to the case`),
    clear: limit('20', 'MΩ', `${OURS}: no leak to the case`),
  },
  ohms: { shorted: limit('2', 'Ω', `${OURS}: steady near zero`) },
  restart: {
    low: limit(
      '197',
      'V',
      'single-phase 208/230 V hermetic, a compressor maker’s nameplate-voltage bulletin (secondary source)',
    ),
    high: limit(
      '253',
      'V',
      'single-phase 208/230 V hermetic, a compressor maker’s nameplate-voltage bulletin (secondary source)',
    ),
    ratedWithin: limit('10', '%', 'NEMA MG 1-12.44.1: rated voltage ±10 %'),
    nearLocked: limit('0.8', 'share of LRA', `${OURS}: from here a compressor counts as not starting`),
    idle: limit('0.5', 'A', `${OURS}: below this a compressor draws nothing`),
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
  count: {
    one: limit('1', 'count', 'one part'),
    two: limit('2', 'count', 'two parts'),
    three: limit('3', 'count', 'three parts'),
  },
  fuses: { good: limit('0.5', 'Ω', `a fuse out of its holder, cold: ${PRACTICE}`) },
  contactor: {
    contacts: limit('1', 'Ω', `a contact with the armature pressed in: ${PRACTICE}`),
    welded: limit('1', 'Ω', `a contact with the armature up: ${PRACTICE}`),
    shorted: limit('4', 'Ω', `a 24\u2009V coil: ${PRACTICE}`),
    low: limit('8', 'Ω', `a 24\u2009V coil, DC resistance: ${PRACTICE}`),
    high: limit('20', 'Ω', `a 24\u2009V coil, DC resistance: ${PRACTICE}`),
    rated: limit('24', 'V', 'the coil that this band is for'),
  },
  isolation: { minutes: limit('30', 'min', `${OURS}: without an answer of the holder`) },
} as const;
