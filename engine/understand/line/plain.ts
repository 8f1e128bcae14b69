/**
 * What every option of that id goes by, whatever its page says: yes, no, done, can't, none, not sure. Words of the
 * language, not of the trade; a trade's word for an option stands with the option in its flow.
 */
import type { OptionPart } from './lexicon.ts';

const YES = 'yes, y, yep, yeah, yea, yup, ye, ya, aye, si, correct, right, affirmative, sure, 👍';
const NO = 'no, n, nope, nah, no sir, false, negative, 👎';
const CANT = 'cant, cannot, can not, unable, not possible, impossible, no puedo';
const CONFIRM_YES = `${YES}, ok, okay, k, done, true, all good, all of it, ok done, yes done, sure is, it is, they are, listo, ready, all set, good to go`;
const GOOD = `${YES}, ok, okay, good, it is, it does`;
const DONE = `${YES}, done, ok, okay, k, true, finished, did it, did that, complete, completed, listo, hecho, all done,
  got it done, ready, all set`;

const BY_KIND: Record<OptionPart['kind'], Readonly<Record<string, string>>> = {
  confirm: { yes: CONFIRM_YES, cant: CANT },
  act: { done: DONE, cant: CANT },
  choose: {
    yes: YES,
    no: NO,
    none: 'none, none of them, none of these, none at all, nothing, no others, not any, n/a, nada, ninguno, ninguna',
    unsure: `dont know, do not know, i dont know, i do not know, idk, dunno, no idea, no clue, not sure, im not sure, unsure, cant tell,
      i cant tell, hard to say, hard to tell, no se, ni idea`,
    cant: CANT,
  },
};

/**
 * The plain words for an option of a part. A bare no answers a question only: to "Lock it, tag it, try it." it may say
 * that something started, or that it isn't locked. And "done" answers no question: "Spin it. Does it spin free?"
 */
export function plainWords(kind: OptionPart['kind'], id: string, ask: string): string[] {
  const asks = ask.includes('?');
  if (kind !== 'choose' && id === 'no') return asks ? list(NO) : [];
  if (kind === 'act' && id === 'done' && asks) return list(GOOD);
  return Object.hasOwn(BY_KIND[kind], id) ? list(BY_KIND[kind][id] ?? '') : [];
}
const list = (text: string): string[] => text.split(',').map((word) => word.trim());
