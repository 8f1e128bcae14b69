/** Where the two leads go: the part from above, one view for each pair in the order in which it is taken. */
import { say } from '../judgements/say.ts';
import { type Can, can, type Terminal, touch } from './can.ts';
import type { Between, DualPair, Leads, PlainPair } from './data.ts';
import { type Sketch, WIDTH } from './frame.ts';
import { widthOf } from './lettering.ts';
import { box, dot, type Point, ring, stroke, write } from './svg.ts';

/** One view in px: the can in its middle, the meter under it. */
const VIEW = { width: 152, height: 188 };
const GAP = 8;
const METER = { top: 148, height: 30 };
const ROUND = { rx: 58, ry: 58 };
const OVAL = { rx: 66, ry: 52 };

const SIGN: Readonly<Record<Between, string>> = {
  capacitance: 'µF',
  ohms: 'Ω',
  'direct volts': 'V DC',
  'discharge resistor': 'tool',
};
const SAID: Readonly<Record<Between, string>> = {
  capacitance: 'in µF',
  ohms: 'in Ω',
  'direct volts': 'in V DC',
  'discharge resistor': 'the resistor tool between them',
};
const PAIRS: Readonly<Record<DualPair | PlainPair, string>> = {
  'herm-c': 'HERM–C',
  'fan-c': 'FAN–C',
  'herm-fan': 'HERM–FAN',
  across: 'across',
  case: 'each to rim',
};

export function leads(data: Leads): Sketch {
  const pairs: readonly (DualPair | PlainPair)[] = data.on;
  const columns = pairs.length === 1 ? 1 : 2;
  const rows = Math.ceil(pairs.length / columns);
  const views = pairs.map((pair, i) => {
    // A last view by itself stands in the middle.
    const alone = columns === 1 || (i === pairs.length - 1 && pairs.length % 2 === 1);
    const x = alone ? WIDTH / 2 : GAP / 2 + VIEW.width / 2 + (i % 2) * (VIEW.width + GAP);
    const top = Math.floor(i / columns) * (VIEW.height + GAP);
    return view(data, pair, pairs.length > 1 ? `${i + 1}.\u2009` : '', { x, y: top });
  });
  return {
    title: `Where the leads go: ${pairs.map((pair) => PAIRS[pair]).join(', ')}`,
    says: says(data, pairs),
    height: rows * VIEW.height + (rows - 1) * GAP,
    marks: views.flatMap((each) => each.marks),
    words: views.flatMap((each) => each.words),
  };
}

function view(
  data: Leads,
  pair: DualPair | PlainPair,
  number: string,
  at: Point,
): { marks: string[]; words: string[] } {
  const body: Can = { middle: { x: at.x, y: at.y + 70 }, ...(data.can === 'oval' ? OVAL : ROUND) };
  const dual = data.part === 'dual';
  const on = terminalsOf(pair, dual);
  const drawn = can(body, dual, on);
  const between: Between = pair === 'case' ? 'ohms' : data.between;
  const sign = `${number}${PAIRS[pair]} ${SIGN[between]}`;
  const width = Math.max(96, widthOf(sign) * 0.96 + 12);
  const meter = { x: at.x - width / 2, y: at.y + METER.top };
  const bleed = data.part === 'start' && data.bleed !== 'none' ? bleedMarks(body, data.bleed === 'one end off') : [];
  return {
    marks: [...drawn.marks, ...bleed, ...runs(body, pair, on, meter, width), box(meter, width, METER.height)],
    words: [...drawn.words, write({ x: at.x, y: meter.y + 20 }, sign, { anchor: 'middle', bold: true })],
  };
}

function terminalsOf(pair: DualPair | PlainPair, dual: boolean): readonly Terminal[] {
  switch (pair) {
    case 'herm-c':
      return ['HERM', 'C'];
    case 'fan-c':
      return ['C', 'FAN'];
    case 'herm-fan':
      return ['HERM', 'FAN'];
    case 'across':
      return ['first', 'second'];
    case 'case':
      return dual ? ['HERM', 'FAN', 'C'] : ['first', 'second'];
  }
}

/** Both leads from the meter to what they touch, around the can and never over a mark. */
function runs(body: Can, pair: DualPair | PlainPair, on: readonly Terminal[], meter: Point, width: number): string[] {
  const [left, right] = [meter.x + 16, meter.x + width - 16];
  if (pair === 'case') {
    // One lead stays on the bare rim, the other goes from terminal to terminal.
    const rim = { x: body.middle.x + body.rx * 0.96, y: body.middle.y + body.ry * 0.18 };
    const first = on[0];
    const tip = first === undefined ? rim : touch(body, first);
    return [
      ...lead([{ x: right, y: meter.y }, { x: rim.x + 8, y: rim.y + 26 }, rim]),
      ring(rim, 10, 2),
      ...lead([{ x: left, y: meter.y }, { x: tip.x - 12, y: tip.y + 22 }, tip]),
      ...on.slice(1).map((each) => ring(touch(body, each), 11, 2)),
    ];
  }
  const [one, other] = on;
  if (one === undefined || other === undefined) return [];
  return [
    ...lead(one === 'C' ? around(body, -1, left, meter.y) : upTo(touch(body, one), -1, left, meter.y)),
    ...lead(other === 'C' ? around(body, 1, right, meter.y) : upTo(touch(body, other), 1, right, meter.y)),
  ];
}
const upTo = (tip: Point, side: -1 | 1, x: number, y: number): Point[] => [
  { x, y },
  { x: tip.x + side * 12, y: tip.y + 24 },
  tip,
];
/** C is at the far side: its lead goes along the can and in from the side. */
function around(body: Can, side: -1 | 1, x: number, y: number): Point[] {
  const tip = touch(body, 'C');
  const out = body.middle.x + side * (body.rx + 10);
  return [
    { x, y },
    { x: out, y: y - 20 },
    { x: out, y: tip.y },
    { x: tip.x + side * 10, y: tip.y },
  ];
}
const lead = (points: readonly Point[]): string[] => {
  const tip = points.at(-1);
  return [stroke(points, 3.5), ...(tip ? [dot(tip, 6)] : [])];
};

/** The resistor across the terminals of a start part; one end hangs free while it is measured. */
function bleedMarks(body: Can, off: boolean): string[] {
  const [first, second] = [touch(body, 'first'), touch(body, 'second')];
  const y = first.y - 26;
  const [from, to] = [body.middle.x - 16, body.middle.x + 16];
  return [
    box({ x: from, y: y - 6 }, to - from, 12, 2),
    stroke(
      [
        { x: first.x, y: first.y - 9 },
        { x: first.x, y },
        { x: from, y },
      ],
      2,
    ),
    stroke(
      off
        ? [
            { x: to, y },
            { x: to + 8, y: y - 12 },
          ]
        : [
            { x: to, y },
            { x: second.x, y },
            { x: second.x, y: second.y - 9 },
          ],
      2,
    ),
  ];
}

function says(data: Leads, pairs: readonly (DualPair | PlainPair)[]): string[] {
  const seen = {
    dual: 'A dual capacitor seen from above, with three terminals: C has the most tabs, then HERM, FAN the fewest.',
    single: 'A capacitor with one section seen from above, with two terminals alike.',
    start: 'A start capacitor seen from above, with two terminals alike.',
  }[data.part];
  return [
    seen,
    ...bleedWords(data),
    ...pairs.map((pair, i) => `${pairs.length > 1 ? `${i + 1}. ` : ''}${pairWords(pair, data)}`),
    'Where the terminals sit differs from part to part: go by the marks.',
  ];
}
function bleedWords(data: Leads): string[] {
  if (data.part !== 'start' || data.bleed === 'none') return [];
  const of = data.bleedOhms === undefined ? '' : ` of ${say(data.bleedOhms, 'Ω')}`;
  const how = data.bleed === 'fitted' ? 'is across the terminals' : 'has one end off while you measure';
  return [`Its bleed resistor${of} ${how}.`];
}
function pairWords(pair: DualPair | PlainPair, { part, between }: Leads): string {
  const ends = part === 'dual' ? 'HERM, then on FAN, then on C' : 'one terminal, then on the other';
  switch (pair) {
    case 'herm-c':
      return `One lead on HERM, one on C, ${SAID[between]}.`;
    case 'fan-c':
      return `One lead on FAN, one on C, ${SAID[between]}.`;
    case 'herm-fan':
      return `One lead on HERM, one on FAN, ${SAID[between]}.`;
    case 'across':
      return `One lead on each terminal, ${SAID[between]}.`;
    case 'case':
      return `One lead on the bare rim of the case, the other on ${ends}, in Ω. Fingers stay off the probes.`;
  }
}
