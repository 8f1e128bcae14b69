/**
 * SVG as strings. Only what every reader of SVG draws alike: no styles, scripts, links or fonts of its own, presentation
 * attributes and `currentColor` alone, so that a page's content policy lets it in and its colours follow the page.
 */

type Attributes = Readonly<Record<string, string | number>>;
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** XML 1.0 has no controls and no halves of a pair; marks that turn the direction of writing would reorder what is read. */
const UNFIT =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has to go
  /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;
const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Words on one line without anything that a reader of XML or a person would take for something else. */
export const plain = (words: string): string =>
  words
    .replace(/[\t\r\n]+/g, ' ')
    .replace(UNFIT, '\ufffd')
    .trim();
export const escaped = (words: string): string => plain(words).replace(/[&<>"']/g, (c) => ENTITIES[c] ?? c);

/** A length in the picture's own px, to a tenth: the same on every machine. */
export function px(length: number): string {
  if (!Number.isFinite(length)) throw new RangeError(`no place in a picture: ${length}`);
  const rounded = Math.round(length * 10) / 10;
  return String(rounded === 0 ? 0 : rounded);
}

export function element(name: string, attributes: Attributes, ...inside: readonly string[]): string {
  const said = Object.entries(attributes).map(([key, v]) => ` ${key}="${typeof v === 'number' ? px(v) : escaped(v)}"`);
  const opened = `<${name}${said.join('')}`;
  return inside.length === 0 ? `${opened}/>` : `${opened}>${inside.join('')}</${name}>`;
}

type Anchor = 'start' | 'middle' | 'end';
export interface Lettering {
  readonly size?: number;
  readonly bold?: boolean;
  readonly anchor?: Anchor;
}
/** One line of text; `at` is the end of its base line that the anchor names. */
export const write = (
  at: Point,
  words: string,
  { size = 14, bold = false, anchor = 'start' }: Lettering = {},
): string =>
  element(
    'text',
    {
      ...at,
      ...(size === 14 ? {} : { 'font-size': size }),
      ...(bold ? { 'font-weight': 'bold' } : {}),
      ...(anchor === 'start' ? {} : { 'text-anchor': anchor }),
    },
    escaped(words),
  );

const along = (points: readonly Point[]): string =>
  points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('');
/** A line through points, as thick as `width` px. */
export const stroke = (points: readonly Point[], width = 2.5, more: Attributes = {}): string =>
  element('path', { d: along(points), 'stroke-width': width, ...more });
export const dotted = (points: readonly Point[], width = 2.5): string =>
  stroke(points, width, { 'stroke-dasharray': '0.1 6' });
export const dashed = (points: readonly Point[], width = 2): string =>
  stroke(points, width, { 'stroke-dasharray': '7 6' });
/** A solid shape of ink. */
export const solid = (points: readonly Point[]): string =>
  element('path', { d: `${along(points)}Z`, fill: 'currentColor', stroke: 'none' });
export const ring = ({ x, y }: Point, r: number, width = 2.5): string =>
  element('circle', { cx: x, cy: y, r, 'stroke-width': width });
export const dot = ({ x, y }: Point, r: number): string =>
  element('circle', { cx: x, cy: y, r, fill: 'currentColor', stroke: 'none' });
export const box = ({ x, y }: Point, width: number, height: number, thick = 2.5): string =>
  element('rect', { x, y, width, height, rx: 3, 'stroke-width': thick });
