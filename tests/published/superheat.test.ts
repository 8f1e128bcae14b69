/** Superheat, subcooling and the target of a fixed orifice. */
import {
  bubbleFahrenheit,
  dewFahrenheit,
  subcooling,
  superheat,
  targetSuperheat,
} from '../../engine/calc/refrigerant/superheat.ts';
import { LIMITS } from '../../flows/limits.ts';
import { type Check, checks } from './check.ts';
import { temperatureAt } from './saturation-figures.ts';

const saturation = (found: ReturnType<typeof dewFahrenheit>) => {
  if (!found.ok) throw new Error(`refused: ${found.why}`);
  return found.value;
};
const DEFINITION = 'definition, as several manuals give it; saturation by CoolProp';
const lines: Check[] = [
  {
    what: 'superheat, R-410A',
    input: '130 psig suction, line 55 °F',
    published: '10.05',
    ours: () => superheat(55, saturation(dewFahrenheit('R-410A', 130))).toFixed(3),
    unit: '°F',
    source: DEFINITION,
    status: 'PHYS',
    oracle: {
      name: 'CoolProp, between its figures',
      says: () => 55 - temperatureAt('R-410A', 'dew', 144.695949),
      within: 0.01,
    },
  },
  {
    what: 'subcooling, R-410A',
    input: '340 psig liquid, line 95 °F',
    published: '9.61',
    ours: () => subcooling(saturation(bubbleFahrenheit('R-410A', 340)), 95).toFixed(3),
    unit: '°F',
    source: DEFINITION,
    status: 'PHYS',
    oracle: {
      name: 'CoolProp, between its figures',
      says: () => temperatureAt('R-410A', 'bubble', 354.695949) - 95,
      within: 0.01,
    },
  },
  {
    what: 'superheat, the atmosphere forgotten',
    input: '130 psi taken as absolute, line 55 °F',
    published: '16.35',
    ours: () => superheat(55, saturation(dewFahrenheit('R-410A', 130))).toFixed(3),
    within: 5,
    unit: '°F',
    source: 'arithmetic: it would condemn a good charge',
    status: 'PHYS',
    wrong: true,
  },
  {
    what: 'subcooling from dew in place of bubble, R-454B',
    input: '300 psig liquid, line 90 °F',
    published: '12.2',
    ours: () => subcooling(saturation(bubbleFahrenheit('R-454B', 300)), 90).toFixed(3),
    within: 1,
    unit: '°F',
    source: 'arithmetic: with glide the two lines are 2.7 °F apart',
    status: 'PHYS',
    wrong: true,
    oracle: {
      name: 'CoolProp, between its figures',
      says: () => temperatureAt('R-454B', 'bubble', 314.695949) - 90,
      within: 0.05,
    },
  },
];

const ORIFICE: readonly [number, number, string][] = [
  [67, 95, '13'],
  [63, 85, '12'],
  [67, 80, '20.5'],
  [58, 95, '-0.5'],
];
const targets = ORIFICE.map(
  ([wet, outdoor, published]): Check => ({
    what: 'target superheat, fixed orifice',
    input: `return ${wet} °F wet-bulb, outdoors ${outdoor} °F`,
    published,
    ours: () => targetSuperheat(wet, outdoor).toString(),
    within: 0,
    unit: '°F',
    source: 'common practice, no single source: (3·WB − 80 − DB)/2',
    status: 'CP',
  }),
);

const PRACTICE = 'common practice, no single source';
const habits: Check[] = (
  [
    ['superheat behind a valve, least', '8', LIMITS.superheat.valveLow],
    ['superheat behind a valve, most', '12', LIMITS.superheat.valveHigh],
    ['subcooling without a label, least', '8', LIMITS.subcooling.low],
    ['subcooling without a label, most', '15', LIMITS.subcooling.high],
  ] as const
).map(
  ([what, published, limit]): Check => ({
    what,
    input: 'limit in force',
    published,
    ours: () => limit.value,
    within: 0,
    unit: '°F',
    source: PRACTICE,
    status: 'CP',
  }),
);

checks('superheat', [...lines, ...targets, ...habits]);
