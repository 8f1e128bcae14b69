/** A real Chromium, and the page built for the test file that opens it. */
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { build } from 'vite';

const CONFIG = fileURLToPath(new URL('../../.config/vite.config.ts', import.meta.url));
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'];
ARGS.push('--disable-background-networking', '--disable-component-update', '--disable-sync');

export const launch = (): Promise<Browser> =>
  chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ARGS });

/** Builds the page into a folder of its own: test files run side by side. */
export async function buildPage(): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), 'nocool-page-'));
  await build({ configFile: CONFIG, logLevel: 'error', build: { outDir } });
  return outDir;
}

/** A phone held in one hand: 360 × 640. */
export const phone = (browser: Browser, colorScheme: 'light' | 'dark' = 'light'): Promise<BrowserContext> =>
  browser.newContext({ viewport: { width: 360, height: 640 }, hasTouch: true, colorScheme, timezoneId: 'UTC' });
