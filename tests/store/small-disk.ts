/** A disk that is really full: a small one in memory where the machine lets us make one, else a limit on the file. */
import { execFileSync } from 'node:child_process';
import { appendFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';

export interface SmallDisk {
  readonly db: Database.Database;
  /** Until nothing goes on it any more. */
  fill(): void;
  free(): void;
  remove(): void;
}

export function smallDisk(kilobytes: number): SmallDisk {
  const folder = mkdtempSync(join(tmpdir(), 'nocool-disk-'));
  const mounted = mount(folder, kilobytes);
  const db = new Database(join(folder, 'shop.db'));
  const other = join(folder, 'somebody-elses');
  return {
    db,
    fill() {
      if (!mounted) return void db.pragma(`max_page_count = ${db.pragma('page_count', { simple: true })}`);
      for (const size of [65_536, 4_096, 1])
        try {
          for (;;) appendFileSync(other, Buffer.alloc(size));
        } catch (error) {
          if ((error as NodeJS.ErrnoException).code !== 'ENOSPC') throw error;
        }
    },
    free: () => (mounted ? rmSync(other) : void db.pragma('max_page_count = 1000000')),
    remove() {
      db.close();
      if (mounted) execFileSync('umount', [folder]);
      rmSync(folder, { recursive: true });
    },
  };
}

function mount(folder: string, kilobytes: number): boolean {
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'nocool', folder], { stdio: 'pipe' });
    return true;
  } catch {
    return false;
  }
}
