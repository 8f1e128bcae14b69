/**
 * The pieces of a plate that carry their own unit or key, in the order they are looked for. Each pattern reads folded
 * lower-case text of the same length; what one has taken the next doesn't see. Its groups are the values.
 */
import {
  behind,
  between,
  chain,
  DOT,
  GAP,
  key,
  MICRO,
  N,
  type PlateRule,
  V,
  VOLT,
  WORD_END,
  wordsAs,
} from './pattern.ts';

const CHARGE = `(?:${key('(?:factory |system |total |unit )?charged?')}[^\\d\\n]{0,12})?`;
const HP = '(\\d{1,2}/\\d{1,2}|\\d{1,2}(?:\\.\\d{1,2})?|\\.\\d{1,3})';
const charge = (unit: string, words: string, to: number): PlateRule =>
  between('charge', unit, `${CHARGE}${N}\\s?(?:${words})${WORD_END}`, [0, to]);
/** No other figure and no letter touches it on its right. */
const ALONE = '(?![\\p{L}\\p{N}]|[.,]\\d)';

const CODES: readonly PlateRule[] = [
  wordsAs(
    'number',
    `${key('model|mod|mdl|m/n|serial|ser|s/n|part|p/n|cat|mfg date|date|lot')}[ .:#]{0,3}(?:(?:no|number|nr)[ .:#]{1,3})?((?=[a-z/-]{0,12}\\d)[a-z0-9][a-z0-9/-]{1,24})${WORD_END}`,
  ),
  wordsAs('standard', `${key('iec|en|ul|eia|csa|ansi|is')}[ :]?(\\d{2,5}(?:-\\d{1,2})?(?::\\d{4})?)${WORD_END}`),
  wordsAs('number', `(?<![\\p{L}\\p{N}])(cbb\\d{2}[a-z]?(?:-\\d)?)${WORD_END}`),
  wordsAs('fault-current', '(?<![\\p{L}\\p{N}.,])(\\d{1,2},?\\d{3})\\s?(?:afc|a\\.f\\.c\\.)'),
  wordsAs('temperatures', `(-?\\d{2}\\s?(?:°\\s?c)?\\s?(?:/|to|\\.\\.\\.?)\\s?\\+?\\d{2,3})\\s?°\\s?c${WORD_END}`),
  wordsAs('climate', '(?<![\\p{L}\\p{N}.,/])(\\d{2}/0?\\d{2,3}/(?:21|56|10|0?4))(?![\\p{N}/])(?!\\s?(?:v|hz))'),
];

const CAPACITANCE: readonly PlateRule[] = [
  between('sections', 'µF', `${N}\\s?(?:${MICRO}\\s?)?[+/&]\\s?${V}\\s?${MICRO}${WORD_END}`, [1, 120]),
  between('range', 'µF', `${N}\\s?(?:-|to)\\s?${V}\\s?${MICRO}${WORD_END}`, [10, 1500]),
  between('range', 'µF', `${key(MICRO)}${GAP}${V}\\s?(?:-|to)\\s?${V}${ALONE}`, [10, 1500]),
  behind('sections', 'µF', MICRO, [1, 400]),
  // On a motor: "CAP 5/370".
  between(
    'sections',
    'µF',
    `${key('cap(?:acitor)?')}${GAP}(\\d{1,2}(?:\\.\\d)?)(?=\\s?/\\s?(?:370|440)(?!\\p{N}))`,
    [1, 60],
  ),
  between('volts', 'V', '(?<=\\uffff)\\s?/\\s?(370|440)\\s?(?:vac|v)?(?![\\p{L}\\p{N}]|[.,]\\d)', [370, 440]),
  between('tolerance', '%', `-\\s?${V}\\s?%?\\s?/\\s?\\+\\s?${V}\\s?(?:%|percent)`, [0, 30]),
  between(
    'tolerance',
    '%',
    `(?<!\\d\\s?[+-]\\s?)(?:±|\\+/-|\\+-)?\\s?(?<![\\p{N}.,/]|\\d\\s?[+-]\\s?)${V}\\s?(?:%|percent|pct)`,
    [0.5, 30],
  ),
];

/** "208/230-1-60": volts, phase, hertz joined by dashes or slashes. */
const SUPPLY: readonly PlateRule[] = [
  between(
    'volts',
    'V',
    '(?<![\\p{L}\\p{N}.,/-])(\\d{3})(?:\\s?[/-]\\s?(\\d{3}))?\\s?v?\\s?[-/]\\s?(?=(?:[13]\\s?(?:ph|ø)?\\s?[-/]\\s?(?:50|60)|(?:50|60)\\s?(?:hz)?\\s?[-/]\\s?[13])(?!\\p{N}))',
    [100, 600],
  ),
  between('phase', '', '(?<=\\uffff)([13])\\s?(?:ph)?(?=\\s?[-/]\\s?(?:50|60)(?!\\p{N}))', [1, 3]),
  between('hertz', 'Hz', '(?<=\\uffff)(?:\\s?[-/]\\s?)?(50|60)\\s?(?:hz)?(?![\\p{L}\\p{N}]|[.,]\\d)', [50, 60]),
  between('phase', '', '(?<=\\uffff)\\s?[-/]\\s?([13])\\s?(?:ph)?(?![\\p{L}\\p{N}]|[.,]\\d)', [1, 3]),
  between('hertz', 'Hz', '(?<![\\p{L}\\p{N}.,])(50|60)(?: ?/ ?(50|60))? ?(?:hz|hertz|cycles?|~)', [50, 60]),
  between(
    'hertz',
    'Hz',
    `${key('hz|hertz|cy|cycles?|freq|frequency')}${GAP}(50|60)(?:\\s?/\\s?(50|60))?${ALONE}`,
    [50, 60],
  ),
  between(
    'hertz',
    'Hz',
    `(?<![\\p{L}\\p{N}.,/+-])(50) ?/ ?(60)(?! ?(?:${MICRO}|a|amps?|v|%|rla|lra|fla|res)(?!\\p{L}))(?![\\p{L}\\p{N}/+-]|[.,]\\d)`,
    [50, 60],
  ),
  between('phase', '', `(?<![\\p{L}\\p{N}.,/])([13]) ?(?:ph|phase|ø|φ|∅)${WORD_END}`, [1, 3]),
  between('phase', '', `${key('ph|phase')}${GAP}([13])${ALONE}`, [1, 3]),
  wordsAs('phase', key('(single|three)[ -]phase')),
  behind('coil-volts', 'V', `${VOLT} ?coil`, [12, 480]),
  chain('coil-volts', 'V', `coil(?: volts?| voltage)?`, [12, 480], `(?: ?${VOLT})?`),
  chain('lowest-volts', 'V', `min(?:imum)?\\.? ?(?:operating |supply )?(?:${VOLT}|voltage)`, [90, 600]),
  chain('highest-volts', 'V', `max(?:imum)?\\.? ?(?:operating |supply )?(?:${VOLT}|voltage)`, [90, 650]),
  // Glued, so that it is no key of the next figure.
  between('volts', 'V', `${N}(?: ?[/-] ?${V})?(?: ?[/-] ?${V})?${VOLT}${WORD_END}`, [12, 700]),
];

const UNIT: readonly PlateRule[] = [
  wordsAs(
    'refrigerant',
    `(?<![\\p{L}\\p{N}])(?:(?:refrigerant|refrig|ref)[ .:]{0,3})?(r\\s?-?\\s?\\d{2,4}[a-f]{0,2})${WORD_END}`,
  ),
  between('charge', 'lb and oz', `${CHARGE}${N}\\s?lbs?\\.?,?\\s?${V}\\s?(?:oz|ounces?)${WORD_END}`, [0, 60]),
  charge('lb', 'lbs?|pounds?', 60),
  charge('oz', 'oz|ounces?', 960),
  charge('kg', 'kg', 30),
];

const MOTOR: readonly PlateRule[] = [
  wordsAs('horsepower', `(?<![\\p{L}\\p{N}.,/])(\\d{1,2}/\\d{1,2})\\s?(?:hp|h\\.p\\.)${WORD_END}`),
  wordsAs('horsepower', `${key('hp|h\\.p\\.')}${GAP}${HP}(?![\\p{L}\\p{N}/]|[.,]\\d)`),
  wordsAs('horsepower', `(?<![\\p{L}\\p{N}.,/])${HP}\\s?(?:hp|h\\.p\\.)${WORD_END}`),
  between('speed', 'rpm', `${N}(?:\\s?/\\s?${V})?\\s?(?:rpm|r/min)${WORD_END}`, [200, 4000]),
  chain('speed', 'rpm', 'rpm', [200, 4000]),
  behind('watts', 'W', 'w|watts?', [1, 50_000]),
  between('poles', '', `(?<![\\p{L}\\p{N}.,/])([1-4])[ -]?(?:poles?|p)${WORD_END}`, [1, 4]),
  between('poles', '', `${key('poles?')}${GAP}([1-4])${ALONE}`, [1, 4]),
  chain('service-factor', '', 'sf|s\\.f\\.|service factor', [1, 2]),
  chain('ambient', '°C', 'amb(?:ient)?(?: temp)?|temp rise|rise', [20, 150], '\\s?°?\\s?c'),
  behind('ambient', '°C', '°?\\s?c\\s?(?:amb(?:ient)?|rise)', [20, 150]),
  wordsAs(
    'insulation-class',
    `${key('ins(?:ulation)?\\.?(?: cl(?:ass)?\\.?)?|class|cl')}[ .:]{0,3}([abfhn])${WORD_END}`,
  ),
  wordsAs('frame', `${key('frame|fr')}[ .:]{0,3}(\\d{2}[a-z]{0,2})${WORD_END}`),
  wordsAs('rotation', key('(?:rot(?:ation)?[ .:]{1,3})?(ccw|cw|cwle|ccwle|reversible|rev)')),
  wordsAs('duty', key(`(?:duty[ .:]{1,3})?(cont(?:inuous|${DOT})?|air over|ao)(?: duty)?`)),
  wordsAs('enclosure', key('(teao|tefc|tenv|odp|open drip proof)')),
  wordsAs('protection', `${key('(protected|p[0-2]|s[0-3])')}(?!\\p{N}|[.,]\\d)`),
];

export const RULES: readonly PlateRule[] = [...CODES, ...CAPACITANCE, ...SUPPLY, ...UNIT, ...MOTOR];

/** Amps and pressures that no key names: "30 amp", "amps 1.4". Looked for after the keyed ones. */
export const UNKEYED: readonly PlateRule[] = [
  behind('pressure', 'psig', 'psi[ga]?', [10, 900]),
  behind('amps', 'A', 'amps?|amperes?|a', [0.1, 600]),
  chain('amps', 'A', 'amps?|amperes?|a', [0.1, 600]),
];

/** Words that stand over a group of figures, or that only go with one. */
export const HEADINGS = new RegExp(
  key(
    `compressor|compr|comp|definite|purpose|outdoor|indoor|condenser|cond|fan|blower|motor|mtr|unit|design|test|pressures?|press|
     electrical|rating|ratings|data|capacitor|cap|run|start|dual|contactor|contacts?|herm|hermetic|factory|charged?|
     type|refrigerant|use|only|with|for|and|or|at|each|max(?:imum)?|min(?:imum)?|usa|input|output|supply|power|ac|side|
     high|low`.replace(/\s+/g, ''),
  ),
  'gu',
);
