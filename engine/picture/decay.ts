/** How the volts of a capacitor fall through the discharge resistor, with the accepted residual and the hold time. */
import { tauSeconds } from '../calc/discharge.ts';
import { Exact } from '../calc/exact.ts';
import { say } from '../judgements/say.ts';
import type { Decay } from './data.ts';
import { type Sketch, WIDTH } from './frame.ts';
import { kept, shortened, widthOf } from './lettering.ts';
import { dashed, dot, type Point, stroke, write } from './svg.ts';

const PLOT = { left: 64, right: 304, top: 52, bottom: 176 };
const EDGE = 8;
const STEPS = 48;

/**
 * The height is the square root of the volts: 5 V beside 600 V would lie on the axis, and the end is what matters.
 */
export function decay(data: Decay): Sketch {
  const [from, limit, hold, reached] = [data.fromVolts, data.limitVolts, data.holdSeconds, data.limitSeconds].map(
    (figure) => Math.max(0, Number(figure)),
  ) as [number, number, number, number];
  const tau = Math.max(1e-9, tauSeconds(data.microfarads, data.ohms).toNumber());
  const end = Math.max(hold, reached, 1e-3) * 1.1;
  const top = Math.max(from, limit, 1e-3);
  const x = (seconds: number) => PLOT.left + (seconds / end) * (PLOT.right - PLOT.left);
  const y = (volts: number) => PLOT.bottom - Math.sqrt(volts / top) * (PLOT.bottom - PLOT.top);
  const under = { x: x(reached), y: y(Math.min(from, limit)) };
  const [peak, left, held, met] = [
    say(data.fromVolts, 'V', 0),
    say(data.limitVolts, 'V'),
    say(data.holdSeconds, 's'),
    say(data.limitSeconds, 's', 2, 2),
  ];
  // Half the height is a quarter of the volts, and that has to be seen.
  const quarter = y(limit) - y(from / 4) < 16 ? null : say(new Exact(data.fromVolts).div(4), 'V', 0);
  const note = `under ${left} after ${met}`;
  const holds = `hold ${held}`;
  const holdAt = kept(x(hold), widthOf(holds, 16) * 1.1, PLOT.left + 30, WIDTH - EDGE);
  return {
    title: `Hold ${held} on each pair`,
    says: says(data, { peak, left, held, met }, quarter),
    height: 214,
    marks: [
      stroke(
        [
          { x: PLOT.left, y: PLOT.top - 6 },
          { x: PLOT.left, y: PLOT.bottom },
          { x: PLOT.right, y: PLOT.bottom },
        ],
        2,
      ),
      dashed([
        { x: PLOT.left, y: y(limit) },
        { x: PLOT.right, y: y(limit) },
      ]),
      stroke(
        [
          { x: x(hold), y: PLOT.top + 32 },
          { x: x(hold), y: PLOT.bottom + 6 },
        ],
        3.5,
      ),
      stroke(
        curve(from, tau, end).map(([s, v]) => ({ x: x(s), y: y(v) })),
        3.5,
      ),
      dot(under, 5.5),
      ...(quarter === null ? [] : [tick(y(from / 4))]),
      stroke(
        [
          { x: under.x, y: under.y - 9 },
          { x: under.x, y: PLOT.top + 20 },
        ],
        2,
      ),
    ],
    words: [
      write({ x: EDGE, y: 20 }, shortened(`Volts left on ${say(data.microfarads, 'µF')}`, WIDTH - 2 * EDGE, 16), {
        size: 16,
        bold: true,
      }),
      ...levels(peak, y(from), left, y(limit)),
      ...(quarter === null ? [] : [write({ x: PLOT.left - 8, y: y(from / 4) + 5 }, quarter, { anchor: 'end' })]),
      write({ x: kept(under.x, widthOf(note), PLOT.left + 44, WIDTH - EDGE), y: PLOT.top + 14 }, note, {
        anchor: 'middle',
      }),
      write({ x: PLOT.left, y: PLOT.bottom + 22 }, `0\u2009s`, { anchor: 'middle' }),
      write({ x: holdAt, y: PLOT.bottom + 24 }, holds, { size: 16, bold: true, anchor: 'middle' }),
    ],
  };
}

const tick = (y: number): string =>
  stroke([
    { x: PLOT.left - 4, y },
    { x: PLOT.left + 4, y },
  ]);

/** Both ends of the scale of volts; where they are too near each other only the limit. */
function levels(peak: string, high: number, left: string, low: number): string[] {
  const at = (y: number): Point => ({ x: PLOT.left - 8, y: y + 5 });
  return [
    ...(low - high < 16 ? [] : [write(at(high), peak, { anchor: 'end' })]),
    write(at(Math.min(low, PLOT.bottom - 4)), left, { anchor: 'end', bold: true }),
  ];
}

/** Seconds and volts at even steps: each step multiplies by the same factor. The first step is split, where it falls fast. */
function curve(from: number, tau: number, end: number): [number, number][] {
  const fast = Math.min(end, tau * 8);
  const factor = Math.exp(-fast / STEPS / tau);
  const points: [number, number][] = [];
  let volts = from;
  for (let i = 0; i <= STEPS; i++) {
    points.push([(fast * i) / STEPS, volts]);
    volts *= factor;
  }
  return fast < end ? [...points, [end, 0]] : points;
}

function says(
  data: Decay,
  { peak, left, held, met }: Record<'peak' | 'left' | 'held' | 'met', string>,
  quarter: string | null,
): string[] {
  const tau = tauSeconds(data.microfarads, data.ohms);
  const whole = new Exact(data.fromVolts).lte(data.limitVolts);
  return [
    `${say(data.microfarads, 'µF')} through ${say(data.ohms, 'Ω')}: the volts fall along a curve from ${peak} at 0\u2009s, to 37\u2009% every ${say(tau, 's', 2, 2)}.`,
    whole ? `They lie under ${left} from the start, after ${met}.` : `They are under ${left} after ${met}.`,
    ...(quarter === null ? [] : [`The scale is stretched towards 0\u2009V: half its height is ${quarter}.`]),
    `The hold time is ${held}. The residual that you read decides, not the clock.`,
  ];
}
