/** At thumb height: the keys that always work, and one line that takes whatever is typed. */
import { useLayoutEffect, useState } from 'preact/hooks';
import type { JobView } from '../../../engine/desk/types.ts';
import type { Me } from '../state.ts';
import { type CommandKey, FIRST, moreKeys } from './commands.ts';
import { WordsForm } from './words-form.tsx';

interface DockProps {
  readonly view: JobView;
  readonly me: Me;
  readonly typed: string;
  readonly disabled: boolean;
  readonly brief: boolean;
  readonly onBrief: (brief: boolean) => void;
  readonly onTyped: (typed: string) => void;
  readonly onSend: () => void;
  readonly onCommand: (key: CommandKey, words: string) => void;
}

export function Dock({ view, me, typed, disabled, brief, onBrief, onTyped, onSend, onCommand }: DockProps) {
  const [open, setOpen] = useState(false);
  const [asking, setAsking] = useState<CommandKey | null>(null);
  const close = () => {
    setOpen(false);
    setAsking(null);
  };
  // Before it is seen: whoever is quick presses Escape as soon as it is there.
  useLayoutEffect(() => {
    if (!open) return;
    const leave = ({ key }: KeyboardEvent) => {
      if (key !== 'Escape') return;
      setOpen(false);
      setAsking(null);
    };
    document.addEventListener('keydown', leave);
    return () => document.removeEventListener('keydown', leave);
  }, [open]);
  const tap = (key: CommandKey): void => {
    if (disabled) return;
    if (key.words) setAsking(key);
    else {
      close();
      onCommand(key, '');
    }
  };
  return (
    <section class="dock" aria-label="Keys and typing">
      {open && (
        <div class="more" id="more">
          {asking?.words ? (
            <WordsForm
              {...asking.words}
              key={asking.name}
              disabled={disabled}
              onLeave={() => setAsking(null)}
              onSend={(words) => {
                close();
                onCommand(asking, words);
              }}
            />
          ) : (
            <>
              {moreKeys(view, me).map((key) => (
                <button key={key.name} type="button" class="key" data-command={key.name} onClick={() => tap(key)}>
                  {key.label}
                </button>
              ))}
              <button
                type="button"
                class="key"
                aria-pressed={brief}
                onClick={() => {
                  close();
                  onBrief(!brief);
                }}
              >
                Fewer words
              </button>
            </>
          )}
        </div>
      )}
      <div class="row keys">
        {FIRST.map((key) => (
          <button
            key={key.name}
            type="button"
            class="key"
            data-command={key.name}
            aria-disabled={disabled}
            onClick={() => tap(key)}
          >
            {key.label}
          </button>
        ))}
        <button
          type="button"
          class="key"
          aria-expanded={open}
          aria-controls="more"
          onClick={() => (open ? close() : setOpen(true))}
        >
          {open ? 'Close' : 'More'}
        </button>
      </div>
      <form
        class="composer row"
        onSubmit={(event) => {
          event.preventDefault();
          onSend();
        }}
      >
        <textarea
          aria-label="Type an answer, a command or a note"
          placeholder="Type anything"
          rows={1}
          value={typed}
          enterkeyhint="send"
          autocomplete="off"
          onInput={(event) => onTyped(event.currentTarget.value)}
          onKeyDown={(event) => {
            // While a word is being composed (229 on some phones), Enter belongs to the keyboard.
            if (event.key !== 'Enter' || event.shiftKey || event.isComposing || event.keyCode === 229) return;
            event.preventDefault();
            onSend();
          }}
        />
        <button type="submit" class="key" aria-disabled={disabled || typed.trim() === ''}>
          Send
        </button>
      </form>
    </section>
  );
}
