import { JobsPage } from './jobs/jobs-page.tsx';
import type { PageState } from './state.ts';
import { TicketPage } from './ticket/ticket-page.tsx';

export const Page = ({ state }: { state: PageState }) =>
  state.page === 'jobs' ? <JobsPage {...state} /> : <TicketPage {...state} />;
