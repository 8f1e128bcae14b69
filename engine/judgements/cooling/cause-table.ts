/** The cause table of a circuit that runs and doesn't cool. Common practice, no single source. */
export const LEVELS = ['low', 'normal', 'high'] as const;
export type Level = (typeof LEVELS)[number];
export const COLUMNS = ['suction', 'head', 'superheat', 'subcooling'] as const;
export type Column = (typeof COLUMNS)[number];
export type Pattern = Readonly<Record<Column, Level>>;

export const CAUSES = [
  'normal',
  'undercharge',
  'restriction',
  'airflow',
  'overcharge',
  'condenser-air',
  'not-pumping',
  'overfeeding',
] as const;
export type Cause = (typeof CAUSES)[number];

interface Row {
  readonly cause: Cause;
  /** What a person does with it. */
  readonly text: string;
  readonly levels: Readonly<Record<Column, readonly Level[]>>;
}
const row = (
  cause: Cause,
  suction: readonly Level[],
  head: readonly Level[],
  superheat: readonly Level[],
  subcooling: readonly Level[],
  text: string,
): Row => ({ cause, text, levels: { suction, head, superheat, subcooling } });
const [low, normal, high] = [['low'], ['normal'], ['high']] as const;

/** No pattern fits two rows. */
export const ROWS: readonly Row[] = [
  row('normal', normal, normal, normal, normal, 'The circuit reads as it should. The trouble is not in the charge.'),
  row('undercharge', low, low, high, low, 'It is short of refrigerant. Find the leak first.'),
  row(
    'restriction',
    low,
    ['low', 'normal'],
    high,
    ['normal', 'high'],
    'Something restricts the liquid. Measure across the drier and look at the valve.',
  ),
  row(
    'airflow',
    low,
    ['low', 'normal'],
    low,
    normal,
    'Too little air or load at the evaporator, or ice. It is not the charge.',
  ),
  row(
    'overcharge',
    high,
    high,
    ['normal', 'low'],
    high,
    'Too much refrigerant, or air in it. The standing pressure against the ambient saturation tells which.',
  ),
  row('condenser-air', high, high, normal, normal, 'The condenser gets too little air, or warm air again.'),
  row(
    'not-pumping',
    high,
    low,
    ['normal', 'high'],
    ['low', 'normal'],
    'It does not pump. Rule out reversing valve, unloader and rotation before the compressor.',
  ),
  row(
    'overfeeding',
    high,
    ['normal', 'low'],
    low,
    low,
    'The metering device feeds too much. Look at the bulb and how it is strapped.',
  ),
];

/** Columns in which a pattern doesn't fit a row. */
export const misfits = (pattern: Pattern, { levels }: Row): Column[] =>
  COLUMNS.filter((column) => !levels[column].includes(pattern[column]));
