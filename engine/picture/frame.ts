/** The frame around every picture: its size, its name and description, and ids of its own. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { element, escaped, plain } from './svg.ts';

/** A picture in words: `text` says everything that `svg` shows. */
export interface Drawn {
  readonly title: string;
  readonly svg: string;
  readonly text: string;
}
/** A drawing before it is framed. Sizes in px at a width of 320. */
export interface Sketch {
  readonly title: string;
  readonly says: readonly string[];
  readonly height: number;
  /** Lines and shapes. */
  readonly marks: readonly string[];
  readonly words: readonly string[];
}
export interface Manner {
  /** Tells apart two pictures of the same on one page. */
  readonly key?: string;
  /** `page`: colours of the page around it. `paper`: ink on card, by itself, as for a PNG or a report. */
  readonly on?: 'page' | 'paper';
}
export const WIDTH = 320;
const CARD = '#fbf6ea';
const INK = '#17130d';

export function framed({ title, says, height, marks, words }: Sketch, { key = '', on = 'page' }: Manner = {}): Drawn {
  const text = plain([`${title}.`, ...says].join(' '));
  const drawing = [...marks, ...words].join('');
  const print = bytesToHex(sha256(utf8ToBytes(`${key}\n${text}\n${drawing}`))).slice(0, 10);
  const [titled, described] = [`p${print}t`, `p${print}d`];
  const paper = on === 'paper' ? [element('rect', { width: WIDTH, height, fill: CARD, stroke: 'none' })] : [];
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH} ${height}`,
      role: 'img',
      'aria-labelledby': `${titled} ${described}`,
      'font-family': 'Atkinson Hyperlegible, sans-serif',
      'font-size': 14,
      ...(on === 'paper' ? { color: INK, width: WIDTH * 2, height: height * 2 } : {}),
    },
    element('title', { id: titled }, escaped(title)),
    element('desc', { id: described }, escaped(says.join(' '))),
    ...paper,
    element(
      'g',
      { fill: 'none', stroke: 'currentColor', 'stroke-linecap': 'round', 'stroke-linejoin': 'round' },
      ...marks,
    ),
    // Letters are filled and not outlined: an outline closes the eyes of small ones.
    element('g', { fill: 'currentColor' }, ...words),
  );
  return { title: plain(title), svg, text };
}
