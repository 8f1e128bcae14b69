/** Where the boxes, arrows and words of a drawing lie: a general layout of graphs ranks them, arrows keep off the ranks. */
import { Graph, layout } from '@dagrejs/dagre';
import type { Point } from '../../picture/svg.ts';

/** By its middle, in px. */
export interface Box {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
export interface Sized {
  readonly width: number;
  readonly height: number;
}
export interface Arrow {
  readonly from: string;
  readonly to: string;
  readonly points: readonly Point[];
  /** Room for its words. */
  readonly label: Box;
}
export interface Placed extends Sized {
  readonly boxes: readonly Box[];
  readonly arrows: readonly Arrow[];
}
/** From the top of the highest to the foot of the lowest that stand beside each other. */
interface Band {
  readonly y: number;
  readonly top: number;
  readonly foot: number;
}

export function place(
  nodes: ReadonlyMap<string, Sized>,
  edges: readonly ({ readonly from: string; readonly to: string } & Sized)[],
): Placed {
  const graph = new Graph();
  graph.setGraph({ rankdir: 'TB', nodesep: 30, ranksep: 70, edgesep: 20, marginx: 16, marginy: 16 });
  for (const [id, size] of nodes) graph.setNode(id, { ...size });
  for (const { from, to, width, height } of edges) graph.setEdge(from, to, { width, height, labelpos: 'c' });
  layout(graph);
  const boxes = [...nodes.keys()].map((id) => placed(id, graph.node(id)));
  const labels = edges.map(({ from, to }) => placed(`${from} → ${to}`, graph.edge(from, to)));
  const bands = bandsOf([...boxes, ...labels]);
  const arrows = edges.map(({ from, to }, i): Arrow => {
    const [start, end, label] = [boxOf(boxes, from), boxOf(boxes, to), labels[i]];
    if (!label) throw new Error(`no words on ${from} → ${to}`);
    const bends = (graph.edge(from, to) as { points: Point[] }).points.slice(1, -1);
    return { from, to, label, points: routed(start, end, bends, bands) };
  });
  const { width = 0, height = 0 } = graph.graph() as Partial<Sized>;
  return { boxes, arrows, width, height };
}

const placed = (id: string, { x, y, width, height }: Partial<Box>): Box => {
  if (x === undefined || y === undefined || width === undefined || height === undefined)
    throw new Error(`the layout left ${id} without a place`);
  return { id, x, y, width, height };
};
function boxOf(boxes: readonly Box[], id: string): Box {
  const found = boxes.find((b) => b.id === id);
  if (!found) throw new Error(`no box is called ${id}`);
  return found;
}

/** An arrow leaves and arrives upright for so many px. */
const STRAIGHT = 10;

function bandsOf(boxes: readonly Box[]): Band[] {
  const bands: Band[] = [];
  for (const { y, height } of boxes) {
    const i = bands.findIndex((b) => Math.abs(b.y - y) < 1);
    const before = bands[i] ?? { y, top: y, foot: y };
    const half = height / 2 + STRAIGHT;
    const band = { y, top: Math.min(before.top, y - half), foot: Math.max(before.foot, y + half) };
    if (i < 0) bands.push(band);
    else bands[i] = band;
  }
  return bands;
}

/** Straight up or down through what stands in ranks, slanting only between them: so no arrow crosses a box. */
function routed(start: Box, end: Box, bends: readonly Point[], bands: readonly Band[]): Point[] {
  const down = start.y < end.y;
  const through = (x: number, y: number): Point[] => {
    const band = bands.find((b) => Math.abs(b.y - y) < 1);
    if (!band) return [{ x, y }];
    const [first, last] = down ? [band.top, band.foot] : [band.foot, band.top];
    return [
      { x, y: first },
      { x, y: last },
    ];
  };
  const [first, last] = [bends[0] ?? end, bends.at(-1) ?? start];
  const leaves = { x: within(start, first.x), y: start.y + (down ? 1 : -1) * (start.height / 2) };
  const arrives = { x: within(end, last.x), y: end.y - (down ? 1 : -1) * (end.height / 2) };
  return [
    leaves,
    ...through(leaves.x, start.y).slice(-1),
    ...bends.flatMap(({ x, y }) => through(x, y)),
    ...through(arrives.x, end.y).slice(0, 1),
    arrives,
  ];
}
/** As near to `x` as the side of the box goes, its corners left free. */
const within = ({ x: middle, width }: Box, x: number): number =>
  Math.max(middle - width / 2 + 12, Math.min(middle + width / 2 - 12, x));
