import type { Part } from '../../../engine/index.ts';

interface TextProps {
  readonly part: Extract<Part, { kind: 'label' | 'note' }>;
  readonly name: string;
  readonly value: string;
  readonly wrong: boolean;
  readonly describedBy: string | undefined;
  readonly oneLine: boolean;
  readonly onValue: (value: string) => void;
}

/** A print as on the part, or a note. */
export function TextPart({ part, name, value, wrong, describedBy, oneLine, onValue }: TextProps) {
  const id = `${name}-${part.key}`;
  const common = {
    id,
    'aria-invalid': wrong,
    'aria-describedby': wrong ? describedBy : undefined,
  };
  return (
    <div class="text" data-wrong={wrong}>
      <label for={id}>
        {part.ask}
        {part.optional && <small> may be left out</small>}
      </label>
      {!oneLine && (
        <textarea rows={3} value={value} onInput={(event) => onValue(event.currentTarget.value)} {...common} />
      )}
      {oneLine && (
        <input
          type="text"
          value={value}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          onInput={(event) => onValue(event.currentTarget.value)}
          {...common}
        />
      )}
    </div>
  );
}
