/** The heat index against the printed chart of the US National Weather Service, and its equation as printed. */
import { evaluate } from 'mathjs';
import { heatCategory, heatIndexFahrenheit } from '../../engine/calc/air/heat-index.ts';
import { LIMITS } from '../../flows/limits.ts';
import { type Check, checks } from './check.ts';

const CHART = 'NWS heat index chart (srh.noaa.gov/tsa), read';
const EQUATION = 'wpc.ncep.noaa.gov/html/heatindex_equation.shtml, read';
const SIMPLE = '(0.5*(T+61+((T-68)*1.2)+RH*0.094) + T)/2';
const PRINTED =
  '-42.379 + 2.04901523*T + 10.14333127*RH - .22475541*T*RH - .00683783*T*T - .05481717*RH*RH + .00122874*T*T*RH + .00085282*T*RH*RH - .00000199*T*T*RH*RH';
const DRY = '((13-RH)/4)*sqrt((17-abs(T-95))/17)';
const HUMID = '((RH-85)/10)*((87-T)/5)';
/** The page's own words, computed by somebody else's program. */
function asPrinted(T: number, RH: number): number {
  const at = (formula: string): number => evaluate(formula, { T, RH }) as number;
  const simple = at(SIMPLE);
  if (simple < 80) return simple;
  const adjusted = RH < 13 && T >= 80 && T <= 112 ? -at(DRY) : RH > 85 && T >= 80 && T <= 87 ? at(HUMID) : 0;
  return at(PRINTED) + adjusted;
}
const mathjs = (t: number, rh: number) => ({
  name: 'mathjs, the equation as printed',
  says: () => asPrinted(t, rh),
  within: 1e-6,
});

const CELLS: readonly [number, number, string, string][] = [
  [90, 70, '106', '105.922'],
  [96, 65, '121', '121.032'],
  [100, 40, '109', '109.256'],
  [100, 55, '124', '123.638'],
  [104, 40, '119', '118.877'],
  [88, 75, '103', '103.113'],
  [84, 60, '88', '87.524'],
  [92, 60, '105', '104.684'],
  [110, 40, '136', '135.657'],
  [86, 90, '105', '105.394'],
  [80, 40, '80', '79.79'],
];
const NO_CELLS: readonly [number, number, string, string][] = [
  [100, 10, '94.1225', 'dry adjustment'],
  [85, 90, '101.7808', 'humid adjustment'],
  [75, 50, '74.775', 'simple form'],
  [84, 95, '100.88', 'humid adjustment'],
  [95, 5, '88.17678', 'dry adjustment'],
  [112, 5, '103.65057', 'where the dry adjustment ends'],
  [80, 90, '86.34189', 'where the humid adjustment begins'],
  [87, 90, '109.18319', 'where the humid adjustment ends'],
];
const of = (t: number, rh: number, published: string, more: Pick<Check, 'what' | 'source' | 'status'>): Check => ({
  ...more,
  input: `${t} °F, ${rh} %`,
  published,
  ours: () => heatIndexFahrenheit(t, rh).toFixed(8),
  unit: '°F',
  oracle: mathjs(t, rh),
});

/** Each category on both sides of its beginning. */
const EDGES: readonly [string, string][] = [
  ['79.9', 'none'],
  ['80', 'caution'],
  ['89.9', 'caution'],
  ['90', 'extreme-caution'],
  ['102.9', 'extreme-caution'],
  ['103', 'danger'],
  ['124.9', 'danger'],
  ['125', 'extreme-danger'],
];
const from = LIMITS.heatIndex;
const categoryOf = (index: string) =>
  heatCategory(index, {
    caution: from.caution.value,
    extremeCaution: from.extremeCaution.value,
    danger: from.danger.value,
    extremeDanger: from.extremeDanger.value,
  });

checks('heat index', [
  ...CELLS.flatMap(([t, rh, cell, exact]) => [
    of(t, rh, cell, { what: 'heat index, chart', source: CHART, status: 'V' }),
    of(t, rh, exact, { what: 'heat index, equation', source: EQUATION, status: 'PHYS' }),
  ]),
  ...NO_CELLS.map(([t, rh, published, why]) =>
    of(t, rh, published, { what: `heat index, ${why}`, source: EQUATION, status: 'PHYS' }),
  ),
  {
    // There the equation and the chart part company, and the chart is the one that people are shown.
    ...of(84, 95, '98', { what: 'heat index, the corner to avoid', source: CHART, status: 'V' }),
    within: 1.3,
    wrong: true,
  },
  {
    ...of(75, 50, '74.55', { what: 'heat index, simple form not averaged', source: EQUATION, status: 'PHYS' }),
    wrong: true,
  },
  ...EDGES.map(
    ([index, published]): Check => ({
      what: 'category',
      input: `heat index ${index} °F`,
      published,
      ours: () => categoryOf(index),
      unit: '',
      source: 'NWS categories as now in use, several reprints; half-open by our choice',
      status: 'V2',
    }),
  ),
  {
    what: 'category by the older chart',
    input: 'heat index 104 °F',
    published: 'extreme-caution',
    ours: () => categoryOf('104'),
    unit: '',
    source: 'srh.noaa.gov, older chart: danger from 105; not the one in use',
    status: 'V',
    wrong: true,
  },
  {
    what: 'category by the older chart',
    input: 'heat index 127 °F',
    published: 'danger',
    ours: () => categoryOf('127'),
    unit: '',
    source: 'srh.noaa.gov, older chart: extreme danger from 130; not the one in use',
    status: 'V',
    wrong: true,
  },
  {
    what: 'perishable goods kept at or below',
    input: 'limit in force',
    published: '41',
    ours: () => LIMITS.urgency.goods.value,
    unit: '°F',
    source: 'FDA Food Code, 41 °F (5 °C)',
    status: 'V2',
  },
]);
