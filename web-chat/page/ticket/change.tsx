import { useState } from 'preact/hooks';
import { WordsForm } from './words-form.tsx';

interface ChangeProps {
  readonly disabled: boolean;
  readonly onLeave: () => void;
  readonly onTakeBack: (reason: string) => void;
}

/** Beside an earlier answer that is open for change: leave it as it is, or trust it no longer. */
export function Change({ disabled, onLeave, onTakeBack }: ChangeProps) {
  const [asking, setAsking] = useState(false);
  if (asking) {
    return (
      <WordsForm
        ask="What rests on this answer is asked again. Reason:"
        send="Take back"
        optional
        disabled={disabled}
        onSend={onTakeBack}
        onLeave={() => setAsking(false)}
      />
    );
  }
  return (
    <div class="row">
      <button type="button" class="key" onClick={onLeave}>
        Leave it as it is
      </button>
      <button type="button" class="key" onClick={() => setAsking(true)}>
        Take back
      </button>
    </div>
  );
}

/** A senior's question, answered beside the step that stands. */
export function Answer({ disabled, onSend }: { disabled: boolean; onSend: (words: string) => void }) {
  const [open, setOpen] = useState(false);
  if (!open) {
    return (
      <button type="button" class="key wide" onClick={() => setOpen(true)}>
        Reply to the senior
      </button>
    );
  }
  return (
    <WordsForm
      ask="Your reply"
      send="Reply"
      disabled={disabled}
      onLeave={() => setOpen(false)}
      onSend={(words) => {
        setOpen(false);
        onSend(words);
      }}
    />
  );
}
