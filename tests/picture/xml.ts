/** A small strict reader of XML, so that properties can run without a browser. Throws where it isn't well-formed. */

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly inside: readonly (Element | string)[];
}

const NAME = /^[a-z][A-Za-z0-9]*(?::[a-z]+)?/;
const ATTRIBUTE = /^ ([a-z][A-Za-z0-9-]*)="([^"<]*)"/;
const ENTITY = /&(?:amp|lt|gt|quot|#39);/g;
const MEANT: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
};
// biome-ignore lint/suspicious/noControlCharactersInRegex: XML 1.0 has no such characters.
const UNFIT = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/;
/** Half of a pair, which `u` makes a character of its own. */
const HALF = /\p{Surrogate}/u;

function decoded(raw: string): string {
  if (raw.replace(ENTITY, '').includes('&')) throw new Error(`a bare & in "${raw}"`);
  if (UNFIT.test(raw) || HALF.test(raw)) throw new Error('a character that XML does not have');
  return raw.replace(ENTITY, (entity) => MEANT[entity] ?? '');
}

export function readXml(source: string): Element {
  let rest = source;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const found = pattern.exec(rest);
    if (found) rest = rest.slice(found[0].length);
    return found;
  };
  const need = (pattern: RegExp): RegExpExecArray => {
    const found = take(pattern);
    if (!found) throw new Error(`expected ${pattern} at "${rest.slice(0, 60)}"`);
    return found;
  };
  const element = (): Element => {
    need(/^</);
    const name = need(NAME)[0];
    const attributes: Record<string, string> = {};
    for (let found = take(ATTRIBUTE); found; found = take(ATTRIBUTE)) {
      const [, key = '', value = ''] = found;
      if (key in attributes) throw new Error(`${key} twice`);
      attributes[key] = decoded(value);
    }
    const inside: (Element | string)[] = [];
    if (take(/^\/>/)) return { name, attributes, inside };
    need(/^>/);
    while (!rest.startsWith('</')) {
      if (rest.startsWith('<')) inside.push(element());
      else inside.push(decoded(need(/^[^<]+/)[0]));
    }
    need(new RegExp(`^</${name}>`));
    return { name, attributes, inside };
  };
  const root = element();
  if (rest !== '') throw new Error(`something after the end: "${rest.slice(0, 60)}"`);
  return root;
}

export const elementsOf = (element: Element): Element[] => [
  element,
  ...element.inside.flatMap((each) => (typeof each === 'string' ? [] : elementsOf(each))),
];
export const textOf = (element: Element): string =>
  element.inside.map((each) => (typeof each === 'string' ? each : textOf(each))).join('');
