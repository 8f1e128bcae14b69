import type { JobCard } from '../../../engine/desk/types.ts';

/** A call that is or was being taken has a page of its own. */
export const isCall = ({ state }: JobCard): boolean => state === 'taking' || state === 'put-away';
export const pageOf = (card: JobCard): string => `${isCall(card) ? '/calls' : '/jobs'}/${encodeURIComponent(card.job)}`;
