/** What is typed and not given: per question for its controls, per job for the typed line. Survives a reload. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Prompt, Refusal } from '../../../engine/index.ts';
import { readDraft, writeDraft } from '../kept/draft.ts';
import { filledIn, type Photos, questionKey, type Values } from '../parts/values.ts';

export interface Draft {
  readonly values: Values;
  readonly setValues: (values: Values) => void;
  /** Taken and not given yet; these don't survive a reload. */
  readonly photos: Photos;
  readonly setPhotos: (photos: Photos) => void;
  readonly typed: string;
  readonly setTyped: (typed: string) => void;
}

const NONE: Photos = {};

export function useDraft(job: string, prompt: Prompt, refusal: Refusal | null): Draft {
  const question = questionKey(prompt);
  const [draft, setDraft] = useState<{ readonly question: string; readonly values: Values }>(() => ({
    question,
    values: filledIn(prompt),
  }));
  const [taken, setTaken] = useState({ question, photos: NONE });
  const [typed, setTyped] = useState('');
  const values = draft.question === question ? draft.values : filledIn(prompt);
  const setValues = (next: Values) => setDraft({ question, values: next });

  // After the server's drawing was taken over, so that the first drawing here is the same.
  const restored = useRef(false);
  useEffect(() => {
    if (restored.current) return writeDraft(job, { question, values, typed });
    restored.current = true;
    const kept = readDraft(job);
    if (kept.typed !== '') setTyped(kept.typed);
    if (kept.question === question) setDraft({ question, values: kept.values });
  });

  // What was understood of a typed line stands in its fields; only the rest has to be given.
  const merged = useRef<Refusal | null>(null);
  useEffect(() => {
    if (refusal === merged.current) return;
    merged.current = refusal;
    if (refusal && Object.keys(refusal.draft).length > 0) setValues({ ...values, ...refusal.draft });
  });

  return {
    values,
    setValues,
    photos: taken.question === question ? taken.photos : NONE,
    setPhotos: (photos) => setTaken({ question, photos }),
    typed,
    setTyped,
  };
}
