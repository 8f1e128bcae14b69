/** The demo's jobs, line by line. Figures are invented and fit each other: 33.2 · 7.41 / 40.61 = 6.06. */
type Line = readonly [by: 'ines' | 'ruth' | 'dana', text: string];
export interface DemoJob {
  readonly title: string;
  readonly client: string;
  readonly minutesAgo: number;
  readonly lines: readonly Line[];
}
const ines = (...lines: string[]): Line[] => lines.map((text) => ['ines', text]);

const toReadings = (label: string): Line[] =>
  ines(
    'psc',
    'yes',
    'pull-out, breaker, no other feed, two legs, outlet',
    'yes',
    `clean, 1 cap, ${label}`,
    '120.6 / 0.1 0 0.1 / 0 0 / 120.5',
    '9.2 / 0.4 0.1 0.3 / 9.2',
    'done',
    'marked',
  );

export const DEMO_JOBS: readonly DemoJob[] = [
  {
    title: 'Alder Court 14, unit 3: fan runs, no cold air',
    client: 'demo-1',
    minutesAgo: 150,
    lines: [
      ...ines('d'),
      ...toReadings('40+7.5 µF ±6 % 440 VAC'),
      ...ines(
        'herm 33.2 fan 7.41 hf 6.06 case ol',
        'done',
        'done',
        'done',
        'rla 14.7 lra 80 fla 1.1',
        'yes',
        '238 10.9 0.9',
        'runs and cools',
      ),
    ],
  },
  {
    title: 'Mill Lane 2: compressor runs, fan still',
    client: 'demo-2',
    minutesAgo: 14,
    lines: [...ines('c'), ...toReadings('35+5 µF ±6 % 370 VAC')],
  },
  {
    title: 'Harrow Yard 9, roof: trips after seconds',
    client: 'demo-3',
    minutesAgo: 3,
    lines: [['dana', 'note second call this week, key at the gate']],
  },
];
