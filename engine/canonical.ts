/**
 * RFC 8785 JSON of plain data: the same bytes as an independent library (a test compares them), in about a third of
 * its time. A chain is read whenever a job is, and most of reading it was this.
 */

/** Nothing that JSON escapes, and no half of a surrogate pair. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what JSON escapes
const BARE = /^[^"\\\u0000-\u001f\ud800-\udfff]*$/;
const HALF = /\p{Surrogate}/u;

/** @param leave a member of the outermost object that is left out. Throws where `value` holds what JSON can't say. */
export function canonicalJson(value: unknown, leave?: string): string {
  switch (typeof value) {
    case 'string':
      return quoted(value);
    case 'number':
      if (!Number.isFinite(value)) throw new Error(`${value} is no JSON`);
      return String(value === 0 ? 0 : value);
    case 'boolean':
      return value ? 'true' : 'false';
    case 'object':
      if (value === null) return 'null';
      return Array.isArray(value)
        ? `[${value.map(item).join(',')}]`
        : objectJson(value as Record<string, unknown>, leave);
    default:
      throw new Error(`${typeof value} is no JSON`);
  }
}
const item = (value: unknown): string => (value === undefined ? 'null' : canonicalJson(value));

function objectJson(object: Record<string, unknown>, leave: string | undefined): string {
  let json = '{';
  for (const name of inOrder(Object.keys(object))) {
    const value = object[name];
    if (value === undefined || name === leave) continue;
    json += `${json === '{' ? '' : ','}${quoted(name)}:${canonicalJson(value)}`;
  }
  return `${json}}`;
}

/** By UTF-16 units, as the standard sorts; what stands in order already is not sorted again. */
function inOrder(names: string[]): string[] {
  for (let i = 1; i < names.length; i++) if ((names[i - 1] as string) > (names[i] as string)) return names.sort();
  return names;
}

function quoted(text: string): string {
  if (BARE.test(text)) return `"${text}"`;
  if (HALF.test(text)) throw new Error('half a surrogate pair is no JSON');
  return JSON.stringify(text);
}
