/** The conversation as it went, every line open, each the target of what points to its entry. */
import type { JobView, TicketLine } from '../../../engine/desk/types.ts';
import { photoAt } from '../net/api.ts';
import { useSettled } from '../net/clock.ts';
import { clockTime } from '../ticket/time.ts';
import { entryId } from './attention.tsx';

export const STANDING = { kept: null, event: null, 'set-aside': 'set aside', fallen: 'no longer counts' } as const;

interface ConversationProps {
  readonly view: JobView;
  /** Answers that counted in their time, or why they never did. */
  readonly ended: ReadonlyMap<number, string>;
}
export const Conversation = ({ view, ended }: ConversationProps) => (
  <section class="lines conversation" aria-labelledby="conversation">
    <h2 id="conversation" tabIndex={-1}>
      Conversation
    </h2>
    <ol>
      {view.ticket.map((line) => (
        <Line key={line.seq} line={line} view={view} ended={ended.get(line.seq) ?? null} />
      ))}
    </ol>
  </section>
);

function Line({ line, view, ended }: { line: TicketLine; view: JobView; ended: string | null }) {
  const standing = ended ?? STANDING[line.standing];
  const settled = useSettled();
  const person = view.people[line.by];
  return (
    <li
      id={entryId(line.seq)}
      tabIndex={-1}
      data-standing={ended === null ? line.standing : 'ended'}
      data-kind={line.kind}
    >
      <p class="margin">
        <time dateTime={line.at}>{clockTime(line.at, settled)}</time>
        <abbr title={person?.name ?? line.by}>{person?.initials ?? line.by}</abbr>
        <span>{`#${line.seq}`}</span>
      </p>
      <div class="said">
        <p class="asked">{line.title}</p>
        {line.says.map((say, i) => (
          <p key={i}>{say}</p>
        ))}
        <Photos job={view.job} line={line} />
        {standing !== null && <p class="standing">{standing}</p>}
      </div>
    </li>
  );
}

export const Photos = ({ job, line }: { job: string; line: TicketLine }) => (
  <>
    {line.photos.map((hash) => (
      <a key={hash} class="print" href={photoAt(job, hash)}>
        <img src={photoAt(job, hash)} alt={`Photo: ${line.title}`} width="96" height="96" loading="lazy" />
      </a>
    ))}
  </>
);
