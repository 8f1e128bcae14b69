/** Words on their way to a platform that reads control sequences in them: what people typed is shown and never obeyed. */
import type { KnownBlock, MrkdwnElement, PlainTextElement } from '@slack/types';
import { LIMITS } from '../limits.ts';

/** C0 and C1 controls, and marks that turn the reading direction or hide: they could disguise a line. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what has to be found
const ORDERS = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;
/** The three signs that begin every control sequence, as docs.slack.dev/messaging/formatting-message-text has them. */
const SIGNS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

export const safe = (words: string): string => words.replace(ORDERS, (c) => (c === '\t' ? ' ' : '\ufffd'));
export const escaped = (words: string): string => safe(words).replace(/[&<>]/g, (c) => SIGNS[c] ?? c);
/** What arrives has its three signs escaped, and names of people and channels in brackets. */
export const unescaped = (words: string): string =>
  words
    .replace(/<(?:([@#!])([^>|]*)|([^>|]+))(?:\|([^>]*))?>/g, (_, sign = '', id = '', link = '', label) =>
      link === '' ? `${sign === '!' ? '@' : sign}${label ?? id}` : (label ?? link),
    )
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');

/** As much as fits, with … where something was left out. */
export const cut = (words: string, most: number): string =>
  words.length <= most ? words : `${words.slice(0, most - 1).replace(/[\ud800-\udbff]$/, '')}…`;

export const plain = (words: string, most: number = LIMITS.section): PlainTextElement => ({
  type: 'plain_text',
  text: cut(safe(words), most) || '–',
  emoji: false,
});
/** Our own markup; every word of others in it is escaped before. `verbatim`: the platform makes no links of it. */
export const marked = (text: string, most: number = LIMITS.section): MrkdwnElement => ({
  type: 'mrkdwn',
  text: cut(text, most) || '–',
  verbatim: true,
});

/** Lines as paragraphs of plain text, as few blocks as they fill. A line too long for one is parted at a space. */
export function paragraphs(lines: readonly string[]): KnownBlock[] {
  const blocks: string[] = [];
  for (const line of lines.flatMap(parted)) {
    const last = blocks.at(-1);
    if (last !== undefined && last.length + 1 + line.length <= LIMITS.section)
      blocks[blocks.length - 1] = `${last}\n${line}`;
    else blocks.push(line);
  }
  return blocks.map((text) => ({ type: 'section', text: plain(text) }));
}
export function parted(line: string): string[] {
  const clean = safe(line);
  if (clean.trim() === '') return [];
  if (clean.length <= LIMITS.section) return [clean];
  const space = clean.lastIndexOf(' ', LIMITS.section);
  const at = space > LIMITS.section / 2 ? space : LIMITS.section;
  return [clean.slice(0, at), ...parted(clean.slice(at).trimStart())];
}

/** An instant as each reader's own clock shows it; the second half is for those that can't. */
export const wallTime = (instant: string): string =>
  `<!date^${Math.floor(Date.parse(instant) / 1000)}^{time}|${instant.slice(11, 16)} UTC>`;

/**
 * Within what one message takes. What is too much goes from the end, and it is said so; danger stands at the beginning and
 * the buttons are no text, so both stay.
 */
export function within(blocks: readonly KnownBlock[]): KnownBlock[] {
  const kept = [...blocks];
  const tooMuch = (): boolean => kept.length > LIMITS.blocks - 1 || lengthOf(kept) > LIMITS.allBlocks;
  if (!tooMuch()) return kept;
  while (tooMuch()) {
    const last = kept.findLastIndex(({ type }) => type === 'section');
    if (last <= 0) break;
    kept.splice(last, 1);
  }
  const end = kept.findLastIndex(({ type }) => type !== 'actions') + 1;
  kept.splice(end, 0, { type: 'context', elements: [marked('Shortened here. The whole is on the web.')] });
  return kept;
}
function lengthOf(of: unknown): number {
  if (Array.isArray(of)) return of.reduce<number>((sum, each) => sum + lengthOf(each), 0);
  if (typeof of !== 'object' || of === null) return 0;
  return Object.entries(of).reduce(
    (sum, [key, value]) => sum + (key === 'text' && typeof value === 'string' ? value.length : lengthOf(value)),
    0,
  );
}
