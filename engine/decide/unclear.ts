/** What is said where a text answers nothing: what can be typed here. */
import type { Part, Prompt } from '../schema.ts';

/** One sentence or two, for the question as it is asked. */
export function takenHere({ parts, line }: Prompt): string {
  const fields = parts.filter((part) => part.kind === 'field');
  const due = parts.filter(({ optional }) => !optional);
  if (line !== null) {
    const beside = optionsOf(due);
    const also =
      beside.length > 0 ? ` And, behind a comma, one of: ${beside.slice(0, MOST).join(' · ')}${more(beside)}.` : '';
    return `Type the line: ${line}. ${counts(fields)}${also}`;
  }
  const [reading] = (due.length > 0 ? due : parts).filter((part) => part.kind === 'field');
  const asked = reading ? [`Type the reading: ${reading.ask}.`] : [];
  const choices = optionsOf(due).length > 0 ? optionsOf(due) : reading ? [] : optionsOf(parts);
  if (choices.length > 0) asked.push(`Type one of: ${choices.slice(0, MOST).join(' · ')}${more(choices)}.`);
  return asked.length > 0 ? asked.join(' ') : 'Type help for the words that work here.';
}

/** "2 or 4 figures in this order, or each behind its name." */
function counts(fields: readonly Part[]): string {
  const due = fields.filter(({ optional }) => !optional).length;
  const numbers = due === 0 || due === fields.length ? `${fields.length}` : `${due} or ${fields.length}`;
  return `${numbers} figures in this order, or each behind its name.`;
}

const optionsOf = (parts: readonly Part[]): string[] =>
  parts.flatMap((part) => ('options' in part ? part.options.map(({ label }) => label) : []));
const MOST = 16;
const more = (choices: readonly string[]): string => (choices.length > MOST ? ' …' : '');
