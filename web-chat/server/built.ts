/** The built page as its manifest names it: hashed file names, so that a browser may keep them for ever. */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export interface Built {
  readonly folder: string;
  readonly script: string;
  readonly styles: readonly string[];
  /** Fonts to fetch beside the style sheet, so that the text doesn't jump when they come. */
  readonly fonts: readonly string[];
  /** Which build this is: a page of another one is told to reload. */
  readonly build: string;
  /** The service worker, with the names of the files that it keeps. */
  readonly worker: string;
}
interface Chunk {
  readonly file: string;
  readonly name?: string;
  readonly isEntry?: boolean;
  readonly css?: readonly string[];
  readonly assets?: readonly string[];
}

/** Seen from the sources and from what tsc made of them. */
const FOLDERS = ['../../dist/page', '../../page'].map((each) => fileURLToPath(new URL(each, import.meta.url)));
const MANIFEST = '.vite/manifest.json';

/** Throws where the page was not built. */
export function readBuilt(given?: string): Built {
  const folder = (given === undefined ? FOLDERS : [given]).find((each) => existsSync(join(each, MANIFEST)));
  if (folder === undefined) throw new Error('The page is not built. Run `npm run build` first.');
  const manifest = JSON.parse(readFileSync(join(folder, MANIFEST), 'utf8')) as Record<string, Chunk>;
  const entry = (name: string): Chunk => {
    const found = Object.values(manifest).find((chunk) => chunk.isEntry && chunk.name === name);
    if (!found) throw new Error(`${MANIFEST} names no entry ${name}.`);
    return found;
  };
  const main = entry('main');
  const script = `/${main.file}`;
  const styles = (main.css ?? []).map((file) => `/${file}`);
  const fonts = (main.assets ?? []).filter((file) => file.endsWith('.woff2')).map((file) => `/${file}`);
  const code = readFileSync(join(folder, entry('worker').file), 'utf8');
  const build = createHash('sha256')
    .update([script, ...styles, code].join())
    .digest('hex')
    .slice(0, 12);
  // What is loaded on demand is kept as well: without contact nothing more can be loaded.
  const later = Object.values(manifest).filter((chunk) => !chunk.isEntry && chunk.file.endsWith('.js'));
  const files = [script, ...later.map(({ file }) => `/${file}`), ...styles, ...fonts, OFFLINE];
  const shell = JSON.stringify({ build, files });
  return { folder, script, styles, fonts, build, worker: `self.SHELL = ${shell};\n${code}` };
}

/** What is shown where a page was never visited and there is no contact. */
export const OFFLINE = '/offline';
