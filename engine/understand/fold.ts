/**
 * One spelling for the many characters a phone puts in: full-width digits, typographic minus and quotes, odd spaces,
 * the micro sign and the ohm sign.
 *
 * Length is kept, so that an index into the folded text is an index into what was typed. Superscripts, fractions,
 * circled and foreign digits are left as they are: plain NFKC would read "10²" as 102, so they are refused instead.
 */
export function fold(text: string): string {
  if (PLAIN.test(text)) return text;
  let folded = '';
  for (let i = 0; i < text.length; i++) folded += foldUnit(text.charAt(i));
  return folded;
}

/** Lower case of the same length, so that indexes still fit. */
export function lower(text: string): string {
  const all = text.toLowerCase();
  if (all.length === text.length) return all;
  let out = '';
  for (let i = 0; i < text.length; i++) {
    const small = text.charAt(i).toLowerCase();
    out += small.length === 1 ? small : text.charAt(i);
  }
  return out;
}

/** Without accents, for comparing words: "sí" is "si". Length may change. */
export const bare = (text: string): string =>
  PLAIN.test(text) ? text : text.normalize('NFD').replace(/[\u0300-\u036f]/g, '');

export const isDigit = (c: string): boolean => c >= '0' && c <= '9' && c.length === 1;
/** A letter of any script, or a unit sign. */
export const isLetter = (c: string): boolean => LETTER.test(c);

const PLAIN = /^[\n\x20-\x7e]*$/;
const LETTER = /^\p{L}$/u;

function foldUnit(c: string): string {
  const code = c.charCodeAt(0);
  if (code >= 0x20 && code < 0x7f) return c;
  if (code >= 0xff01 && code <= 0xff5e) return String.fromCharCode(code - 0xfee0);
  return SAME.get(c) ?? c;
}

const SAME = new Map<string, string>();
for (const [to, from] of [
  [' ', '\t\u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000'],
  ['\n', '\r\u0085\u2028\u2029\u000b\u000c'],
  ['-', '\u2010\u2011\u2012\u2013\u2014\u2015\u2212\ufe63'],
  ["'", '\u2018\u2019\u02bc\u00b4\u0060'],
  ['"', '\u201c\u201d\u00ab\u00bb'],
  ['μ', '\u00b5'],
  ['Ω', '\u2126'],
  ['°', '\u00ba\u02da'],
] as const)
  for (const c of from) SAME.set(c, to);
