/** A backup becomes the shop: checked as a whole first, and what was there before is kept beside it. */
import { copyFileSync, existsSync, linkSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type Database from 'better-sqlite3';
import { checkShop, type ShopCheck } from './check.ts';
import { copyShop } from './copy.ts';
import { hold, intoPlace, isOlder, lookOver, take, withDraft, withStore } from './file.ts';
import { isPostgres, openStore } from './open.ts';
import { Damaged, NotKept } from './port.ts';
import { guarded } from './sqlite/trouble.ts';

export interface Restored extends ShopCheck {
  /** Where the database went that was there before; null where there was none. */
  readonly before: string | null;
}
/** What is refused unless it is asked for. */
export interface Allowed {
  /** A backup without a job takes the place of a shop that has some. */
  readonly empty?: boolean;
  /** What is damaged in the backup is listed, and all else is taken. */
  readonly damaged?: boolean;
}

/**
 * @param from the backup, which is only read
 * @param where the database in use: a file that nobody may have open, or the address of a PostgreSQL database that
 *   nobody has open either and that holds no job, or those that a restore of this backup left there when it was broken off
 * @param now for the name under which the database that was there is kept
 */
export async function restore(from: string, where: string, now: Date, allowed: Allowed = {}): Promise<Restored> {
  if (!existsSync(from)) throw new NotKept(`There is no file ${from}.`);
  if (existsSync(where) && realpathSync(from) === realpathSync(where))
    throw new NotKept('This is the database in use, not a backup of it.');
  // Beside its later place, so that it gets there by its name alone; the backup may lie where nothing can be written.
  return withDraft(isPostgres(where) ? join(tmpdir(), 'nocool-restore') : where, async (draft) => {
    await take(from, draft);
    await isOlder(draft, from);
    const file = await lookOver(draft);
    if (!allowed.damaged) refuse(file);
    const check = await withStore(draft, checkShop);
    const trouble = [...file, ...check.trouble];
    if (!allowed.damaged) refuse(trouble);
    const before = isPostgres(where)
      ? await intoPostgres(draft, where, allowed)
      : await guarded(() => replace(draft, where, now, check.jobs === 0 && allowed.empty !== true));
    return { ...check, trouble, before };
  });
}

function refuse(trouble: readonly string[]): void {
  if (trouble.length > 0) throw new Damaged(trouble.join('\n'));
}

async function intoPostgres(draft: string, where: string, allowed: Allowed): Promise<null> {
  const { refuseInUse } = await import('./postgres/alone.ts');
  await refuseInUse(where);
  const to = await openStore(where);
  try {
    // Begun and broken off, it goes on; a database that holds anything else is refused there.
    await withStore(draft, (from) => copyShop(from, to, allowed));
    return null;
  } finally {
    await to.close();
  }
}

/** @param some whether a shop that has jobs is left as it is */
function replace(draft: string, file: string, now: Date, some: boolean): string | null {
  if (!existsSync(file)) {
    intoPlace(draft, file);
    return null;
  }
  const before = `${file}.before-${now.toISOString().replace(/\..*$/, '').replaceAll(':', '')}`;
  if (existsSync(before)) throw new NotKept(`There is a file ${before} already.`);
  const held = holdOrDamaged(file);
  try {
    const jobs = some && held ? jobsIn(held) : 0;
    if (jobs > 0)
      throw new NotKept(
        `The backup holds no job, and the shop holds ${jobs}. Say --empty where that is what you want.`,
      );
    // A second name first, so that whatever breaks off here leaves a database under the one that is looked for.
    const ends = ['-wal', '-shm', ''].filter((end) => existsSync(file + end));
    for (const end of ends) alsoAs(file + end, before + end);
    // The old log would be taken for the new file's.
    for (const end of ends) if (end !== '') rmSync(file + end);
    intoPlace(draft, file);
    return before;
  } finally {
    held?.close();
  }
}

function jobsIn(db: Database.Database): number {
  try {
    return Number(db.prepare('select count(*) from job').pluck().get());
  } catch {
    // None of ours, or damaged: that is why one restores.
    return 0;
  }
}

function alsoAs(file: string, name: string): void {
  try {
    linkSync(file, name);
  } catch {
    // Not every file system has two names for one file.
    copyFileSync(file, name);
  }
}

/** A damaged file is why one restores: it is put aside as it is. */
function holdOrDamaged(file: string): Database.Database | null {
  try {
    return hold(file);
  } catch (error) {
    if (error instanceof Damaged) return null;
    throw error;
  }
}
