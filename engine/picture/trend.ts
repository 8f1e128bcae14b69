/** One reading over the visits: a small line, a dot for what was read, a ring for a part that went in new. */
import { type Drawn, framed, WIDTH } from './frame.ts';
import { dot, type Point, ring, stroke, write } from './svg.ts';

export interface TrendPoint {
  readonly at: string;
  /** A plain decimal. */
  readonly value: string;
  readonly fitted: boolean;
}
const [LEFT, RIGHT, TOP, BOTTOM, HEIGHT] = [16, 16, 40, 84, 124] as const;
const day = (at: string): string => at.slice(0, 10);

/** @param unit as it is shown; points in the order of time, at least two */
export function drawTrend(name: string, unit: string, points: readonly TrendPoint[], key: string): Drawn {
  const values = points.map(({ value }) => Number(value));
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const times = points.map(({ at }) => Date.parse(at));
  const [from, to] = [Math.min(...times), Math.max(...times)];
  const place = (i: number): Point => ({
    // Visits of one moment stand side by side.
    x:
      LEFT + (WIDTH - LEFT - RIGHT) * (to > from ? ((times[i] ?? from) - from) / (to - from) : i / (points.length - 1)),
    y: high > low ? BOTTOM - ((BOTTOM - TOP) * ((values[i] ?? low) - low)) / (high - low) : (TOP + BOTTOM) / 2,
  });
  // A new part begins a line of its own: what it reads has nothing to do with the old one.
  const lines: Point[][] = [];
  for (const [i, { fitted }] of points.entries()) {
    if (i === 0 || fitted) lines.push([place(i)]);
    else lines.at(-1)?.push(place(i));
  }
  const said = (i: number): string => `${points[i]?.value ?? ''}\u2009${unit}`;
  const last = points.length - 1;
  return framed(
    {
      title: `${name} over ${points.length} visits`,
      says: points.map(
        ({ at, fitted }, i) => `${day(at)}: ${said(i)}${fitted ? ', a new part' : ''}${i < last ? ';' : '.'}`,
      ),
      height: HEIGHT,
      marks: [
        ...lines.filter((line) => line.length > 1).map((line) => stroke(line, 2)),
        ...points.map(({ fitted }, i) => (fitted ? ring(place(i), 5, 2) : dot(place(i), 4))),
      ],
      words: [
        write({ x: LEFT, y: 20 }, `${name}: ${said(0)}`),
        write({ x: WIDTH - RIGHT, y: 20 }, said(last), { anchor: 'end', bold: true }),
        write({ x: LEFT, y: HEIGHT - 10 }, day(points[0]?.at ?? '')),
        write({ x: WIDTH - RIGHT, y: HEIGHT - 10 }, day(points[last]?.at ?? ''), { anchor: 'end' }),
      ],
    },
    { key },
  );
}
