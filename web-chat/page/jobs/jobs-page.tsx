/** The calls of a person, most recent first, and a new one. */
import { useId, useState } from 'preact/hooks';
import type { JobCard } from '../../../engine/desk/types.ts';
import { Conditions } from '../conditions.tsx';
import { postCall, postSignOut } from '../net/api.ts';
import { clientId } from '../net/client-id.ts';
import type { JobsState } from '../state.ts';

const STATES = {
  'under-way': 'under way',
  held: 'held',
  paused: 'paused',
  emergency: 'EMERGENCY',
  finished: 'finished',
  signed: 'signed',
} as const;

export function JobsPage({ me, jobs, names }: JobsState) {
  const signOut = async (): Promise<void> => {
    if ((await postSignOut()).ok) location.reload();
  };
  return (
    <main class="jobs">
      <header class="heading">
        <h1>Calls</h1>
        <button type="button" class="key" onClick={() => void signOut()}>
          Sign out
        </button>
        <p>{me.name}</p>
      </header>
      {jobs.length === 0 && <p>No call is yours yet. Open one below.</p>}
      <ul class="cards">
        {jobs.map((job) => (
          <Card key={job.job} job={job} names={names} />
        ))}
      </ul>
      <NewCall />
      <Conditions />
    </main>
  );
}

const Card = ({ job, names }: { job: JobCard; names: JobsState['names'] }) => (
  <li data-state={job.state}>
    <a href={`/jobs/${encodeURIComponent(job.job)}`}>{job.title}</a>
    <p>
      <strong>{STATES[job.state]}</strong>
      {job.training && ' · training'} · {job.where}
    </p>
    {job.verdict !== null && <p>{job.verdict}</p>}
    <p>{job.isolation}</p>
    {job.assigned.length > 0 && <p>{job.assigned.map((id) => names[id] ?? id).join(', ')}</p>}
  </li>
);

function NewCall() {
  const id = useId();
  const [title, setTitle] = useState('');
  const [training, setTraining] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  // One id until it is opened: pressed twice, it is one call.
  const [client, setClient] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const open = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (busy || title.trim() === '') return;
    const own = client ?? clientId();
    setClient(own);
    setBusy(true);
    const sent = await postCall({ title: title.trim(), client: own, ...(training ? { training } : {}) });
    if (sent.ok) return location.assign(`/jobs/${encodeURIComponent(sent.value.view.job)}`);
    setBusy(false);
    setTrouble(sent.why === 'lost' ? 'Not sent: no contact with the server. Send it again.' : sent.what);
  };
  return (
    <form class="new-call" onSubmit={(event) => void open(event)}>
      <h2>New call</h2>
      <label for={id}>What and where, in a few words</label>
      <input
        id={id}
        value={title}
        maxLength={200}
        autocomplete="off"
        onInput={(event) => {
          setTitle(event.currentTarget.value);
          setClient(null);
        }}
      />
      <label class="pick">
        <input type="checkbox" checked={training} onChange={(event) => setTraining(event.currentTarget.checked)} />
        <span>Training, never counts</span>
      </label>
      {trouble !== null && (
        <p class="refusal" role="alert">
          {trouble}
        </p>
      )}
      <button type="submit" class="key wide main" aria-disabled={busy || title.trim() === ''}>
        Open the call
      </button>
    </form>
  );
}
