/** What is done to a reply before anything is decided of it. */
import type { Reply } from '../schema.ts';
import { readCommand, readHazard } from '../understand/index.ts';

/** Half surrogates and NUL can't be kept in every database, nor hashed as RFC 8785 JSON. */
export const wellFormed = (text: string): string =>
  text.replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]|\0/g, '\uFFFD');
export function clean(reply: Reply): Reply {
  const text = JSON.stringify(reply);
  // As JSON they are escapes. One that was typed as such only takes the longer way.
  if (!/\\u(?:0000|d[89a-f])/i.test(text)) return JSON.parse(text) as Reply;
  return JSON.parse(text, (_, v) => (typeof v === 'string' ? wellFormed(v) : v)) as Reply;
}

/** Anybody who is signed in may say stop, call an emergency, report power or a lock, or leave a note, on any job. */
const OPEN_TO_ALL: readonly string[] = ['alarm', 'stop', 'power is back', 'lock is off', 'senior', 'note'];
export const speaksUp = (reply: Reply): boolean => {
  if (reply.kind === 'command') return OPEN_TO_ALL.includes(reply.name);
  if (reply.kind !== 'text') return false;
  return readHazard(reply.text, []) !== null || OPEN_TO_ALL.includes(readCommand(reply.text)?.name ?? '');
};
