import type { KeyTo } from './use-keys.ts';

interface KeysProps {
  readonly keys: readonly KeyTo[];
  readonly on: boolean;
  readonly onSet: (on: boolean) => void;
}

/** Which single keys there are, and the switch that turns them off. */
export const Keys = ({ keys, on, onSet }: KeysProps) => (
  <section class="single-keys" aria-label="Single keys">
    <p>
      {keys.map(({ key, does }) => (
        <span key={key}>
          <kbd>{key.toUpperCase()}</kbd> {does}
        </span>
      ))}
    </p>
    <button type="button" class="key" aria-pressed={on} onClick={() => onSet(!on)}>
      Single keys
    </button>
  </section>
);
