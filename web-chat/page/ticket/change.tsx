import { useId, useState } from 'preact/hooks';
import { WordsForm } from './words-form.tsx';

interface ChangeProps {
  readonly disabled: boolean;
  /** Why, which a senior gives who changes another person's answer; null for anybody else. */
  readonly reason: string | null;
  readonly onReason: (reason: string) => void;
  readonly onLeave: () => void;
  readonly onTakeBack: (reason: string) => void;
}

/** Beside an earlier answer that is open for change: leave it as it is, or trust it no longer. */
export function Change({ disabled, reason, onReason, onLeave, onTakeBack }: ChangeProps) {
  const id = useId();
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
    <>
      {reason !== null && (
        <div class="text">
          <label for={id}>
            Reason <small>for changing another person’s answer</small>
          </label>
          <input id={id} value={reason} onInput={(event) => onReason(event.currentTarget.value)} />
        </div>
      )}
      <div class="row">
        <button type="button" class="key" onClick={onLeave}>
          Leave it as it is
        </button>
        <button type="button" class="key" onClick={() => setAsking(true)}>
          Take back
        </button>
      </div>
    </>
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
