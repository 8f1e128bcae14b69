/** The demo's jobs, line by line. Figures are invented and fit each other: 33.2 · 7.41 / 40.61 = 6.06. */
type Line = readonly [by: 'ines' | 'ruth' | 'dana', text: string];
export interface DemoJob {
  readonly title: string;
  readonly client: string;
  readonly minutesAgo: number;
  /** The unit's own record, where the shop has one. */
  readonly equipment?: string;
  readonly lines: readonly Line[];
}
const ines = (...lines: string[]): Line[] => lines.map((text) => ['ines', text]);

const toReadings = (label: string, ...first: string[]): Line[] =>
  ines(
    'psc',
    ...first,
    'yes',
    'pull-out, breaker, no other feed, two legs, outlet',
    'yes',
    `clean, 1 cap, ${label}`,
    '120.6 / 0.1 0 0.1 / 0 0 / 120.5',
    '9.2 / 0.4 0.1 0.3 / 9.2',
    'fuses 0.1 0.1 contacts .1 .2 coil 12.4 t1g ol t2g ol',
    label,
    'wires off',
  );

export const DEMO_JOBS: readonly DemoJob[] = [
  {
    title: 'Alder Court 14, unit 3: fan runs, no cold air',
    client: 'demo-1',
    minutesAgo: 150,
    equipment: 'unit-1',
    lines: [
      ...ines('d'),
      ...toReadings('40+7.5 µF ±6 % 440 VAC'),
      ...ines(
        'herm 33.2 fan 7.41 hf 6.06 case ol',
        'spin free',
        'cr 1.1 cs 3.4 sr 4.5 g ol',
        'coil dirty',
        'first herm 40.3 fan 7.55 hf 6.36 case ol',
        'fitted',
        'wires back',
        'closed',
        '238 237 comp 10.9 fan 0.9 split 18',
      ),
    ],
  },
  {
    title: 'Mill Lane 2: compressor runs, fan still',
    client: 'demo-2',
    minutesAgo: 14,
    equipment: 'unit-2',
    lines: [...ines('c'), ...toReadings('35+5 µF ±6 % 370 VAC', 'neither')],
  },
  {
    title: 'Harrow Yard 9, roof: trips after seconds',
    client: 'demo-3',
    minutesAgo: 3,
    lines: [['dana', 'note second call this week, key at the gate']],
  },
];
