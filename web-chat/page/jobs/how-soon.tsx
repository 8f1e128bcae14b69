import type { JobCard } from '../../../engine/desk/types.ts';

const WORDS = { now: 'NOW', first: 'TODAY, FIRST', today: 'TODAY', soon: 'NEXT FREE VISIT' } as const;

/** How soon somebody has to go, with the reason in words; nothing where no caller was asked. */
export const HowSoon = ({ urgency }: Pick<JobCard, 'urgency'>) =>
  urgency && (
    <p>
      <strong>{WORDS[urgency.level]}</strong> {urgency.why}
    </p>
  );
