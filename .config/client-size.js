// What a browser loads before a page can be used, gzipped: its script per entry, and with style sheet and fonts. Exits 1
// over budget. The page itself comes to some 10 kB more; tests/web-chat/weight.test.ts counts all bytes over the wire.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

/** kB (1000 bytes) of gzipped script for the chat with the engine on the server, and of all files that its page names. */
const BUDGET = 30;
const WHOLE = 80;
const page = fileURLToPath(new URL('../dist/page', import.meta.url));

if (!existsSync(page)) {
  console.error('size: dist/page is not there. Run `npm run build` first.');
  process.exit(1);
}

/** Entry → the scripts it loads at once; what it loads later on demand isn't counted. */
function entries() {
  const manifestFile = join(page, '.vite/manifest.json');
  if (!existsSync(manifestFile)) {
    const files = readdirSync(page, { recursive: true, encoding: 'utf8' });
    return [['all scripts', files.filter((file) => file.endsWith('.js'))]];
  }
  const manifest = JSON.parse(readFileSync(manifestFile, 'utf8'));
  const needs = (key, seen = new Set()) => {
    if (seen.has(key)) return seen;
    seen.add(key);
    for (const next of manifest[key].imports ?? []) needs(next, seen);
    return seen;
  };
  return Object.keys(manifest)
    .filter((key) => manifest[key].isEntry)
    .map((key) => [key, [...needs(key)].map((each) => manifest[each].file).filter((file) => file.endsWith('.js'))]);
}

for (const [name, files] of entries()) {
  const size =
    files.reduce((sum, file) => sum + gzipSync(readFileSync(join(page, file)), { level: 9 }).length, 0) / 1000;
  const over = files.length === 0 || size > BUDGET;
  console.log(
    `size: ${name} ${size.toFixed(1)} kB gzipped of ${BUDGET} kB${over ? ', too much or nothing at all' : ''}`,
  );
  if (over) process.exitCode = 1;
}

// What is loaded on demand isn't counted here either.
const atOnce = new Set(entries().flatMap(([, files]) => files));
const assets = readdirSync(join(page, 'assets')).map((file) => `assets/${file}`);
const all = assets
  .filter((file) => atOnce.has(file) || !file.endsWith('.js'))
  .reduce((sum, file) => sum + gzipSync(readFileSync(join(page, file)), { level: 9 }).length / 1000, 0);
console.log(`size: script, style sheet and fonts ${all.toFixed(1)} kB gzipped of ${WHOLE} kB`);
if (all > WHOLE) process.exitCode = 1;
