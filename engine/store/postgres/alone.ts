/** Whether anybody else works on this database. */
import { setTimeout } from 'node:timers/promises';
import { NotKept } from '../port.ts';
import { createLink } from './link.ts';

// By the name that every connection of ours gives: whoever may connect sees it of all.
const OTHERS = `select count(*)::int from pg_stat_activity
  where datname = current_database() and application_name = 'nocool' and pid <> pg_backend_pid()`;
/** Milliseconds: the database notices a moment later that one who has just stopped is gone; common practice, no source. */
const [WITHIN, PAUSE] = [2_000, 100];

/** Rejects with NotKept where somebody has it open: what they would write there would be lost. */
export async function refuseInUse(url: string): Promise<void> {
  const link = createLink(url, { connections: 1, statementMs: 10_000 });
  try {
    for (const until = performance.now() + WITHIN; ; await setTimeout(PAUSE)) {
      const [row] = await link.read<[number]>('others', OTHERS);
      if (row?.[0] === 0) return;
      if (performance.now() > until) throw new NotKept('The database is in use. Stop nocool first.');
    }
  } finally {
    await link.end();
  }
}
