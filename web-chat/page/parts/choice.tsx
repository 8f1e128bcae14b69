import type { Option, Part } from '../../../engine/index.ts';

export type ChoicePart = Extract<Part, { kind: 'choose' | 'confirm' | 'act' }>;

interface TapProps {
  readonly part: ChoicePart;
  readonly chosen: readonly string[];
  /** The question already says what is asked. */
  readonly titled: boolean;
  readonly disabled: boolean;
  readonly onTap: (id: string) => void;
}

/** Options that are sent as they are tapped. An act and a confirm have one big key; what else there is comes after it. */
export function TapChoice({ part, chosen, titled, disabled, onTap }: TapProps) {
  const asksMore = part.kind === 'choose';
  return (
    <fieldset class="part">
      <legend class={asksMore && !titled ? undefined : 'unseen'}>{part.ask}</legend>
      <div class="taps">
        {part.options.map((option, i) => (
          <button
            key={option.id}
            type="button"
            class={!asksMore && i === 0 ? 'key wide main' : 'key wide'}
            data-option={option.id}
            aria-disabled={disabled}
            onClick={() => !disabled && onTap(option.id)}
          >
            {option.label}
            {chosen.includes(option.id) && <small> last time</small>}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** Letters up to which two options stand side by side on a phone. */
const SHORT = 24;

interface PickProps {
  readonly part: ChoicePart;
  readonly name: string;
  readonly chosen: readonly string[];
  readonly wrong: boolean;
  readonly describedBy: string | undefined;
  readonly onPick: (chosen: readonly string[]) => void;
}

/** Options that are chosen first and sent with the rest. */
export function PickChoice({ part, name, chosen, wrong, describedBy, onPick }: PickProps) {
  const several = (part.kind === 'choose' && part.several) || part.options.length === 1;
  const hints = [
    ...(part.optional ? ['may be left out'] : []),
    ...(several && part.options.length > 1 ? ['all that fit'] : []),
  ];
  const toggle = ({ id }: Option): void => {
    const rest = chosen.filter((each) => each !== id);
    if (!several) onPick([id]);
    else onPick(rest.length < chosen.length ? rest : [...chosen, id]);
  };
  return (
    <fieldset class="part" data-wrong={wrong} aria-describedby={wrong ? describedBy : undefined}>
      <legend>
        {part.ask}
        {hints.length > 0 && <small> {hints.join(', ')}</small>}
      </legend>
      <div class="picks">
        {part.options.map((option) => (
          <label key={option.id} class={option.label.length > SHORT ? 'pick long' : 'pick'}>
            <input
              type={several ? 'checkbox' : 'radio'}
              name={`${name}-${part.key}`}
              value={option.id}
              checked={chosen.includes(option.id)}
              onChange={() => toggle(option)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
