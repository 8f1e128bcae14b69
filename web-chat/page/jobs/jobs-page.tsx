/** The calls of a person, most recent first, and a new one. */
import { useEffect, useState } from 'preact/hooks';
import type { JobCard } from '../../../engine/desk/types.ts';
import { Conditions } from '../conditions.tsx';
import { getJobs, postSignOut } from '../net/api.ts';
import type { CrewMember, JobsState } from '../state.ts';
import { NewCall } from './new-call.tsx';

const STATES = {
  'under-way': 'under way',
  unreadable: 'can’t be read',
  held: 'held',
  paused: 'paused',
  emergency: 'EMERGENCY',
  finished: 'finished',
  signed: 'signed',
} as const;

export function JobsPage({ me, jobs: first, crew }: JobsState) {
  const [jobs, setJobs] = useState(first);
  // A phone comes back to this page out of a pocket.
  useEffect(() => {
    const renew = async (): Promise<void> => {
      if (document.visibilityState !== 'visible') return;
      const got = await getJobs();
      if (got.ok) setJobs(got.value);
    };
    const back = () => void renew();
    document.addEventListener('visibilitychange', back);
    return () => document.removeEventListener('visibilitychange', back);
  }, []);
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
          <Card key={job.job} job={job} crew={crew} />
        ))}
      </ul>
      <NewCall me={me} crew={crew} />
      <Conditions />
    </main>
  );
}

const Card = ({ job, crew }: { job: JobCard; crew: readonly CrewMember[] }) => (
  <li data-state={job.state}>
    <a href={`/jobs/${encodeURIComponent(job.job)}`}>{job.title}</a>
    <p>
      <strong>{STATES[job.state]}</strong>
      {job.training && ' · training'} · {job.where}
    </p>
    {job.verdict !== null && <p>{job.verdict}</p>}
    <p>{job.isolation}</p>
    {job.assigned.length > 0 && (
      <p>{job.assigned.map((id) => crew.find((each) => each.id === id)?.name ?? id).join(', ')}</p>
    )}
  </li>
);
