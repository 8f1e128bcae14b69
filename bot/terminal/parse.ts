/** A typed line → a Reply to the question that is on the screen. */
import { type GivenParts, type Prompt, type Reply, readCommand, readLine } from '../../engine/index.ts';
import { chosenByNumber } from './options-by-number.ts';

/** The question that a line answers, and what was already understood of it. */
export interface Shown {
  readonly prompt: Prompt;
  readonly draft: GivenParts;
}

export function parse(line: string, { prompt, draft }: Shown, client: string): Reply {
  const { seq, amends, parts } = prompt;
  const chosen = chosenByNumber(line, parts);
  if (chosen) {
    const given = { ...draft, ...chosen };
    return amends === null
      ? { kind: 'answer', client, seq, parts: given }
      : { kind: 'amend', client, of: amends, parts: given };
  }
  const drafted = Object.keys(draft).length > 0;
  if (amends === null) return { kind: 'text', client, seq, text: line, ...(drafted ? { draft } : {}) };
  // A change that is typed goes without its draft, so both go as parts, but only where nothing else was said.
  const { given, unread } = readLine(line, parts);
  const whole = drafted && unread.length === 0 && Object.keys(given).length > 0 && readCommand(line) === null;
  return whole
    ? { kind: 'amend', client, of: amends, parts: { ...draft, ...given } }
    : { kind: 'text', client, seq, text: line, amends };
}

/** The parts that a reply speaks of. */
export function partsOf(reply: Reply, { prompt, draft }: Shown): Set<string> {
  switch (reply.kind) {
    case 'answer':
    case 'amend':
      return new Set(Object.keys(reply.parts));
    case 'text':
      return new Set([...Object.keys(draft), ...Object.keys(readLine(reply.text, prompt.parts).given)]);
    case 'command':
    case 'withdraw':
      return new Set();
  }
}
