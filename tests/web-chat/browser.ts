/** A real Chromium, and the page built for the test file that opens it. */
import { cp, mkdtemp, readdir, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { build } from 'vite';

const CONFIG = fileURLToPath(new URL('../../.config/vite.config.ts', import.meta.url));
const TOP = fileURLToPath(new URL('../..', import.meta.url));
const BUILT = join(TOP, 'dist/page');
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'];
ARGS.push('--disable-background-networking', '--disable-component-update', '--disable-sync');

export const launch = (): Promise<Browser> =>
  chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ARGS });

/** The page in a folder of its own, built or, where `npm test` has just built it, copied: test files run side by side. */
export async function buildPage(): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), 'nocool-page-'));
  if (await isFresh()) await cp(BUILT, outDir, { recursive: true });
  else await build({ configFile: CONFIG, logLevel: 'error', build: { outDir } });
  return outDir;
}

/** Whether what is built is newer than all that it is built of. */
async function isFresh(): Promise<boolean> {
  const built = await stat(join(BUILT, '.vite/manifest.json')).catch(() => null);
  if (!built) return false;
  for (const folder of ['web-chat/page', 'engine', '.config', '.']) {
    for (const name of await readdir(join(TOP, folder), { recursive: folder !== '.' })) {
      if (folder === '.' && name !== 'package-lock.json') continue;
      if ((await stat(join(TOP, folder, name))).mtimeMs > built.mtimeMs) return false;
    }
  }
  return true;
}

/** A phone held in one hand: 360 × 640. */
export const phone = (browser: Browser, colorScheme: 'light' | 'dark' = 'light'): Promise<BrowserContext> =>
  browser.newContext({ viewport: { width: 360, height: 640 }, hasTouch: true, colorScheme, timezoneId: 'UTC' });
