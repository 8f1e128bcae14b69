/** Prompt → message. Every kind of prompt and of part has its words here; a missing one does not compile. */
import type { KnownBlock } from '@slack/types';
import { type Prompt, sayKind } from '../../../engine/index.ts';
import { LIMITS } from '../limits.ts';
import { calloutBlocks, calloutWords } from './callouts.ts';
import { isolationBlock, isolationWords, type Names } from './isolation.ts';
import { alwaysRow, answerBlocks, partLines } from './parts.ts';
import { cut, escaped, marked, paragraphs, plain, within } from './text.ts';

export interface Drawing {
  /** What a notification and a screen reader say: danger, question, answers. */
  readonly text: string;
  readonly blocks: KnownBlock[];
}

/** `asked`: the words of a senior's question. `lead`: said above it, to one person. */
export function question(
  prompt: Prompt,
  around: { names: Names; asked: string | null; lead?: readonly string[] },
): Drawing {
  const { title, body, notices, progress } = prompt;
  const state = sayKind(prompt);
  const asked = prompt.question === null ? [] : [`A senior asks: ${around.asked ?? ''}`, 'Type reply and your answer.'];
  const above = [...(around.lead ?? []), ...notices.map(({ text }) => `» ${text}`)];
  const heads: KnownBlock[] =
    title.length <= LIMITS.header ? [{ type: 'header', text: plain(title, LIMITS.header) }] : paragraphs([title]);
  const blocks: KnownBlock[] = [
    ...calloutBlocks(prompt),
    ...paragraphs(above),
    ...isolationBlock(prompt, around.names),
    { type: 'context', elements: [marked(escaped([...(state === null ? [] : [state]), progress.label].join(' · ')))] },
    ...heads,
    ...paragraphs([...body, ...asked, ...partLines(prompt), ...hints(prompt, around.names)]),
    ...answerBlocks(prompt),
    ...(prompt.kind === 'signed' ? [] : [alwaysRow(prompt)]),
  ];
  return {
    text: spoken([...calloutWords(prompt), ...above, title, ...body, isolationWords(prompt)]),
    blocks: within(blocks),
  };
}

/** For `text`, which is read as markup too. */
export const spoken = (lines: readonly string[]): string => escaped(cut(lines.join('\n'), LIMITS.text)) || '–';

/** How it may be typed. */
function hints({ kind, parts, line, holder, skippable, amends }: Prompt, names: Names): string[] {
  if (kind === 'finished' || kind === 'signed') return ['Notes are still taken: type note and the words.'];
  const only = holder === null ? [] : [`Only ${names(holder)} answers here, whose lock it is.`];
  const typed = parts.filter((p) => p.kind !== 'photo');
  const choices = typed.some((p) => 'options' in p);
  const how =
    typed.length === 0
      ? []
      : amends !== null
        ? ['Or type back and the new value.']
        : line !== null && !choices
          ? [`Or type in one line, here in the thread: ${line}`]
          : typed.length > 1
            ? ['Or type one line for all of it, here in the thread, parted by commas.']
            : ['Or type it, here in the thread.'];
  return [...only, ...how, ...(skippable && amends === null ? ['Where you can’t: skip and the reason.'] : [])];
}
