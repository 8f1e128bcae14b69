import { isNode, type Node, numbersOf, parse, type Source, textsOf, walk } from './source.ts';

/** Ids that are words of the web or of plain English as well; an adapter may say them. */
const COMMON = new Set([
  'history',
  'message',
  'storage',
  'visible',
  'restart',
  'weather',
  'picture',
  'reading',
  'readings',
]);
/** Codes of HTTP, which an adapter needs and which some limit may equal. */
const HTTP = new Set([200, 201, 202, 204, 301, 302, 303, 304, 307, 308, 400, 401, 403, 404, 405, 409, 410, 413, 415]);
for (const code of [422, 429, 431, 500, 502, 503, 504]) HTTP.add(code);
/** Units whose figures read like everyday numbers ("30 s", "100 %"). */
const EVERYDAY_UNITS = new Set(['s', 'min', '%', 'count', '']);

export interface LimitFigure {
  readonly value: string;
  readonly unit: string;
}

const literal = (node: unknown): string | null =>
  isNode(node) && node.type === 'Literal' && typeof node.value === 'string' ? node.value : null;
const keyOf = (property: Node): string | null =>
  isNode(property.key) && property.key.type === 'Identifier' ? String(property.key.name) : literal(property.key);
const propertiesOf = (object: unknown): Map<string, unknown> =>
  new Map(
    isNode(object) && object.type === 'ObjectExpression'
      ? (object.properties as Node[]).flatMap((property) => {
          const key = property.type === 'Property' ? keyOf(property) : null;
          return key === null ? [] : [[key, property.value] as const];
        })
      : [],
  );

/** Ids of the pages, their steps and their verdicts, as far as they can be told from plain words. */
export function flowIds(flows: readonly Source[], contract: readonly Source[]): Set<string> {
  const ids = new Set<string>();
  for (const source of flows)
    walk(parse(source).program, (node) => {
      if (node.type !== 'ObjectExpression') return undefined;
      const page = propertiesOf(node);
      const verdict = literal(page.get('verdict'));
      if (verdict !== null) ids.add(verdict);
      if (!page.has('steps') && !page.has('root')) return undefined;
      const id = literal(page.get('id'));
      if (id !== null) ids.add(id);
      for (const step of propertiesOf(page.get('steps')).keys()) ids.add(step);
      return undefined;
    });
  const shared = new Set(contract.flatMap(textsOf));
  return new Set([...ids].filter((id) => (id.includes('-') || id.length > 6) && !COMMON.has(id) && !shared.has(id)));
}

/** Every limit written as `{ value: '…', unit: '…' }` or as a call that names a figure and its unit. */
export function limitFigures(limits: Source): LimitFigure[] {
  const figures: LimitFigure[] = [];
  const add = (value: string | null, unit: string | null) => {
    if (value !== null && unit !== null && /^-?\d+(\.\d+)?$/.test(value)) figures.push({ value, unit });
  };
  walk(parse(limits).program, (node) => {
    if (node.type === 'ObjectExpression') {
      const fields = propertiesOf(node);
      add(literal(fields.get('value')), literal(fields.get('unit')));
    }
    if (node.type === 'CallExpression') {
      const [value, unit] = node.arguments as unknown[];
      add(literal(value), literal(unit));
    }
    return undefined;
  });
  return figures;
}

/** Ids and figures of the flows that a door repeats instead of drawing what it is given. */
export function flowWordsIn(source: Source, ids: ReadonlySet<string>, limits: readonly LimitFigure[]): string[] {
  const texts = textsOf(source);
  const found = texts.flatMap((text) => text.split(/[/.!@~]/).filter((piece) => ids.has(piece)));
  // Three figures or more besides zeros at the ends: 208 and 20.4 give a limit away, 5 and 120 are anybody's numbers.
  const telling = (value: string) => value.replace(/^-?0*\.?0*|\.|(?<!\..*)0+$/g, '').length >= 3;
  const numbers = new Set([...numbersOf(source), ...texts.filter((text) => /^\d+(\.\d+)?$/.test(text)).map(Number)]);
  for (const { value, unit } of limits) {
    if (telling(value) && numbers.has(Number(value)) && !HTTP.has(Number(value))) found.push(value);
    if (EVERYDAY_UNITS.has(unit)) continue;
    const figure = new RegExp(
      `(?<![\\d.])${value.replace('.', '\\.')}[ \\u00a0\\u2009\\u202f]?${unit}(?![\\p{L}\\d])`,
      'u',
    );
    if (texts.some((text) => figure.test(text))) found.push(`${value} ${unit}`);
  }
  return [...new Set(found)].map((what) => `${source.path} says ${what}`);
}
