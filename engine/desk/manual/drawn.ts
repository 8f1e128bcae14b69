/** A page of the manual as a drawing: a box a step, an arrow a way. A general layout of graphs places them. */
import { classOf } from '../../class.ts';
import { widthOf, wrap } from '../../picture/lettering.ts';
import { box, dashed, element, escaped, type Point, px, solid, stroke, write } from '../../picture/svg.ts';
import type { Step } from '../../vocabulary.ts';
import { type Arrow, type Box, place } from './placed.ts';
import { type Page, waysOf } from './ways.ts';

export interface PageDrawing {
  readonly svg: string;
  readonly boxes: readonly Box[];
  readonly arrows: readonly Arrow[];
  readonly width: number;
  readonly height: number;
}
interface Edge {
  readonly from: string;
  readonly to: string;
  readonly words: readonly string[];
}

const [BOX, LINE, EDGE_WORDS, SMALL] = [230, 18, 150, 12];
const INK = '#17130d';
const CARD = '#fbf6ea';

export function drawPage(page: Page): PageDrawing {
  const { flow } = page;
  const steps = Object.entries(flow.steps);
  const edges = edgesOf(steps);
  const exits = flow.exits.map((x) => `!${x}`).filter((x) => edges.some((e) => e.to === x));
  const lines = new Map<string, readonly string[]>([
    ...steps.map(([name, step]): [string, string[]] => [
      name,
      [headOf(name, step, page.gate), ...wrap(sayOf(step), BOX - 16, 14, 3)],
    ]),
    ...exits.map((exit): [string, string[]] => [exit, [`leaves: ${exit.slice(1)}`]]),
  ]);
  const { boxes, arrows, width, height } = place(
    new Map([...lines].map(([id, words]) => [id, { width: BOX, height: words.length * LINE + 14 }])),
    edges.map((edge) => ({ ...edge, ...sizeOf(edge.words) })),
  );
  const kinds = new Map(steps.map(([name, step]) => [name, step.verb]));
  const marks = [
    ...arrows.flatMap(({ points }) => [stroke(points, 1.5), head(points)]),
    ...boxes.map((b) => outline(b, kinds.get(b.id))),
  ];
  const captions = arrows.flatMap(({ label }, i) => captioned(label, edges[i]?.words ?? []));
  const words = [...boxes.flatMap((b) => lettered(b, lines.get(b.id) ?? [])), ...captions];
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${px(width)} ${px(height)}`,
      width,
      height,
      role: 'img',
      color: INK,
      'font-family': 'Atkinson Hyperlegible, sans-serif',
      'font-size': 14,
    },
    element('title', {}, escaped(`${flow.title} (${flow.id} ${flow.version})`)),
    element('desc', {}, escaped(saidOf(page))),
    element('rect', { width, height, fill: CARD, stroke: 'none' }),
    element('g', { fill: 'none', stroke: 'currentColor', 'stroke-linejoin': 'round' }, ...marks),
    element('g', { fill: 'currentColor' }, ...words),
  );
  return { svg, boxes, arrows, width, height };
}

/** The drawing in words: each step and where it leads. */
export const saidOf = ({ flow, gate }: Page): string =>
  Object.entries(flow.steps)
    .map(([name, step]) => {
      const ways = waysOf(step).map(({ by, to }) => (by === '' ? `then ${to}` : `${by}: ${to}`));
      return `${headOf(name, step, gate)}. ${sayOf(step)} ${ways.join('; ')}.`;
    })
    .join(' ');

/** Ways between the same two boxes are one arrow. */
function edgesOf(steps: readonly [string, Step][]): Edge[] {
  return steps.flatMap(([from, step]) => {
    const by = new Map<string, string[]>();
    for (const way of waysOf(step)) by.set(way.to, [...(by.get(way.to) ?? []), way.by]);
    return [...by].map(([to, all]) => {
      const said = all.filter((w) => w !== '').join(', ');
      return { from, to, words: said === '' || by.size === 1 ? [] : wrap(said, EDGE_WORDS, SMALL, 3) };
    });
  });
}
const headOf = (name: string, step: Step, gate: boolean): string => {
  const kind = step.verb === 'include' ? 'page' : 'parts' in step ? classOf(step, gate) : step.verb;
  return `${name} · ${kind}`;
};
const sayOf = (step: Step): string => {
  switch (step.verb) {
    case 'judge':
      return `Decides by ${step.judgement}`;
    case 'found':
      return 'Sorts by what was found';
    case 'verdict':
      return step.title;
    case 'include':
      return step.page.title;
    default:
      return step.say;
  }
};

/** The room that the words of an arrow take; where there are none, an arrow's. */
const sizeOf = (words: readonly string[]): { width: number; height: number } => ({
  width: Math.max(2, ...words.map((w) => widthOf(w, SMALL) + 6)),
  height: Math.max(2, words.length * 15 + 2),
});
/** A verdict is thick, a page on its own dashed, an exit bare. */
function outline({ x, y, width, height, id }: Box, verb: Step['verb'] | undefined): string {
  const [left, top] = [x - width / 2, y - height / 2];
  const [right, bottom] = [left + width, top + height];
  if (verb === 'include')
    return dashed([
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
      { x: left, y: top },
    ]);
  if (id.startsWith('!'))
    return stroke(
      [
        { x: left, y: bottom },
        { x: right, y: bottom },
      ],
      3,
    );
  return box({ x: left, y: top }, width, height, verb === 'verdict' ? 3.5 : 1.5);
}
const lettered = ({ x, y, width, height }: Box, lines: readonly string[]): string[] =>
  lines.map((words, i) =>
    write({ x: x - width / 2 + 8, y: y - height / 2 + 18 + i * LINE }, words, i === 0 ? { bold: true } : {}),
  );
/** On a patch of paper, which parts the arrow. */
const captioned = ({ x, y, width, height }: Box, said: readonly string[]): string[] =>
  said.length === 0
    ? []
    : [
        element('rect', { x: x - width / 2, y: y - height / 2, width, height, fill: CARD, stroke: 'none' }),
        ...said.map((words, i) =>
          write({ x, y: y - height / 2 + 13 + i * 15 }, words, { size: SMALL, anchor: 'middle' }),
        ),
      ];
function head(points: readonly Point[]): string {
  const [before, tip] = points.slice(-2);
  if (!before || !tip) return '';
  const length = Math.hypot(tip.x - before.x, tip.y - before.y) || 1;
  const [dx, dy] = [(tip.x - before.x) / length, (tip.y - before.y) / length];
  const side = (s: number): Point => ({ x: tip.x - dx * 9 - dy * 4 * s, y: tip.y - dy * 9 + dx * 4 * s });
  return solid([tip, side(1), side(-1)]);
}
