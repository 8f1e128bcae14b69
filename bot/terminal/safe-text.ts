/** Words of people on their way to a terminal, where some characters are orders: they are shown, never sent. */

/** C0 and C1 controls, and the marks that turn the reading direction or hide: they could disguise a line. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has to be found
const ORDERS = /[\u0000-\u001f\u007f-\u009f\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;
const PICTURES = 0x2400;
const DELETE = 0x7f;

/** One line of text that moves no cursor: controls as their picture (ESC is ␛), the others as U+FFFD. */
export function visible(text: string): string {
  return text.replace(/\r\n|[\n\r\t\u2028\u2029]/g, ' ').replace(ORDERS, (character) => {
    const code = character.charCodeAt(0);
    if (code < 0x20) return String.fromCharCode(PICTURES + code);
    if (code === DELETE) return '␡';
    // Joins the parts of one emoji, so it shows nothing of its own.
    return code === 0x200d ? character : '\ufffd';
  });
}

/** JSON on one line that moves no cursor either: the same value, with more of it escaped. */
export const jsonLine = (value: unknown): string =>
  JSON.stringify(value).replace(
    /[\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
