/** The clock of a conversation: the machine's, until a script sets it. */
export interface Clock {
  readonly now: () => Date;
  /** From here on it stands at this instant. */
  readonly set: (instant: string) => void;
}

export function createClock(instant: string | null, machine: () => Date): Clock {
  let stands = instant;
  return {
    now: () => (stands === null ? machine() : new Date(stands)),
    set: (to) => {
      stands = to;
    },
  };
}

const TIME = /^(\d{4})-(\d\d)-(\d\d)T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d{1,9})?)?(Z|[+-]([01]\d|2[0-3]):[0-5]\d)$/;

/** ISO 8601 with its zone as the instant in UTC; null for anything else, a 30 February too. */
export function readTime(text: string): string | null {
  const [, year, month, day] = TIME.exec(text.trim()) ?? [];
  if (year === undefined || month === undefined || day === undefined) return null;
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  if (date.getUTCMonth() !== Number(month) - 1 || date.getUTCDate() !== Number(day)) return null;
  const instant = new Date(text.trim()).toISOString();
  return instant.length === '2026-01-01T00:00:00.000Z'.length ? instant : null;
}
