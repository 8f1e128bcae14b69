/** The three terminals of a single-phase compressor as a triangle: each side with its reading, and the rule of the sum. */
import { Exact } from '../calc/exact.ts';
import { say } from '../judgements/say.ts';
import type { Windings } from './data.ts';
import { type Sketch, WIDTH } from './frame.ts';
import { shortened } from './lettering.ts';
import { dashed, element, type Point, px, ring, stroke, write } from './svg.ts';

const C: Point = { x: 160, y: 52 };
const R: Point = { x: 76, y: 168 };
const S: Point = { x: 244, y: 168 };
const RADIUS = 15;
const EDGE = 8;

type Reading = Windings['crOhms'];
const shown = (reading: Reading): string =>
  reading === null ? 'not read' : reading === 'OL' ? 'OL' : say(reading, 'Ω', 3);

export function windings(data: Windings): Sketch {
  const sum = sumOf(data);
  const title = `Windings: ${data.word}`;
  const rule = sum === null ? ['The sum needs three readings.'] : sum.lines;
  const side = (name: string, reading: Reading, x: number, anchor: 'start' | 'end'): string[] => [
    write({ x, y: 96 }, name, { anchor }),
    write({ x, y: 114 }, shortened(shown(reading), 92), { anchor, bold: true }),
  ];
  return {
    title: 'Windings between C, R and S',
    says: says(data, sum),
    height: 220 + rule.length * 20 + 4,
    marks: [
      ...winding(R, C, data.crOhms),
      ...winding(S, C, data.csOhms),
      dashed([
        { x: R.x + RADIUS + 4, y: R.y },
        { x: S.x - RADIUS - 4, y: S.y },
      ]),
      ...(data.srOhms === 'OL' ? cross({ x: 160, y: 168 }) : []),
      ...[C, R, S].map((at) => ring(at, RADIUS, 3)),
    ],
    words: [
      write({ x: EDGE, y: 20 }, shortened(title, WIDTH - 2 * EDGE, 16), { size: 16, bold: true }),
      ...[C, R, S].map((at, i) =>
        write({ x: at.x, y: at.y + 6 }, ['C', 'R', 'S'][i] ?? '', { size: 16, bold: true, anchor: 'middle' }),
      ),
      ...side('run, C–R', data.crOhms, 100, 'end'),
      ...side('start, C–S', data.csOhms, 220, 'start'),
      write({ x: 160, y: 200 }, shortened(`S–R, both in series: ${shown(data.srOhms)}`, WIDTH - 2 * EDGE), {
        anchor: 'middle',
        bold: true,
      }),
      ...rule.map((each, i) =>
        write({ x: 160, y: 226 + i * 20 }, shortened(each, WIDTH - 2 * EDGE), { anchor: 'middle' }),
      ),
    ],
  };
}

/** A winding drawn as three turns on its side; open where it reads OL. */
function winding(from: Point, to: Point, reading: Reading): string[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const at = (along: number): Point => ({ x: from.x + ux * along, y: from.y + uy * along });
  const [begin, end] = [RADIUS + 1, length - RADIUS - 1];
  const turn = 18;
  const first = (length - 3 * turn) / 2;
  if (reading === 'OL')
    return [stroke([at(begin), at(first)]), stroke([at(length - first), at(end)]), ...cross(at(length / 2))];
  // The turns swell towards the inside of the triangle, away from the figures.
  const sweep = ux > 0 ? 1 : 0;
  const turns = [1, 2, 3].map((n) => {
    const { x, y } = at(first + n * turn);
    return `A${turn / 2} ${turn / 2} 0 0 ${sweep} ${px(x)} ${px(y)}`;
  });
  const [a, b, z] = [at(begin), at(first), at(end)];
  const d = `M${px(a.x)} ${px(a.y)}L${px(b.x)} ${px(b.y)}${turns.join('')}L${px(z.x)} ${px(z.y)}`;
  return [element('path', { d, 'stroke-width': 3 })];
}
const cross = ({ x, y }: Point): string[] => [
  stroke(
    [
      { x: x - 7, y: y - 7 },
      { x: x + 7, y: y + 7 },
    ],
    3.5,
  ),
  stroke(
    [
      { x: x - 7, y: y + 7 },
      { x: x + 7, y: y - 7 },
    ],
    3.5,
  ),
];

interface Sum {
  readonly lines: readonly string[];
  readonly says: string;
}
/** |SR − (CS + CR)| against the doubt of the three. Null where one of them is no figure. */
function sumOf({ crOhms, csOhms, srOhms, doubtOhms }: Windings): Sum | null {
  if ([crOhms, csOhms, srOhms].some((each) => each === null || each === 'OL')) return null;
  const sum = new Exact(crOhms ?? 0).plus(csOhms ?? 0);
  const apart = new Exact(srOhms ?? 0).minus(sum).abs();
  const allowed = doubtOhms === null ? null : new Exact(doubtOhms);
  const fits = allowed === null ? '' : apart.lte(allowed) ? 'fits' : 'does not fit';
  const [total, off] = [say(sum, 'Ω', 3), say(apart, 'Ω', 3)];
  if (allowed === null)
    return {
      lines: [`C–R + C–S = ${total}`, `S–R is ${off} apart`],
      says: `C–R and C–S add up to ${total}; S–R is ${off} apart.`,
    };
  const doubt = say(allowed, 'Ω', 3);
  return {
    lines: [`C–R + C–S = ${total}`, `${off} apart, doubt ${doubt}: ${fits}`],
    says: `C–R and C–S add up to ${total}. S–R is ${off} apart from that, with a doubt of ${doubt}: the sum ${fits}.`,
  };
}

function says(data: Windings, sum: Sum | null): string[] {
  return [
    `Run winding, C to R: ${shown(data.crOhms)}.`,
    `Start winding, C to S: ${shown(data.csOhms)}.`,
    `S to R, both in series: ${shown(data.srOhms)}.`,
    sum === null ? 'The sum needs three readings.' : sum.says,
    `Verdict: ${data.word}.`,
  ];
}
