/** What was noted or photographed earlier, as lines above a question's own: the record holds only references to words. */
import type { Prompt } from '../schema.ts';

export function withRecalls(prompt: Prompt, words: (ref: { ref: string }) => string): Prompt {
  const lines = prompt.recalls.flatMap(({ ask, seq, value }): string[] => {
    if (value.kind === 'text') return [`${ask}: ${words(value.text)}`];
    return value.kind === 'photo' ? [`${ask}: in the ticket, entry ${seq}.`] : [];
  });
  return lines.length === 0 ? prompt : { ...prompt, body: [...lines, ...prompt.body] };
}
