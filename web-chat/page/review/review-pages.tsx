import type { ReviewState } from '../state.ts';
import { DeskPage } from './desk-page.tsx';
import { QueuePage } from './queue-page.tsx';

/** What seniors and owners have besides everybody's pages; loaded by them alone. */
export const ReviewPages = ({ state }: { state: ReviewState }) =>
  state.page === 'queue' ? <QueuePage {...state} /> : <DeskPage {...state} />;
