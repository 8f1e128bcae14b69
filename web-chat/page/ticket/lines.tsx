/** The ticket so far: every line with its time and initials in the margin, and whether it still counts, in words. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { JobView, TicketLine } from '../../../engine/desk/types.ts';
import { photoAt } from '../net/api.ts';
import { useSettled } from '../net/clock.ts';
import { picturesOf } from './pictures.tsx';
import { clockTime } from './time.ts';
import { Verdict } from './verdict.tsx';

/** How many of the last lines are open; the rest folds away, so that the question is on the first screen. */
const OPEN = 1;
const STANDING = { kept: null, event: null, 'set-aside': 'set aside', fallen: 'no longer counts' } as const;

/** What the dispatcher wrote down with the caller on the line. */
const isTheCall = ({ kind }: TicketLine): boolean => kind === 'set';
/** A call that was given out, and nobody has answered anything on it. */
export const notBegun = ({ ticket }: JobView): boolean =>
  ticket.some(isTheCall) && !ticket.some(({ kind }) => kind === 'answered' || kind === 'alarmed');

interface LinesProps {
  readonly view: JobView;
  /** The line that is being changed, and its question, which stands in its place. */
  readonly changing: { readonly seq: number; readonly card: ComponentChildren } | null;
  readonly onChange: (seq: number) => void;
}

export function Lines({ view, changing, onChange }: LinesProps) {
  const { ticket, prompt } = view;
  const [open, setOpen] = useState(false);
  // At the end the verdicts stand open in the card.
  const underWay = prompt.kind !== 'finished' && prompt.kind !== 'signed';
  // Whoever drives out wants the address and what to load before the first question, and can come back to it later.
  const call = ticket.find(isTheCall);
  const told = ticket.filter((each) => each !== call);
  const earlier = told.slice(0, -OPEN);
  const opened = open || earlier.some(({ seq }) => seq === changing?.seq);
  const line = (each: TicketLine) => (
    <Line key={each.seq} line={each} view={view} onChange={onChange}>
      {changing?.seq === each.seq && changing.card}
    </Line>
  );
  return (
    <section class="lines" aria-label="Ticket so far">
      {call && (
        <details open={notBegun(view)}>
          <summary>{call.title}</summary>
          <ol>{line(call)}</ol>
        </details>
      )}
      {earlier.length > 0 && (
        <details open={opened} onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>{`Earlier lines: ${earlier.length}`}</summary>
          {/* Hundreds of lines that nobody looks at are not drawn. */}
          {opened && <ol>{earlier.map(line)}</ol>}
        </details>
      )}
      <ol>{told.slice(-OPEN).map(line)}</ol>
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
  readonly view: JobView;
  readonly onChange: (seq: number) => void;
  readonly children: ComponentChildren;
}

function Line({ line, view, onChange, children }: LineProps) {
  const settled = useSettled();
  const person = view.people[line.by];
  const said = STANDING[line.standing];
  const changing = Boolean(children);
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
        {line.photos.map((hash) => (
          <a key={hash} class="print" href={photoAt(view.job, hash)}>
            <img src={photoAt(view.job, hash)} alt={`Photo: ${line.title}`} width="96" height="96" loading="lazy" />
          </a>
        ))}
        {said !== null && <p class="standing">{said}</p>}
      </div>
      {line.amendable && !changing && (
        <button type="button" class="key" onClick={() => onChange(line.seq)} aria-label={`Change: ${line.title}`}>
          Change
        </button>
      )}
      {children}
    </li>
  );
}

/** What a change did to lines that counted before it. */
export const Fell = ({ lines }: { lines: readonly TicketLine[] }) =>
  lines.length === 0 ? null : (
    <ul class="fell" role="status" aria-label="What the change did">
      {lines.map((line) => (
        <li key={line.seq}>
          <strong class="standing">{STANDING[line.standing]}</strong> {line.title}
        </li>
      ))}
    </ul>
  );
