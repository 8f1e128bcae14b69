import type { Known } from '../../../engine/desk/types.ts';
import { pageOf } from './where.ts';

interface KnownProps {
  readonly known: Known;
  /** The unit that the call is about already. */
  readonly picked: string | null;
  readonly onPick: (unit: string) => void;
}

/** What the shop knows of what is being typed: open calls of the same caller or place, and the unit with its history. */
export function KnownLines({ known: { calls, units }, picked, onPick }: KnownProps) {
  return (
    <section class="known" aria-label="Known already" aria-live="polite">
      {calls.length === 0 && units.length === 0 && <p>Nothing is known of this yet.</p>}
      {calls.map((card) => (
        <p key={card.job} class="holder">
          <strong>{card.state === 'put-away' ? 'Put away before its end' : 'Open already'}</strong>
          <a href={pageOf(card)}>{card.title}</a>
          <small>{`since ${card.opened.slice(0, 10)}: ${card.where}`}</small>
        </p>
      ))}
      {units.map((unit) => (
        <div key={unit.id} class="holder">
          <strong>{unit.name}</strong>
          {unit.history.length === 0 ? <small>Nothing on record.</small> : null}
          {unit.history.slice(0, 3).map((line) => (
            <small key={line}>{line}</small>
          ))}
          <button type="button" class="key" aria-pressed={picked === unit.id} onClick={() => onPick(unit.id)}>
            {picked === unit.id ? 'This unit' : 'It is this unit'}
          </button>
        </div>
      ))}
    </section>
  );
}
