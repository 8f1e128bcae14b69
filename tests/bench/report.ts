/** The table of one bench, and its figures as JSON in `data/`. */
import { mkdir, writeFile } from 'node:fs/promises';
import { expect } from 'vitest';
import { type Ratio, row } from './ratio.ts';

export async function report(name: string, done: readonly Ratio[]): Promise<void> {
  await mkdir('data', { recursive: true });
  await writeFile(`data/bench-${name}.json`, `${JSON.stringify(done, null, 2)}\n`);
  const head = '| ratio | median (quartiles) | gate | subject / base |\n|---|---|---|---|';
  process.stdout.write(`\n${head}\n${done.map(row).join('\n')}\n\n`);
}

/** Keeps all of them before any may fail. */
export function judge(done: Ratio[], ...results: readonly Ratio[]): void {
  done.push(...results);
  for (const result of results) expect(result.passed, row(result)).toBe(true);
}
