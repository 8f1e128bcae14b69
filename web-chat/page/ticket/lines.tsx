/** The ticket so far: every line with its time and initials in the margin, and whether it still counts, in words. */
import type { JobView, TicketLine } from '../../../engine/desk/types.ts';
import { useSettled } from '../net/clock.ts';
import { picturesOf } from './pictures.tsx';
import { clockTime } from './time.ts';
import { Verdict } from './verdict.tsx';

/** How many of the last lines are open; the rest folds away, so that the question is on the first screen. */
const OPEN = 1;
const STANDING = { kept: null, event: null, 'set-aside': 'set aside', fallen: 'no longer counts' } as const;

interface LinesProps {
  readonly view: JobView;
  readonly onChange: (seq: number) => void;
}

export function Lines({ view, onChange }: LinesProps) {
  const { ticket, prompt } = view;
  // At the end the verdicts stand open in the card.
  const underWay = prompt.kind !== 'finished' && prompt.kind !== 'signed';
  const earlier = ticket.slice(0, -OPEN);
  const line = (each: TicketLine) => <Line key={each.seq} line={each} people={view.people} onChange={onChange} />;
  return (
    <section class="lines" aria-label="Ticket so far">
      {earlier.length > 0 && (
        <details>
          <summary>{`Earlier lines: ${earlier.length}`}</summary>
          <ol>{earlier.map(line)}</ol>
        </details>
      )}
      <ol>{ticket.slice(-OPEN).map(line)}</ol>
      {underWay &&
        prompt.verdicts.map((verdict) => (
          <details key={verdict.place}>
            <summary>{`Verdict: ${verdict.title}`}</summary>
            <Verdict verdict={verdict} pictures={picturesOf(prompt, verdict.place)} />
          </details>
        ))}
    </section>
  );
}

interface LineProps {
  readonly line: TicketLine;
  readonly people: JobView['people'];
  readonly onChange: (seq: number) => void;
}

function Line({ line, people, onChange }: LineProps) {
  const settled = useSettled();
  const person = people[line.by];
  const said = STANDING[line.standing];
  return (
    <li data-standing={line.standing} data-kind={line.kind}>
      <p class="margin">
        <time dateTime={line.at}>{clockTime(line.at, settled)}</time>
        <abbr title={person?.name ?? line.by}>{person?.initials ?? line.by}</abbr>
      </p>
      <div class="said">
        <p class="asked">{line.title}</p>
        {line.says.map((say, i) => (
          <p key={i}>{say}</p>
        ))}
        {said !== null && <p class="standing">{said}</p>}
      </div>
      {line.amendable && (
        <button type="button" class="key" onClick={() => onChange(line.seq)} aria-label={`Change: ${line.title}`}>
          Change
        </button>
      )}
    </li>
  );
}
