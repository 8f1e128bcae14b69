/** What is typed and not sent: per question for its controls, per job for the typed line. Survives a reload. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Prompt, Refusal, Reply } from '../../../engine/index.ts';
import { readKept, writeKept } from '../net/kept.ts';
import { filledIn, questionKey, type Values } from '../parts/values.ts';

export interface Draft {
  readonly values: Values;
  readonly setValues: (values: Values) => void;
  readonly typed: string;
  readonly setTyped: (typed: string) => void;
}

interface Around {
  readonly refusal: Refusal | null;
  readonly unsent: Reply | null;
  readonly onUnsent: (reply: Reply) => void;
}

export function useDraft(job: string, prompt: Prompt, { refusal, unsent, onUnsent }: Around): Draft {
  const question = questionKey(prompt);
  const [draft, setDraft] = useState<{ readonly question: string; readonly values: Values }>(() => ({
    question,
    values: filledIn(prompt),
  }));
  const [typed, setTyped] = useState('');
  const values = draft.question === question ? draft.values : filledIn(prompt);
  const setValues = (next: Values) => setDraft({ question, values: next });

  // After the server's drawing was taken over, so that the first drawing here is the same.
  const restored = useRef(false);
  useEffect(() => {
    if (restored.current) return writeKept(job, { question, values, typed, unsent });
    restored.current = true;
    const kept = readKept(job);
    if (kept.typed !== '') setTyped(kept.typed);
    if (kept.question === question) setDraft({ question, values: kept.values });
    if (kept.unsent) onUnsent(kept.unsent);
  });

  // What was understood of a typed line stands in its fields; only the rest has to be given.
  const merged = useRef<Refusal | null>(null);
  useEffect(() => {
    if (refusal === merged.current) return;
    merged.current = refusal;
    if (refusal && Object.keys(refusal.draft).length > 0) setValues({ ...values, ...refusal.draft });
  });

  return { values, setValues, typed, setTyped };
}
