/**
 * Calls written as changes of a worked call. A paragraph names a verdict (or none), the worked call of the pages that
 * reaches it, and one of its lines; below, what is typed in its place, where the job stands then, what was concluded
 * last, if anything, and in brackets why.
 */
export interface Row {
  /** Empty where only the way is shown. */
  readonly verdict: string;
  readonly page: string;
  readonly title: string;
  readonly line: string;
  readonly typed: readonly string[];
  readonly place: string;
  readonly says: string;
  readonly why: string;
}

/** Throws where a row can’t be read: it would test nothing. */
export function read(table: string): Row[] {
  return table
    .trim()
    .split(/\n\n+/)
    .flatMap((paragraph) => {
      const [head = '', line = '', ...rows] = paragraph.split('\n');
      const [, verdict = '', page, title] = /^(\S+ )?← (\S+): (.+)$/.exec(head) ?? [];
      return rows.map((row) => {
        const [, typed, place, says = '', why] = /^ {2}(.+) → (\S+)(?: as (\S+))? \((.+)\)$/.exec(row) ?? [];
        if (!page || !title || !typed || !place || !why) throw new Error(`can’t read: ${head} / ${row}`);
        return { verdict: verdict.trim(), page, title, line, typed: typed.split(' | '), place, says, why };
      });
    });
}
