/** What somebody hears who warned on a call that is not theirs to see: that it was kept, and nothing of the call. */
import type { Entry, Prompt } from '../schema.ts';
import type { Turn } from './types.ts';

/** What such a person can have put there. */
const SAID: readonly Entry['kind'][] = ['alarmed', 'noted', 'paused', 'raised', 'voided'];

export function toldOutside({ view, entries, refusal }: Turn): Turn {
  const { job, training, now, prompt } = view;
  return {
    view: {
      ...{ job, title: '', training, prompt: blank(prompt), ticket: [], people: {}, question: null, summary: null },
      ...{ call: null, form: null, units: null, alarm: null, calling: false, opens: null, now },
    },
    entries: entries.filter(({ kind }) => SAID.includes(kind)),
    refusal: refusal && { ...refusal, draft: {} },
    info: null,
    again: null,
  };
}

/** The emergency card is for everybody. Of any other question only its number is left. */
function blank({ job, seq, last, kind, title, body, callouts }: Prompt): Prompt {
  const emergency = kind === 'emergency';
  return {
    ...{ job, seq, last, place: '!outside', kind: emergency ? kind : 'waiting', class: 'eyes' },
    title: emergency ? title : 'Kept on a call that is not yours to see.',
    ...{ body: emergency ? body : [], callouts: emergency ? callouts : [], notices: [], parts: [], recalls: [] },
    ...{ line: null, skippable: false, why: null, sources: [], progress: { answered: 0, label: '' }, isolation: [] },
    ...{ holder: null, amends: null, verdicts: [], pictures: [], question: null },
  };
}
