/** Two named points and the meter between them: a row for each pair, in the order in which they are read. */
import type { Probes } from './data.ts';
import { type Sketch, WIDTH } from './frame.ts';
import { shortened, widthOf } from './lettering.ts';
import { box, dot, ring, stroke, write } from './svg.ts';

/** A row with what is good under it, and one without. */
const ROW = 78;
const BARE = 62;
const EDGE = 8;
const MOST_NAMED = 4;
const TIP = 26;
const METER = { top: 24, height: 30 };

export function probes({ mode, on }: Probes): Sketch {
  const tops = on.map((_, i) => on.slice(0, i).reduce((sum, pair) => sum + heightOf(pair), 0));
  const rows = on.map((pair, i) => row(pair, `${on.length > 1 ? `${i + 1}.\u2009` : ''}${mode}`, tops[i] ?? 0));
  return {
    // The rows say it themselves; many in a title would be a text of their own.
    title:
      on.length > MOST_NAMED
        ? `Where the leads go: ${on.length} pairs, in this order`
        : `Where the leads go: ${on.map(({ from, to }) => `${from}–${to}`).join(', ')}`,
    says: on.map(
      ({ from, to, good }, i) =>
        `${on.length > 1 ? `${i + 1}. ` : ''}One lead on ${from}, one on ${to}, in ${mode}.${good === undefined ? '' : ` Good: ${good}.`}`,
    ),
    height: on.reduce((sum, pair) => sum + heightOf(pair), 0),
    marks: rows.flatMap(({ marks }) => marks),
    words: rows.flatMap(({ words }) => words),
  };
}

const heightOf = ({ good }: Probes['on'][number]): number => (good === undefined ? BARE : ROW);

function row(
  { from, to, good }: Probes['on'][number],
  sign: string,
  top: number,
): { marks: string[]; words: string[] } {
  const width = Math.max(84, widthOf(sign) * 0.96 + 16);
  const [left, right] = [(WIDTH - width) / 2, (WIDTH + width) / 2];
  const y = top + METER.top + METER.height / 2;
  const [one, other] = [
    { x: TIP, y },
    { x: WIDTH - TIP, y },
  ];
  const most = WIDTH / 2 - EDGE - 4;
  return {
    marks: [
      ...[one, other].flatMap((tip) => [ring(tip, 11, 2), dot(tip, 6)]),
      stroke([one, { x: left, y }], 3.5),
      stroke([{ x: right, y }, other], 3.5),
      box({ x: left, y: top + METER.top }, width, METER.height),
    ],
    words: [
      write({ x: EDGE, y: top + 16 }, shortened(from, most), { bold: true }),
      write({ x: WIDTH - EDGE, y: top + 16 }, shortened(to, most), { bold: true, anchor: 'end' }),
      write({ x: WIDTH / 2, y: top + METER.top + 20 }, sign, { bold: true, anchor: 'middle' }),
      ...(good === undefined
        ? []
        : [write({ x: WIDTH / 2, y: top + METER.top + 47 }, shortened(good, WIDTH - 2 * EDGE), { anchor: 'middle' })]),
    ],
  };
}
