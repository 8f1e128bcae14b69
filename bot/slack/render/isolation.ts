/** The isolation of each cabinet, in view above everything else: `[Outdoor unit: PROVED DEAD, until 15:32; lock: …]`. */
import type { KnownBlock } from '@slack/types';
import type { IsolationLine, Prompt } from '../../../engine/index.ts';
import { escaped, marked, wallTime } from './text.ts';

export type Names = (person: string) => string;
const line = (
  { cabinet, words, until, since, holder }: IsolationLine,
  names: Names,
  time: (at: string) => string,
): string => {
  const more = [
    ...(since === null ? [] : [`since ${time(since)}`]),
    ...(holder === null ? [] : [`lock: ${escaped(names(holder))}`]),
  ];
  return `[${escaped(cabinet)}: *${escaped(words)}*${until === null ? '' : `, until ${time(until)}`}${more.length === 0 ? '' : `; ${more.join(', ')}`}]`;
};
export const isolationLines = ({ isolation }: Prompt, names: Names): string[] =>
  isolation.map((each) => line(each, names, wallTime));
export const isolationBlock = (prompt: Prompt, names: Names): KnownBlock[] => {
  const lines = isolationLines(prompt, names);
  return lines.length === 0 ? [] : [{ type: 'section', text: marked(lines.join('\n')) }];
};
/** For the text that a notification reads out. */
export const isolationWords = ({ isolation }: Prompt): string =>
  isolation.map(({ cabinet, words }) => `${cabinet}: ${words}`).join('. ');
