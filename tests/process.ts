/** Processes of our own in tests: what has to be killed, or to run twice, can't run inside the test. */
import { createHash, randomUUID } from 'node:crypto';
import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Rolldown } from 'vite';

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
    build: { ssr: path, write: false, target: 'node20', rolldownOptions: { output: { codeSplitting: false } } },
  })) as Rolldown.RolldownOutput;
  const { code } = built.output[0];
  const folder = `${ROOT}node_modules/.cache/nocool/`;
  const name = `${basename(path, '.ts')}-${createHash('sha256').update(code).digest('hex').slice(0, 16)}.mjs`;
  mkdirSync(folder, { recursive: true });
  // Renamed into place, so that nobody runs half a file.
  const draft = `${folder}${randomUUID()}.tmp`;
  writeFileSync(draft, code);
  renameSync(draft, folder + name);
  return folder + name;
}
