/** One job on the review desk: what needs attention, what can be done, the conversation, and beside it the evidence. */
import { useRef, useState } from 'preact/hooks';
import type { CommandName } from '../../../engine/index.ts';
import { Conditions } from '../conditions.tsx';
import { useSettled } from '../net/clock.ts';
import { useOutdated } from '../outdated.tsx';
import { Reports } from '../report/reports.tsx';
import type { DeskState } from '../state.ts';
import { Strip } from '../ticket/strip.tsx';
import { AttentionList, entryId } from './attention.tsx';
import { Conversation } from './conversation.tsx';
import { Decide } from './decide.tsx';
import { EvidenceTable } from './evidence.tsx';
import { Keys } from './keys.tsx';
import { Trends } from './trends.tsx';
import { focusOn, type KeyTo, useKeys } from './use-keys.ts';
import { useReview } from './use-review.ts';

const PARTS = [
  ['attention', 'What needs attention'],
  ['decide', 'What you can do'],
  ['conversation', 'Conversation'],
  ['evidence', 'Evidence'],
] as const;

export function DeskPage({ build, me, review: first }: DeskState) {
  const job = useReview(first);
  const { view, attention, evidence, trends, may } = job.review;
  const outdated = useOutdated(build);
  const [asking, setAsking] = useState<CommandName | null>(null);
  const ended = new Map(evidence.flatMap((row) => (row.ended === null ? [] : [[row.seq, row.ended] as const])));
  const at = useRef(-1);
  const next = (): void => {
    at.current = (at.current + 1) % Math.max(1, attention.length);
    const item = attention[at.current];
    if (item) focusOn(entryId(item.seq));
  };
  const keys: readonly KeyTo[] = [
    ...PARTS.map(([id, does]) => ({ key: id.charAt(0), does, go: () => focusOn(id) })),
    ...(trends.length > 0 ? [{ key: 'u', does: 'This unit', go: () => focusOn('unit') }] : []),
    { key: 'n', does: 'Next thing to look at', go: next },
    { key: 'r', does: 'Recompute', go: () => void job.recompute() },
    ...(may.includes('ask') ? [{ key: 'q', does: 'Ask a question', go: () => setAsking('ask') }] : []),
  ];
  const { on, set } = useKeys(keys);
  return (
    <div class="desk" data-live={useSettled()}>
      <nav class="skips" aria-label="On this page">
        {PARTS.map(([id, words]) => (
          <a
            key={id}
            class="key"
            href={`#${id}`}
            onClick={(event) => {
              event.preventDefault();
              focusOn(id);
            }}
          >
            {words}
          </a>
        ))}
      </nav>
      <Strip
        view={view}
        received={job.received}
        contact={job.contact}
        waiting={0}
        outdated={outdated}
        onStale={job.refresh}
      />
      <main>
        <header class="heading">
          <h1>{view.title}</h1>
          <a class="key" href="/review">
            Review
          </a>
          {view.training && <p class="stamp">Training: never counts</p>}
        </header>
        <div class="over">
          <AttentionList items={attention} />
          <Decide job={job} asking={asking} onAsking={setAsking} />
          {view.summary && <Reports job={view.job} me={me} />}
          <Keys keys={keys} on={on} onSet={set} />
        </div>
        <div class="beside">
          <Conversation view={view} ended={ended} />
          <EvidenceTable view={view} rows={evidence} />
        </div>
        <Trends trends={trends} />
        <Conditions />
      </main>
    </div>
  );
}
