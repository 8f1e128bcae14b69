import type { Board, JobCard, JobView, ReviewQueue, ReviewView, Role, ShopView } from '../../engine/desk/types.ts';

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

interface Common {
  /** Which build drew the page. */
  readonly build: string;
}

export interface JobsState extends Common {
  readonly page: 'jobs';
  readonly me: Me;
  readonly jobs: readonly JobCard[];
  readonly crew: readonly CrewMember[];
}

export interface TicketState extends Common {
  readonly page: 'ticket';
  /** Fewer words, for experienced people; this device's choice. The same questions and the same gates. */
  readonly brief: boolean;
  readonly me: Me;
  readonly view: JobView;
}

/** The queue of review; its first page. */
export interface QueueState extends Common {
  readonly page: 'queue';
  readonly me: Me;
  readonly queue: ReviewQueue;
}
/** One job on the review desk. */
export interface DeskState extends Common {
  readonly page: 'desk';
  readonly me: Me;
  readonly review: ReviewView;
}
export type ReviewState = QueueState | DeskState;

/** A call while the caller is on the line. */
export interface CallState extends Common {
  readonly page: 'call';
  readonly me: Me;
  readonly view: JobView;
}
export interface BoardState extends Common {
  readonly page: 'board';
  readonly me: Me;
  readonly board: Board;
}
export interface ShopState extends Common {
  readonly page: 'shop';
  readonly me: Me;
  readonly shop: ShopView;
}
/** What an office has besides everybody's pages; loaded by it alone. */
export type OfficeState = CallState | BoardState | ShopState;

/** Says to the server that this device wants fewer words, so that the first drawing has them already. */
export const BRIEF_COOKIE = 'nocool-brief';

/** Says to the server that this device has the fonts: asking for them at once costs a call nothing then. */
export const FONTS_COOKIE = 'nocool-fonts';

/** What a page is drawn from, on the server and again in the browser. */
export type PageState = JobsState | TicketState | ReviewState | OfficeState;
export const isReview = (state: PageState): state is ReviewState => state.page === 'queue' || state.page === 'desk';

export const isOffice = (state: PageState): state is OfficeState =>
  state.page === 'call' || state.page === 'board' || state.page === 'shop';

/** Whether this person is told of every emergency, takes calls and sees the board. The desk decides; this shows keys. */
export const isOfOffice = ({ roles }: Me): boolean =>
  roles.includes('dispatcher') || roles.includes('senior') || roles.includes('owner');

/** Whether this person may release, approve and sign. The desk decides; this shows or hides buttons. */
export const isSenior = ({ roles }: Me): boolean => roles.includes('senior') || roles.includes('owner');
