/** A capacitor from above: the rolled rim of its can and the terminals with their tabs. Our own schematic, no product's. */
import { element, type Point, write } from './svg.ts';

export type Terminal = 'C' | 'HERM' | 'FAN' | 'first' | 'second';
export interface Can {
  readonly middle: Point;
  /** Half the width and half the height of the outer rim, px. */
  readonly rx: number;
  readonly ry: number;
}
interface Post {
  readonly at: Point;
  readonly tabs: number;
  readonly mark: string;
  /** Where the mark stands, from the post. */
  readonly under: boolean;
}

const DUAL: Readonly<Record<string, Post>> = {
  C: { at: { x: 0, y: -27 }, tabs: 4, mark: 'C', under: true },
  HERM: { at: { x: -25, y: 26 }, tabs: 3, mark: 'HERM', under: false },
  FAN: { at: { x: 25, y: 26 }, tabs: 2, mark: 'FAN', under: false },
};
const PLAIN: Readonly<Record<string, Post>> = {
  first: { at: { x: -25, y: 8 }, tabs: 2, mark: '', under: false },
  second: { at: { x: 25, y: 8 }, tabs: 2, mark: '', under: false },
};
const postsOf = (dual: boolean): Readonly<Record<string, Post>> => (dual ? DUAL : PLAIN);

/** Where a lead touches this terminal. */
export function touch({ middle }: Can, terminal: Terminal): Point {
  const post = (terminal in DUAL ? DUAL : PLAIN)[terminal];
  if (!post) throw new Error(`no terminal is called ${terminal}`);
  return { x: middle.x + post.at.x, y: middle.y + post.at.y };
}

export function can(
  { middle, rx, ry }: Can,
  dual: boolean,
  probed: readonly Terminal[],
): { marks: string[]; words: string[] } {
  const oval = (less: number, width: number): string =>
    element('ellipse', { cx: middle.x, cy: middle.y, rx: rx - less, ry: ry - less, 'stroke-width': width });
  const posts = Object.entries(postsOf(dual));
  return {
    marks: [oval(0, 3), oval(6, 2), ...posts.map(([, post]) => tabs(middle, post))],
    words: posts.flatMap(([name, { at, mark, under }]) =>
      mark === ''
        ? []
        : [
            write({ x: middle.x + at.x, y: middle.y + at.y + (under ? 24 : -14) }, mark, {
              anchor: 'middle',
              bold: probed.some((each) => each === name),
            }),
          ],
    ),
  };
}

/** Upright blades side by side. */
function tabs(middle: Point, { at, tabs: count }: Post): string {
  const gap = 6;
  const from = middle.x + at.x - ((count - 1) * gap) / 2;
  const y = middle.y + at.y;
  const d = Array.from({ length: count }, (_, i) => `M${from + i * gap} ${y - 7}v14`).join('');
  return element('path', { d, 'stroke-width': 3 });
}
