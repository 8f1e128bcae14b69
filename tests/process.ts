/** Processes of our own in tests: what has to be killed, or to run twice, can't run inside the test. */
import { createHash, randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Rolldown } from 'vite';

const NAMES = { entryFileNames: '[name].mjs', chunkFileNames: '[name].mjs' };
const ROOT = fileURLToPath(new URL('..', import.meta.url));

/**
 * Makes one runnable .mjs of a TypeScript entry and returns its path:
 *
 *   const child = spawn(process.execPath, [await bundle(new URL('./appender.ts', import.meta.url)), file]);
 *
 * Ours is bundled by Vite, which is here anyway, so that no dist/ and no loader is needed; packages stay imports and
 * are found from the file's place under node_modules/.cache. Its name is the hash of what is in it: many tests may ask
 * for the same one at once. `import.meta.url` inside is that of the bundle, not of the source.
 */
export async function bundle(entry: URL): Promise<string> {
  const path = fileURLToPath(entry);
  const built = (await build({
    root: ROOT,
    configFile: false,
    logLevel: 'warn',
    build: { ssr: path, write: false, target: 'node20', rolldownOptions: { output: NAMES } },
  })) as Rolldown.RolldownOutput;
  // What is loaded on demand stays apart: a process on SQLite starts without what PostgreSQL needs.
  const chunks = built.output.filter((each) => each.type === 'chunk');
  const hash = createHash('sha256').update(chunks.map(({ code }) => code).join('\n'));
  const folder = `${ROOT}node_modules/.cache/nocool/${basename(path, '.ts')}-${hash.digest('hex').slice(0, 16)}/`;
  const file = `${folder}${basename(path, '.ts')}.mjs`;
  if (existsSync(file)) return file;
  // Renamed into place, so that nobody runs half a program.
  const draft = `${ROOT}node_modules/.cache/nocool/${randomUUID()}`;
  mkdirSync(draft, { recursive: true });
  for (const { code, fileName } of chunks) writeFileSync(join(draft, fileName), code);
  try {
    renameSync(draft, folder);
  } catch (error) {
    // Another test has just put the same one there.
    rmSync(draft, { recursive: true });
    if (!existsSync(file)) throw error;
  }
  return file;
}
