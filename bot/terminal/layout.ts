/** Lines for a screen of some width: wrapped under their own beginning, and the signal words in their colours. */

/** Breaks at spaces. A continuation stands under the text, behind a number, dot or signal word. */
export function wrap(text: string, width: number): string {
  return text
    .split('\n')
    .map((line) => wrapLine(line, width))
    .join('\n');
}

function wrapLine(line: string, width: number): string {
  if ([...line].length <= width) return line;
  const hang = /^\s*(?:(?:\d+\.|[·»→]|NOT [A-Z]+:|[A-Z][\w–]*:|[a-zA-Z]\w*(?= {2,}))\s+)?/.exec(line)?.[0].length ?? 0;
  const indent = ' '.repeat(Math.min(hang, Math.floor(width / 3)));
  const rows: string[] = [];
  let row = line.slice(0, hang);
  let empty = true;
  for (const word of line.slice(hang).split(' ')) {
    if (!empty && [...row].length + 1 + [...word].length > width) {
      rows.push(row);
      row = indent;
      empty = true;
    }
    row += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...rows, row].join('\n');
}

const CODES = { bold: '1', danger: '1;37;41', warning: '1;30;43', caution: '1;33', notice: '1;37;44' };
const ink = (code: string, text: string): string => `\u001b[${code}m${text}\u001b[0m`;

/** Colour means safety and nothing else; every colour stands on a word that says the same. */
export function paint(text: string): string {
  return text
    .split('\n')
    .map((line, n, all) => (all[n - 1]?.startsWith('── ') ? ink(CODES.bold, line) : line))
    .map((line) =>
      line
        .replace(/^DANGER:/, ink(CODES.danger, 'DANGER:'))
        .replace(/^WARNING:/, ink(CODES.warning, 'WARNING:'))
        .replace(/^CAUTION:/, ink(CODES.caution, 'CAUTION:'))
        .replace(/^NOTICE:/, ink(CODES.notice, 'NOTICE:'))
        .replace(/^VERDICT: .*$/, (all) => ink(CODES.bold, all)),
    )
    .join('\n');
}
