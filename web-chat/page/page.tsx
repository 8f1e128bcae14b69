import { JobsPage } from './jobs/jobs-page.tsx';
import type { OfficeState, PageState, ReviewState } from './state.ts';
import { TicketPage } from './ticket/ticket-page.tsx';

export const Page = ({ state }: { state: Exclude<PageState, ReviewState | OfficeState> }) =>
  state.page === 'jobs' ? <JobsPage {...state} /> : <TicketPage {...state} />;
