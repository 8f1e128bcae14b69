/** The way of a job so far: the places passed on a line, and the one where it stands. */
import type { Path } from './data.ts';
import { type Sketch, WIDTH } from './frame.ts';
import { shortened, wrap } from './lettering.ts';
import { dot, ring, stroke, write } from './svg.ts';

/** The last so many are drawn; a long day's way would fill the screen. */
const DRAWN = 8;
const LINE = 18;
const LEFT = 20;
const TEXT = 40;
const EDGE = 8;

interface Stop {
  readonly title: string;
  readonly page: string | null;
  readonly here: boolean;
}

export function path({ passed, here }: Path): Sketch {
  const drawn = passed.slice(-DRAWN);
  const before = passed.length - drawn.length;
  const stops: Stop[] = [...drawn, here].map(({ page, title }, i) => ({
    title,
    page: i === 0 || [...drawn, here][i - 1]?.page !== page ? page : null,
    here: i === drawn.length,
  }));
  const marks: string[] = [];
  const words: string[] = [];
  let y = 24;
  const tops: number[] = [];
  if (before > 0) {
    words.push(write({ x: TEXT, y }, `${before} before`));
    tops.push(y - 12);
    y += LINE + 8;
  }
  for (const stop of stops) {
    if (stop.page !== null) {
      words.push(write({ x: TEXT, y }, shortened(stop.page, WIDTH - TEXT - EDGE)));
      y += LINE + 2;
    }
    const at = { x: LEFT, y: y - 5 };
    tops.push(at.y);
    marks.push(...(stop.here ? [ring(at, 8, 3.5), dot(at, 3)] : [dot(at, 5)]));
    const lines = wrap(stop.title, WIDTH - TEXT - EDGE, 14, 2);
    lines.forEach((each, i) => {
      words.push(write({ x: TEXT, y: y + i * LINE }, each, { bold: stop.here }));
    });
    y += lines.length * LINE + 8;
  }
  const [first, last] = [tops[0] ?? 0, tops.at(-1) ?? 0];
  const line =
    last - 8 > first
      ? [
          stroke(
            [
              { x: LEFT, y: first },
              { x: LEFT, y: last - 10 },
            ],
            2.5,
          ),
        ]
      : [];
  return { title: 'The way so far', says: says(drawn, before, here), height: y, marks: [...line, ...marks], words };
}

function says(drawn: Path['passed'], before: number, here: Path['here']): string[] {
  const count = drawn.length + before;
  return [
    count === 0
      ? 'Nothing is passed yet.'
      : `Passed: ${count}${before > 0 ? `, ${before} before the first named here` : ''}.`,
    ...drawn.map(({ page, title }, i) => `${page === drawn[i - 1]?.page ? '' : `${page}: `}${ended(title)}`),
    `Here${here.page === drawn.at(-1)?.page ? '' : `, ${here.page}`}: ${ended(here.title)}`,
  ];
}
const ended = (title: string): string => (/[.?!]$/.test(title) ? title : `${title}.`);
