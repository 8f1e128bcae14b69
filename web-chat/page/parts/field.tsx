import type { Part } from '../../../engine/index.ts';

type FieldPart = Extract<Part, { kind: 'field' }>;

interface FieldProps {
  readonly part: FieldPart;
  readonly name: string;
  readonly value: string;
  /** The unit chosen beside it, where a bare number isn't enough. */
  readonly unit: string;
  readonly wrong: boolean;
  readonly describedBy: string | undefined;
  readonly onValue: (value: string) => void;
  readonly onUnit: (unit: string) => void;
}

const OHMS = ['Ω', 'kΩ', 'MΩ'];
const UNITS: Readonly<Record<string, readonly string[]>> = { Ω: OHMS, MΩ: OHMS, µF: ['µF', 'nF', 'pF'] };

/** As `sayUnit` of the engine says them, which is not loaded here. */
const SHOWN: Partial<Record<FieldPart['unit'], string>> = { count: '', 'Δ°F': '°F' };

/** Units to choose from: where a bare number isn't enough, and where another one is preferred, which then stands first. */
function unitsOf({ unit, unitNeeded, prefers }: FieldPart): readonly string[] {
  if (unitNeeded) return UNITS[unit] ?? [unit];
  return prefers === undefined ? [] : [prefers, SHOWN[unit] ?? unit];
}

/** One reading: what, number, unit; keys for what a number pad lacks. */
export function Field({ part, name, value, unit, wrong, describedBy, onValue, onUnit }: FieldProps) {
  const id = `${name}-${part.key}`;
  const signed = part.from.startsWith('-');
  const over = value.trim().toUpperCase() === 'OL';
  const units = unitsOf(part);
  return (
    <div class="field" data-wrong={wrong}>
      <label for={id}>
        {part.ask}
        {part.optional && <small> may be left out</small>}
      </label>
      <div class="reading">
        <input
          id={id}
          value={value}
          inputMode={part.unit === 'count' ? 'numeric' : 'decimal'}
          enterkeyhint="next"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          maxLength={60}
          aria-invalid={wrong}
          aria-describedby={wrong ? describedBy : undefined}
          onInput={(event) => onValue(event.currentTarget.value)}
          onKeyDown={onwards}
        />
        <span class="unit">{units.length > 0 ? '' : (SHOWN[part.unit] ?? part.unit)}</span>
        {signed && (
          <button
            type="button"
            class="key"
            aria-label={`${part.ask}: change the sign`}
            onClick={() => onValue(turned(value))}
          >
            ±
          </button>
        )}
        {part.over && (
          <button
            type="button"
            class="key"
            aria-label={`${part.ask}: OL, over range`}
            aria-pressed={over}
            onClick={() => onValue(over ? '' : 'OL')}
          >
            OL
          </button>
        )}
      </div>
      {units.length > 0 && (
        <fieldset class="units">
          <legend class="unseen">{`Unit of ${part.ask}`}</legend>
          {units.map((each) => (
            <label key={each} class="pick">
              <input
                type="radio"
                name={`${id}-unit`}
                value={each}
                checked={(unit || part.prefers) === each}
                onChange={() => onUnit(each)}
              />
              <span>{each}</span>
            </label>
          ))}
        </fieldset>
      )}
    </div>
  );
}

/** Enter goes to the next reading and sends after the last, so that a line isn't sent half empty. */
function onwards(event: KeyboardEvent & { readonly currentTarget: HTMLInputElement }): void {
  if (event.key !== 'Enter' || event.isComposing || event.keyCode === 229) return;
  const { form } = event.currentTarget;
  const readings = [...(form?.querySelectorAll<HTMLInputElement>('.reading input') ?? [])];
  const next = readings[readings.indexOf(event.currentTarget) + 1];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

const turned = (value: string): string => (/^[-−]/.test(value) ? value.slice(1) : `-${value}`);
