/** What is typed and not given: per question for its controls, per job for the typed line; photos. Survives a reload. */
import { type Dispatch, type StateUpdater, useEffect, useRef, useState } from 'preact/hooks';
import type { Prompt, Refusal } from '../../../engine/index.ts';
import { readDraft, writeDraft } from '../kept/draft.ts';
import { dropPhotos, keepPhotos, readPhotos } from '../kept/photo-draft.ts';
import { filledIn, type Photos, questionKey, type Values } from '../parts/values.ts';

export interface Draft {
  readonly values: Values;
  readonly setValues: (values: Values) => void;
  /** Taken and not given yet. */
  readonly photos: Photos;
  readonly setPhotos: (photos: Photos) => void;
  readonly typed: string;
  readonly setTyped: Dispatch<StateUpdater<string>>;
}

const NONE: Photos = {};

interface Around {
  readonly job: string;
  readonly person: string;
  /** The question on the screen: the one that stands, or an earlier one that is changed. */
  readonly prompt: Prompt;
  readonly standing: Prompt;
  readonly refusal: Refusal | null;
}

export function useDraft({ job, person, prompt, standing, refusal }: Around): Draft {
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

  // A photo is too large for what keeps the rest. It is kept until the question that stands has passed.
  const stands = questionKey(standing);
  const kept = useRef<string>(undefined);
  useEffect(() => {
    const first = kept.current === undefined;
    kept.current = stands;
    if (!first) return void dropPhotos(person, job);
    void readPhotos(person, job, stands).then(
      (photos) => photos && setTaken((now) => (now.photos === NONE ? { question: stands, photos } : now)),
    );
  }, [stands, person, job]);

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
    setPhotos: (photos) => {
      setTaken({ question, photos });
      void keepPhotos(person, job, question, photos);
    },
    typed,
    setTyped,
  };
}
