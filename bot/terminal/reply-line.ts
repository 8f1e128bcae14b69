/** One line of a program: a reply as JSON, or text as a person types it. */
import { type Prompt, Reply } from '../../engine/index.ts';

export type ReplyLine = { reply: Reply } | { text: string } | { error: string };

const LONGEST = 10_000;

export function readReplyLine(line: string, prompt: Prompt, client: () => string): ReplyLine {
  const first = line.trimStart().charAt(0);
  if (first !== '{' && first !== '"') return asText(line);
  const read = json(line);
  if (typeof read === 'string') return asText(read);
  // A quotation mark may begin plain text; a brace means JSON.
  if (read === undefined) return first === '"' ? asText(line) : { error: 'This line is not valid JSON.' };
  const whole = { ...(needsSeq(read) ? { seq: prompt.seq } : {}), client: client(), ...read };
  const reply = Reply.safeParse(whole);
  if (reply.success) return { reply: reply.data };
  const issue = reply.error.issues[0];
  return { error: `This is no reply: ${issue?.path.join('.') ?? ''}: ${issue?.message ?? ''}.` };
}

const asText = (text: string): ReplyLine =>
  text.length <= LONGEST ? { text } : { error: `That is ${text.length} characters; up to ${LONGEST} are read.` };

const needsSeq = (read: object): boolean => 'kind' in read && (read.kind === 'answer' || read.kind === 'text');

function json(line: string): object | string | undefined {
  try {
    const read: unknown = JSON.parse(line);
    return typeof read === 'string' || (typeof read === 'object' && read !== null) ? read : undefined;
  } catch {
    return undefined;
  }
}
