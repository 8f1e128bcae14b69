/** Instants of the record, which are UTC, as people of the shop read them: in the shop's time zone. */
export interface When {
  /** `2026-07-14` */
  day(at: string): string;
  /** `2026-07-14 10:03 UTC-5` */
  moment(at: string): string;
}

/** `zone` as in the IANA time zone database, such as `America/Chicago`. Throws a RangeError where there is none. */
export function whenIn(zone = 'UTC'): When {
  const format = new Intl.DateTimeFormat('en-US', {
    ...{ timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' },
    ...{ hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZoneName: 'shortOffset' },
  });
  const partsOf = (at: string): Partial<Record<Intl.DateTimeFormatPartTypes, string>> | null => {
    const date = new Date(at);
    return Number.isNaN(date.getTime())
      ? null
      : Object.fromEntries(format.formatToParts(date).map(({ type, value }) => [type, value]));
  };
  const day: When['day'] = (at) => {
    const parts = partsOf(at);
    return parts ? `${parts.year}-${parts.month}-${parts.day}` : at.slice(0, 10);
  };
  return {
    day,
    moment(at) {
      const parts = partsOf(at);
      return parts
        ? `${day(at)} ${parts.hour}:${parts.minute} ${(parts.timeZoneName ?? '').replace('GMT', 'UTC').replace(/\+0$/, '')}`
        : at;
    },
  };
}

/** Made once: a formatter costs more than all that a turn has to say. */
export const UTC: When = whenIn();
