import type { JobCard, JobView, Role } from '../../engine/desk/types.ts';

export interface Me {
  readonly id: string;
  readonly name: string;
  readonly initials: string;
  readonly roles: readonly Role[];
  readonly certified: boolean;
}

export interface CrewMember {
  readonly id: string;
  readonly name: string;
  /** Whether a call can be given to them. */
  readonly technician: boolean;
}

export interface JobsState {
  readonly page: 'jobs';
  readonly me: Me;
  readonly jobs: readonly JobCard[];
  readonly crew: readonly CrewMember[];
}

export interface TicketState {
  readonly page: 'ticket';
  readonly me: Me;
  readonly view: JobView;
}

/** What a page is drawn from, on the server and again in the browser. */
export type PageState = JobsState | TicketState;

/** Whether this person may release, approve and sign. The desk decides; this shows or hides buttons. */
export const isSenior = ({ roles }: Me): boolean => roles.includes('senior') || roles.includes('owner');
