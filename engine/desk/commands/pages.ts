/**
 * npm run pages: every manual on the shelf as a reviewer reads it, page by page: what each step says and asks with its
 * derived class, where each answer leads, every limit with its unit and source, and the worked calls. One page: its id.
 * `--draw DIR` draws each page as SVG into a folder; `--count` prints per symptom how many questions a call takes.
 * Exit codes: 0 printed · 1 a manual is not sound (its faults are listed) · 2 wrong usage · 3 can't be written.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { SHELF } from '../../../flows/index.ts';
import { check } from '../../check.ts';
import { compile } from '../../compile.ts';
import { fingerprint } from '../../fingerprint.ts';
import type { Subject } from '../../prove/index.ts';
import { printCounts } from '../manual/counted.ts';
import { printCover, printPage } from '../manual/printed.ts';
import { pagesOf } from '../manual/ways.ts';
import { may } from '../rights.ts';

const say = (line = ''): void => void process.stdout.write(`${line}\n`);
const wrong = (why: string): never => {
  process.stderr.write(`${why}\nusage: npm run -s pages [-- PAGE…] [-- --draw FOLDER] [-- --count]\n`);
  process.exit(2);
};

// Whoever reads only the beginning (`| head`) has read enough.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 3));
const { draw, count, wanted } = asked();
if (count) {
  for (const manual of SHELF.filter((m) => Object.keys(m.cabinets).length > 0))
    for (const line of printCounts(compile(manual), may as Subject['may'])) say(line);
  process.exit(0);
}
const known = SHELF.flatMap(pagesOf).map(({ flow }) => flow.id);
const unknown = wanted.find((id) => !known.includes(id));
if (unknown !== undefined) wrong(`There is no page "${unknown}". Pages: ${known.join(', ')}.`);

let sound = true;
for (const manual of SHELF) {
  const pages = pagesOf(manual).filter(({ flow }) => wanted.length === 0 || wanted.includes(flow.id));
  if (draw !== undefined) await drawAll(draw, pages);
  else {
    if (wanted.length === 0) say(`${printCover(manual)}\nFingerprint ${fingerprint(manual)}\n`);
    for (const page of pages) say(printPage(page));
  }
  const faults = check(manual);
  for (const f of faults) say(`FAULT ${f.place}: ${f.what}`);
  sound &&= faults.length === 0;
}
process.exitCode = sound ? 0 : 1;

function asked(): { draw: string | undefined; count: boolean; wanted: string[] } {
  try {
    const { values, positionals } = parseArgs({
      options: { draw: { type: 'string' }, count: { type: 'boolean' } },
      allowPositionals: true,
    });
    return { draw: values.draw, count: values.count ?? false, wanted: positionals };
  } catch (error) {
    return wrong(error instanceof Error ? error.message : String(error));
  }
}

/** The layout is a tool of the author's, not installed where the product only runs: so it is loaded here. */
async function drawAll(folder: string, pages: ReturnType<typeof pagesOf>): Promise<void> {
  const { drawPage } = await import('../manual/drawn.ts');
  try {
    await mkdir(folder, { recursive: true });
    for (const page of pages) await writeFile(join(folder, `${page.flow.id}.svg`), `${drawPage(page).svg}\n`);
  } catch (error) {
    process.stderr.write(`Can’t write to ${folder}: ${error instanceof Error ? error.message : String(error)}\n`);
    process.exit(3);
  }
  say(`${pages.length} pages drawn in ${folder}`);
}
