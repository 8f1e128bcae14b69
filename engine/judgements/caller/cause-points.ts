/**
 * Which cause an observation of a caller speaks for, and how much (common practice, no single source: the orders of test
 * that a technician follows, read backwards). Points only rank; nothing is decided by them.
 */
export const CAUSES = {
  capacitor: 'Run capacitor',
  fan: 'Outdoor fan motor',
  compressor: 'Compressor or its start gear',
  contactor: 'Contactor',
  control: 'Low-voltage control circuit',
  blower: 'Indoor blower',
  air: 'Filter and air flow',
  drain: 'Drain and float switch',
  coil: 'Dirty outdoor coil',
  charge: 'Refrigerant',
  short: 'A short or a ground',
  electronics: 'Inverter or control board',
  work: 'What was worked on last',
} as const;
export type Cause = keyof typeof CAUSES;

interface Sighting {
  readonly says: string;
  readonly points: Partial<Record<Cause, number>>;
}
export const SIGHTINGS: Readonly<Record<string, Sighting>> = {
  'outdoor.hum-still': {
    says: 'The outdoor unit hums and nothing turns',
    points: { capacitor: 4, compressor: 2, fan: 1 },
  },
  'outdoor.fan-still': { says: 'The outdoor unit runs and its fan stands still', points: { capacitor: 4, fan: 3 } },
  'outdoor.fan-only': {
    says: 'The outdoor fan turns, with a hum or a click and no cooling',
    points: { capacitor: 4, compressor: 3, contactor: 1 },
  },
  'outdoor.silent': { says: 'The outdoor unit is silent', points: { contactor: 2, control: 2, short: 1 } },
  'outdoor.chatters': { says: 'The outdoor unit buzzes or chatters', points: { contactor: 4, control: 3 } },
  'outdoor.cycles': { says: 'It starts and stops every few minutes', points: { coil: 3, charge: 2, capacitor: 1 } },
  'outdoor.runs': { says: 'Both sides run and the air is not cold', points: { charge: 3, coil: 3, air: 2 } },
  'display.blank': { says: 'The thermostat is blank', points: { control: 4, drain: 1 } },
  'display.code': { says: 'A display or a board shows a code', points: { electronics: 4 } },
  'blower.still': { says: 'No air comes out indoors', points: { blower: 4, control: 1 } },
  'blower.weak': { says: 'Little air comes out indoors', points: { air: 4, blower: 2 } },
  'breaker.tripped': { says: 'A breaker has tripped', points: { short: 3, compressor: 2, capacitor: 1 } },
  'breaker.again': { says: 'The breaker tripped again, or was reset already', points: { short: 4, compressor: 3 } },
  'breaker.hot': { says: 'The breaker is warm, wet or smells', points: { short: 5 } },
  'signs.ice': { says: 'There is ice on pipes or coil', points: { air: 4, charge: 3, blower: 2 } },
  'signs.water': { says: 'Water stands at the indoor unit', points: { drain: 5 } },
  'signs.noise': { says: 'It makes a new noise', points: { fan: 2, blower: 2, compressor: 1 } },
  'signs.alarm': { says: 'A leak alarm sounds', points: { charge: 6 } },
  'recent.ours': { says: 'We worked on it lately', points: { work: 3 } },
  'recent.others': { says: 'Somebody else worked on it lately', points: { work: 3 } },
  'kind.mini-split': { says: 'A mini-split runs by an inverter', points: { electronics: 3 } },
};
/** The likeliest are told; more would be a list of everything. */
const TOLD = 4;

export interface Likely {
  readonly cause: Cause;
  /** Observations that speak for it, as sentences without their stop. */
  readonly because: readonly string[];
}
/** The likeliest first; of equal ones, in the order of the list. */
export function likelyCauses(sightings: readonly string[]): Likely[] {
  const ranked = (Object.keys(CAUSES) as Cause[]).map((cause) => {
    const speak = sightings
      .map((name) => SIGHTINGS[name])
      .filter((s): s is Sighting => s?.points[cause] !== undefined)
      .sort((a, b) => (b.points[cause] ?? 0) - (a.points[cause] ?? 0));
    const points = speak.reduce((sum, s) => sum + (s.points[cause] ?? 0), 0);
    return { cause, points, because: speak.map((s) => s.says) };
  });
  return ranked
    .filter(({ points }) => points > 0)
    .sort((a, b) => b.points - a.points)
    .slice(0, TOLD)
    .map(({ cause, because }) => ({ cause, because }));
}
