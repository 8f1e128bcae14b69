/** A reading on the scale of its limits: the label's range, the reading with its doubt as a whisker, the habit dotted. */
import { Exact, type Range } from '../calc/exact.ts';
import { deviationPercent } from '../calc/tolerance.ts';
import { digits, say, sayRange, saySigned } from '../judgements/say.ts';
import type { Scale } from './data.ts';
import { type Sketch, WIDTH } from './frame.ts';
import { kept, shortened, widthOf } from './lettering.ts';
import { box, dotted, type Point, solid, stroke, write } from './svg.ts';

/** Where the scale lies. On both sides there is room for the figure of a limit. */
const [LEFT, RIGHT] = [72, 248];
const EDGE = 8;
const READ = 44;
const WHISKER = 66;
const BAND = { top: 84, bottom: 104 };
const HABIT = 144;

export function scale(data: Scale): Sketch {
  const { name, unit, word, habit } = data;
  const [limits, reading] = [rangeOf(data.limits), new Exact(data.reading)];
  const doubt = data.doubt && rangeOf(data.doubt);
  const at = placing([limits, doubt, habit && rangeOf(habit), { low: reading, high: reading }]);
  const read = `${say(reading, unit)}${doubt ? ` ±${say(doubt.high.minus(reading), unit, 2, 2)}` : ''}`;
  const title = `${name}: ${word}`;
  return {
    title: `${name} on the scale of its limits`,
    says: words(data, limits, reading, doubt),
    height: habit ? 178 : 132,
    marks: [
      ...limitMarks(limits, at),
      ...(doubt ? whisker(doubt, at) : []),
      solid(diamond({ x: at(reading), y: WHISKER })),
      ...(habit ? [dotted(bracket(at(habit.low), at(habit.high)))] : []),
    ],
    words: [
      write({ x: EDGE, y: 20 }, shortened(title, WIDTH - 2 * EDGE, 16), { size: 16, bold: true }),
      write({ x: kept(at(reading), widthOf(read), EDGE, WIDTH - EDGE), y: READ }, read, { anchor: 'middle' }),
      ...limitWords(data, limits, at),
      ...(habit ? [write({ x: WIDTH / 2, y: HABIT + 24 }, habitWords(data, habit), { anchor: 'middle' })] : []),
    ],
  };
}

const rangeOf = ({ low, high }: { low: string; high: string }): Range => ({
  low: new Exact(low),
  high: new Exact(high),
});
type At = (figure: Exact | string) => number;

/** Figure → px. The scale is as wide as what is on it. */
function placing(ranges: readonly (Range | null)[]): At {
  const all = ranges.filter((each) => each !== null);
  const low = Exact.min(...all.map((each) => each.low));
  const span = Exact.max(...all.map((each) => each.high)).minus(low);
  return (figure) =>
    span.isZero() ? (LEFT + RIGHT) / 2 : LEFT + new Exact(figure).minus(low).div(span).toNumber() * (RIGHT - LEFT);
}

function limitMarks({ low, high }: Range, at: At): string[] {
  const [from, to] = [at(low), at(high)];
  const { top, bottom } = BAND;
  return [
    stroke(line(EDGE, bottom, WIDTH - EDGE), 2),
    box({ x: from, y: top }, Math.max(0, to - from), bottom - top),
    stroke(
      [
        { x: from, y: WHISKER + 10 },
        { x: from, y: bottom + 6 },
      ],
      3.5,
    ),
    stroke(
      [
        { x: to, y: WHISKER + 10 },
        { x: to, y: bottom + 6 },
      ],
      3.5,
    ),
  ];
}

function limitWords({ rated, unit }: Scale, { low, high }: Range, at: At): string[] {
  const [from, to] = [at(low), at(high)];
  const y = BAND.bottom + 22;
  const [below, above] = [digits(low, 4, 2), digits(high, 4, 2)];
  const within = rated === null ? '' : `rated ${say(rated, unit)}`;
  // Between the limits only where neither figure beside it is touched.
  const room = to - from;
  return [
    ...(room < 72 ? [] : [write({ x: (from + to) / 2, y: BAND.bottom - 5 }, 'limits', { anchor: 'middle' })]),
    write({ x: from, y }, below, { anchor: 'end' }),
    write({ x: to, y }, above),
    ...(within !== '' && widthOf(within) + 12 < room
      ? [write({ x: (from + to) / 2, y }, within, { anchor: 'middle' })]
      : []),
  ];
}

const line = (from: number, y: number, to: number): Point[] => [
  { x: from, y },
  { x: to, y },
];
function whisker({ low, high }: Range, at: At): string[] {
  const ends = [at(low), at(high)] as const;
  return [
    stroke(line(ends[0], WHISKER, ends[1]), 3.5),
    ...ends.map((x) =>
      stroke(
        [
          { x, y: WHISKER - 7 },
          { x, y: WHISKER + 7 },
        ],
        3,
      ),
    ),
  ];
}
const diamond = ({ x, y }: Point): Point[] => [
  { x, y: y - 8 },
  { x: x + 7, y },
  { x, y: y + 8 },
  { x: x - 7, y },
];
const bracket = (from: number, to: number): Point[] => [
  { x: from, y: HABIT - 8 },
  { x: from, y: HABIT },
  { x: to, y: HABIT },
  { x: to, y: HABIT - 8 },
];

type Habit = NonNullable<Scale['habit']>;
const habitWords = ({ unit }: Scale, habit: Habit): string =>
  shortened(`habit ${sayRange(rangeOf(habit), unit)}, doesn’t decide`, WIDTH - 2 * EDGE);

function words(
  { name, unit, rated, habit, word }: Scale,
  limits: Range,
  reading: Exact,
  doubt: Range | null,
): string[] {
  const off =
    rated === null || new Exact(rated).isZero()
      ? ''
      : `, ${saySigned(deviationPercent(reading, rated), '%', 1)} off the rated ${say(rated, unit)}`;
  const side = reading.lt(limits.low) ? 'below' : reading.gt(limits.high) ? 'above' : 'inside';
  return [
    `${name} reads ${say(reading, unit)}${off}, ${side} the limits of ${sayRange(limits, unit)}.`,
    ...(doubt
      ? [
          `The doubt of ±${say(doubt.high.minus(reading), unit, 2, 2)} reaches from ${sayRange(doubt, unit, 4)}${crossing(doubt, limits)}.`,
        ]
      : []),
    ...(habit
      ? [`The ±${say(habit.percent, '%')} habit, dotted, spans ${sayRange(rangeOf(habit), unit)} and doesn’t decide.`]
      : []),
    `Verdict: ${word}.`,
  ];
}
function crossing(doubt: Range, limits: Range): string {
  if (doubt.high.lt(limits.low) || doubt.low.gt(limits.high)) return ', wholly outside';
  return doubt.low.gte(limits.low) && doubt.high.lte(limits.high) ? ', wholly inside' : ', across a limit';
}
