/** R7 for what is short of air, the circuit, water, noise and leak alarms: by the rule, with plain arithmetic. */
import type { Conclusion, Parts } from '../../schema.ts';
import { chosen, figure } from './evidence.ts';
import type { Answer } from './verdicts.ts';

/** A sentence where the record does not carry the verdict, else null. Other verdicts are not looked at here. */
export function unprovenCooling(c: Conclusion, answers: readonly Answer[]): string | null {
  const round = /^round~\d+/.exec(c.place)?.[0] ?? '';
  const at = (place: string): Parts =>
    answers.findLast(
      (a) => a.place.startsWith(round) && (a.place.endsWith(`/${place}`) || a.place.endsWith(`/float-${place}`)),
    )?.parts ?? {};
  const said = (place: string): readonly string[] => {
    const parts = at(place);
    return chosen(parts.choice ?? parts.ok);
  };
  const seen = (place: string, ...any: readonly string[]): boolean =>
    chosen(at(place).seen).some((x) => any.includes(x));
  const both = (place: string): number | null => {
    const { return: warm, supply } = at(place);
    const [a, b] = [figure(warm), figure(supply)];
    return a === null || b === null ? null : a - b;
  };
  switch (c.verdict) {
    case 'airflow-short': {
      const split = both('not-cold/air');
      const humid = figure(at('not-cold/air').wb) !== null || figure(at('not-cold/air').rh) !== null;
      return seen('not-cold/looked', ...INDOORS) && split !== null && (humid ? split > 0 : split > 22)
        ? null
        : 'short of air without a look and a high split';
    }
    case 'airflow-short-elsewhere':
      return (both('not-cold/air') ?? 0) > 0 ? null : 'short of air without a split';
    case 'cools-as-it-should':
      return seen('not-cold/looked', 'nothing') && (both('not-cold/air') ?? 0) > 0
        ? null
        : 'called good without a look and a split';
    case 'condenser-air-short': {
      const { liquid, outdoor } = at('outdoors/looked');
      const above = (figure(liquid) ?? 0) - (figure(outdoor) ?? 999);
      return seen('outdoors/looked', 'matted', 'outdoor-fan', 'recirculation') && above > 25
        ? null
        : 'a condenser short of air without dirt and more than 25 °F';
    }
    case 'compressor-stands':
      return (figure(at('running/amps').comp) ?? 99) < 2 ? null : 'a compressor called standing at 2 A or more';
    case 'compressor-stalled':
      return (figure(at('running/amps').comp) ?? 0) > 2 ? null : 'a compressor called stalled without amps';
    case 'heat-while-cooling':
      return (figure(at('running/amps').heat) ?? 0) > 0.5 ? null : 'electric heat called on without amps';
    case 'drain-cleared':
      return said('water/off').includes('cleared') &&
        said('water/quart').includes('leaves') &&
        said('water/float').includes('works')
        ? null
        : 'a drain called cleared without a quart and a float that opens';
    case 'ran-backwards':
      return said('noise/rest').includes('yes') ? null : 'called backwards without a quiet start';
    case 'reversing-coil': {
      const { solenoid } = at('warm/coil');
      return solenoid?.kind === 'over' || (figure(solenoid) ?? 99) < 4
        ? null
        : 'a coil condemned that is neither open nor shorted';
    }
    case 'reversing-valve': {
      const ohms = figure(at('warm/coil').solenoid) ?? 0;
      const volts = figure(at('warm/at-24').solenoid) ?? -1;
      const right = said('warm/wiring').includes('o') ? volts >= 20.4 : volts >= 0 && volts < 5;
      const lines = at('warm/lines');
      const [big, small, before, behind] = ['vapour', 'liquid', 'in', 'out'].map((key) => figure(lines[key]) ?? 0) as [
        number,
        number,
        number,
        number,
      ];
      return ohms >= 10 && ohms <= 40 && right && (big > small || behind - before > 3)
        ? null
        : 'a reversing valve condemned without a good coil, its command and its lines';
    }
    case 'leak-alarm-cleared':
    case 'leak-found': {
      const { standing, result } = at('alarm/search');
      const wanted = c.verdict === 'leak-found' ? 'found' : 'none';
      return figure(standing) !== null && chosen(result).includes(wanted) && said('alarm/person').includes('yes')
        ? null
        : 'a leak alarm decided without a certified search';
    }
    default:
      return ofCircuit(c.verdict, at, said);
  }
}
const INDOORS = ['filter', 'indoor-coil', 'registers', 'blower', 'return-leak'];

/** Each verdict of the circuit and what its superheat and subcooling have to be; null where the rule names none. */
const SIDES: Readonly<Record<string, readonly [('low' | 'high' | null)?, ('low' | 'high' | null)?]>> = {
  undercharge: ['high', 'low'],
  'liquid-restricted': ['high', null],
  'restriction-not-located': ['high', null],
  'airflow-by-superheat': ['low', null],
  'overcharge-or-air': [null, 'high'],
  'condenser-air-elsewhere': [],
  'compressor-not-pumping': [],
  'metering-device': [],
  'circuit-in-order': [],
};

function ofCircuit(
  verdict: string,
  at: (place: string) => Parts,
  said: (place: string) => readonly string[],
): string | null {
  const sides = SIDES[verdict];
  if (sides === undefined) return null;
  if (!said('circuit/person').includes('yes') || !said('circuit/ready').includes('yes'))
    return 'the circuit judged without a certified person, or on ice, dirt or the first minutes';
  const parts = at('circuit/readings');
  const all = ['suction', 'liquid', 'suctionLine', 'liquidLine', 'return', 'outdoor'].map((key) => figure(parts[key]));
  if (all.includes(null)) return 'the circuit judged without all its figures';
  const [suction = 0, liquid = 0, big = 0, small = 0] = all as number[];
  const which = chosen(at('circuit/which').refrigerant)[0] ?? '';
  const [dew, bubble] = [saturation(which, 0, suction), saturation(which, 1, liquid)];
  if (dew === null || bubble === null) return 'the circuit judged on a refrigerant that is not known';
  const [superheat, subcooling] = [big - dew, bubble - small];
  // A valve's 8 to 12 °F or a label's target: beyond the widest of them it is out, by any of them.
  if (sides[0] === 'high' && superheat < 5) return 'superheat called high that is low';
  if (sides[0] === 'low' && superheat > 30) return 'superheat called low that is high';
  if (sides[1] === 'low' && subcooling > 15) return 'subcooling called low that is high';
  if (sides[1] === 'high' && subcooling < 8) return 'subcooling called high that is low';
  if (verdict === 'liquid-restricted') {
    const { before, after } = at('circuit/across');
    if ((figure(before) ?? 0) - (figure(after) ?? 0) <= 3) return 'a restriction without more than 3 °F across it';
  }
  if (verdict === 'compressor-not-pumping') {
    const ruled = chosen(at('circuit/ruled').ruled);
    if (figure(at('circuit/ruled').comp) === null || !['valve', 'unloader', 'rotation'].every((x) => ruled.includes(x)))
      return 'a compressor that does not pump, and not all ruled out';
  }
  return null;
}

/** psig at 0, 20, 40 … 120 °F, dew and bubble, of a published table; between them a straight line is good to 2 °F. */
const TABLE: Readonly<Record<string, readonly [readonly number[], readonly number[]]>> = {
  'r-410a': [
    [48.2, 78.4, 118.4, 170.1, 235.7, 317.6, 418.3],
    [48.4, 78.7, 118.8, 170.7, 236.5, 318.5, 419.5],
  ],
  'r-22': [
    [24, 43.1, 68.5, 101.6, 143.6, 195.9, 260],
    [24, 43.1, 68.5, 101.6, 143.6, 195.9, 260],
  ],
  'r-32': [
    [49.3, 80, 121, 174, 241.5, 325.7, 429.3],
    [49.3, 80, 121, 174, 241.5, 325.7, 429.3],
  ],
  'r-134a': [
    [6.5, 18.4, 35, 57.4, 86.7, 124.2, 171.2],
    [6.5, 18.4, 35, 57.4, 86.7, 124.2, 171.2],
  ],
  'r-290': [
    [23.7, 41.1, 63.9, 93, 129.3, 173.9, 227.9],
    [23.7, 41.1, 63.9, 93, 129.3, 173.9, 227.9],
  ],
  'r-404a': [
    [32.6, 55.3, 85.4, 124.2, 173.4, 234.7, 309.9],
    [33.7, 56.6, 86.9, 126, 175.4, 236.8, 312.1],
  ],
  'r-454b': [
    [42.9, 70.6, 107.5, 155.3, 216, 291.9, 385.5],
    [45.9, 74.8, 113.2, 162.7, 225.4, 303.3, 398.6],
  ],
};
function saturation(which: string, curve: 0 | 1, psig: number): number | null {
  const points = TABLE[which]?.[curve];
  if (points === undefined) return null;
  const upper = points.findIndex((p) => p >= psig);
  const i = upper < 0 ? points.length - 1 : Math.max(1, upper);
  const [a = 0, b = 1] = points.slice(i - 1, i + 1);
  return (i - 1) * 20 + (20 * (psig - a)) / (b - a);
}
