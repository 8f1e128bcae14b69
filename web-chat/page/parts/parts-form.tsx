/** The controls of one question, and the two ways to send them: part by part, or typed in one line. */
import { useId, useState } from 'preact/hooks';
import type { GivenParts, Part, Prompt, Refusal } from '../../../engine/index.ts';
import { PickChoice, TapChoice } from './choice.tsx';
import { Field } from './field.tsx';
import { PhotoPart } from './photo.tsx';
import { Spare } from './spare.tsx';
import { TextPart } from './text.tsx';
import { givenOf, type Photos, tappedPart, unitKey, type Values } from './values.ts';

interface PartsProps {
  readonly prompt: Prompt;
  readonly values: Values;
  readonly photos: Photos;
  readonly refusal: Refusal | null;
  readonly disabled: boolean;
  /** Notes are one line each, and Enter sends: for whoever types with a caller on the line. */
  readonly oneLine?: boolean;
  readonly onValues: (values: Values) => void;
  readonly onPhotos: (photos: Photos) => void;
  readonly onParts: (parts: GivenParts) => void;
  readonly onLine: (text: string) => Promise<boolean>;
}

export function PartsForm({ prompt, values, photos, refusal, disabled, oneLine = false, ...on }: PartsProps) {
  const { onValues, onPhotos, onParts, onLine } = on;
  const name = useId();
  const [line, setLine] = useState('');
  const tapped = tappedPart(prompt);
  const shown = prompt.parts.filter((part) => part !== tapped);
  const spare = spareFields(shown);
  const spareUsed = spare.some(
    (part) => textIn(values, part.key) !== '' || (refusal?.parts.includes(part.key) ?? false),
  );
  const alert = refusal ? `${name}-refusal` : undefined;
  const set = (key: string, value: string | readonly string[]) => onValues({ ...values, [key]: value });

  const send = (event: Event): void => {
    event.preventDefault();
    if (disabled) return;
    if (prompt.line !== null && line.trim() !== '')
      void onLine(line).then((taken) => taken && setLine((now) => (now === line ? '' : now)));
    else onParts(givenOf(prompt, values));
  };
  const control = (part: Part) => {
    const common = { part, name, wrong: refusal?.parts.includes(part.key) ?? false, describedBy: alert };
    const text = textIn(values, part.key);
    switch (part.kind) {
      case 'choose':
      case 'confirm':
      case 'act':
        return (
          <PickChoice
            {...common}
            part={part}
            chosen={idsIn(values, part.key)}
            onPick={(chosen) => set(part.key, chosen)}
          />
        );
      case 'field':
        return (
          <Field
            {...common}
            part={part}
            value={text}
            unit={textIn(values, unitKey(part))}
            onValue={(value) => set(part.key, value)}
            onUnit={(unit) => set(unitKey(part), unit)}
          />
        );
      case 'photo':
        return (
          <PhotoPart
            {...common}
            part={part}
            photo={photos[part.key] ?? null}
            onPhoto={(photo) => onPhotos(withPhoto(photos, part.key, photo))}
          />
        );
      case 'label':
      case 'note':
        return (
          <TextPart
            {...common}
            part={part}
            value={text}
            oneLine={oneLine || part.kind === 'label'}
            onValue={(value) => set(part.key, value)}
          />
        );
    }
  };

  return (
    <form class="parts" onSubmit={send} noValidate>
      {refusal && (
        <p class="refusal" role="alert" id={alert}>
          {refusal.text}
        </p>
      )}
      {shown.map((part) => !spare.includes(part) && <div key={part.key}>{control(part)}</div>)}
      {spare.length > 0 && (
        <Spare asks={spare.map((part) => part.ask)} used={spareUsed}>
          {spare.map((part) => (
            <div key={part.key}>{control(part)}</div>
          ))}
        </Spare>
      )}
      {prompt.line !== null && (
        <div class="text">
          <label for={`${name}-line`}>
            Or all in one line <small>{prompt.line}</small>
          </label>
          <input
            id={`${name}-line`}
            value={line}
            enterkeyhint="send"
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            onInput={(event) => setLine(event.currentTarget.value)}
          />
        </div>
      )}
      {tapped && (
        <TapChoice
          part={tapped}
          titled={tapped.ask === prompt.title}
          chosen={'remembered' in tapped ? tapped.remembered : []}
          disabled={disabled}
          onTap={(id) => onParts({ ...givenOf(prompt, values), [tapped.key]: [id] })}
        />
      )}
      {!tapped && prompt.parts.length > 0 && (
        <button type="submit" class="key wide main" aria-disabled={disabled}>
          Send
        </button>
      )}
    </form>
  );
}

/** Readings that may be left out, where there are several beside one that is due. */
function spareFields(parts: readonly Part[]): readonly Part[] {
  const fields = parts.filter((part) => part.kind === 'field');
  const spare = fields.filter((part) => part.optional);
  return spare.length > 1 && spare.length < fields.length ? spare : [];
}

function withPhoto(photos: Photos, key: string, photo: Blob | null): Photos {
  const { [key]: _, ...rest } = photos;
  return photo ? { ...rest, [key]: photo } : rest;
}

function textIn(values: Values, key: string): string {
  const value = values[key];
  return typeof value === 'string' ? value : '';
}
function idsIn(values: Values, key: string): readonly string[] {
  const value = values[key];
  return typeof value === 'string' ? [value] : (value ?? []);
}
