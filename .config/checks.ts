import type { Reporter } from 'vitest/node';
import type { CheckRow, Status } from '../tests/published/check.ts';

const COLUMNS = [
  'subject',
  'what',
  'input',
  'published',
  'ours',
  'difference',
  'unit',
  'status',
  'oracle',
  'source',
] as const;
const NAMES: Readonly<Record<Status, string>> = {
  V: 'read in the source itself',
  V2: 'read in a secondary source',
  PHYS: 'physics or arithmetic',
  CP: 'common practice, no single source',
  CHOICE: 'our setting',
  M: 'from memory, counts for nothing',
};

/** What is promised: so many checks, so many of them published or against an independent program. */
const LEAST = { checks: 200, outside: 100 };

/**
 * Prints every check against published figures as one table, then counts. A check that rests on memory alone is
 * listed apart and isn't counted. Exits 1 on a miss, on any other failure, and on fewer checks than are promised.
 * `npm run checks` uses it.
 */
export default class Checks implements Reporter {
  onTestRunEnd(...[modules, unhandled]: Parameters<NonNullable<Reporter['onTestRunEnd']>>): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const rows = tests.flatMap((test) => {
      const row = test.meta().check;
      return row ? [{ ...row, missed: test.result().state !== 'passed' }] : [];
    });
    const [counted, memory] = [rows.filter((r) => r.status !== 'M'), rows.filter((r) => r.status === 'M')];
    print(table(counted));
    if (memory.length > 0) print(`\nFrom memory alone, for information:\n${table(memory)}`);
    print('');
    for (const status of Object.keys(NAMES) as Status[]) {
      const of = rows.filter((r) => r.status === status);
      if (of.length > 0) print(`${String(of.length).padStart(5)}  ${status.padEnd(6)} ${NAMES[status]}`);
    }
    const outside = counted.filter((r) => r.status === 'V' || r.status === 'V2' || (r.status === 'PHYS' && r.oracle));
    const missed = rows.filter((r) => r.missed);
    const broken =
      tests.filter((test) => !test.meta().check && test.result().state === 'failed').length + unhandled.length;
    print(`${counted.length} checks, ${outside.length} of them published or against an independent program`);
    for (const row of missed)
      print(`MISSED ${row.subject}: ${row.what}, ${row.input}: ${row.ours}, published ${row.published}`);
    print(`${missed.length} missed${broken > 0 ? `, ${broken} tests beside the table failed` : ''}`);
    const few = counted.length < LEAST.checks || outside.length < LEAST.outside;
    if (few) print(`TOO FEW: at least ${LEAST.checks} checks are promised, ${LEAST.outside} of them so`);
    if (few || missed.length > 0 || broken > 0) process.exitCode = 1;
  }
}

const print = (text: string): void => void process.stdout.write(`${text}\n`);

function table(rows: readonly CheckRow[]): string {
  const cells = rows.map((row) =>
    COLUMNS.map((c) => (c === 'published' && row.wrong ? `not ${row[c]}` : (row[c] ?? ''))),
  );
  const all = [[...COLUMNS], ...cells];
  const widths = COLUMNS.map((_, i) => Math.max(...all.map((line) => line[i]?.length ?? 0)));
  const last = COLUMNS.length - 1;
  return all
    .map((line) => line.map((cell, i) => (i === last ? cell : cell.padEnd(widths[i] ?? 0))).join('  '))
    .join('\n');
}
