import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';

interface WordsProps {
  readonly ask: string;
  readonly send: string;
  /** Words that may be left out. */
  readonly optional?: boolean;
  readonly disabled: boolean;
  readonly onSend: (words: string) => void;
  readonly onLeave: () => void;
}

/** A command that takes words with it: a reason, a name, a question. */
export function WordsForm({ ask, send, optional = false, disabled, onSend, onLeave }: WordsProps) {
  const id = useId();
  const [words, setWords] = useState('');
  const input = useRef<HTMLTextAreaElement>(null);
  // Before the next key can come: a letter that was meant as a word must not be taken for a single key of the desk.
  useLayoutEffect(() => input.current?.focus(), []);
  const ready = !disabled && (optional || words.trim() !== '');
  return (
    <form
      class="words"
      onSubmit={(event) => {
        event.preventDefault();
        if (ready) onSend(words.trim());
      }}
    >
      <label for={id}>
        {ask}
        {optional && <small> may be left out</small>}
      </label>
      <textarea
        id={id}
        ref={input}
        rows={2}
        value={words}
        maxLength={4000}
        onInput={(event) => setWords(event.currentTarget.value)}
      />
      <div class="row">
        <button type="submit" class="key main" aria-disabled={!ready}>
          {send}
        </button>
        <button type="button" class="key" onClick={onLeave}>
          Leave it
        </button>
      </div>
    </form>
  );
}
