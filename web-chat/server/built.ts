/** The built page as its manifest names it: hashed file names, so that a browser may keep them for ever. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export interface Built {
  readonly folder: string;
  readonly script: string;
  readonly styles: readonly string[];
  /** Fonts to fetch beside the style sheet, so that the text doesn't jump when they come. */
  readonly fonts: readonly string[];
}
interface Chunk {
  readonly file: string;
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
  const entry = Object.values(manifest).find((chunk) => chunk.isEntry);
  if (!entry) throw new Error(`${MANIFEST} names no entry.`);
  return {
    folder,
    script: `/${entry.file}`,
    styles: (entry.css ?? []).map((file) => `/${file}`),
    fonts: (entry.assets ?? []).filter((file) => file.endsWith('.woff2')).map((file) => `/${file}`),
  };
}
