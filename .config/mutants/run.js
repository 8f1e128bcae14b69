// npm run mutate: Stryker, and then each mutant that no test noticed is held against `.config/mutants/living.txt`. Exits 1
// where one lives that is not explained there, where an explanation is of none that lives, and where Stryker itself does.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const REPORT = at('../../data/mutate/report.json');
const REGISTER = at('living.txt');

if (process.argv[2] !== '--look') {
  rmSync(REPORT, { force: true });
  const args = ['run', at('stryker.config.json'), ...process.argv.slice(2)];
  const { status } = spawnSync(at('../../node_modules/.bin/stryker'), args, { stdio: 'inherit' });
  if (!existsSync(REPORT)) process.exit(status || 1);
  process.exitCode = status ?? 1;
}

const squeezed = (text) => text.replace(/\s+/g, ' ').trim();

/** What stands at a mutant's place, lines and columns counted from 1. */
function original(source, { start, end }) {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.length - 1;
  lines[last] = lines[last].slice(0, end.column - 1);
  lines[0] = lines[0].slice(start.column - 1);
  return lines.join('\n');
}

/** Each mutant as one line: two of a file that read alike are one. */
const tried = new Map();
for (const [file, { source, mutants }] of Object.entries(JSON.parse(readFileSync(REPORT, 'utf8')).files))
  for (const { location, replacement, status } of mutants) {
    if (status === 'Ignored') continue;
    const line = `${file}: ${squeezed(original(source, location))} → ${squeezed(replacement)}`;
    const lives = status === 'Survived' || status === 'NoCoverage';
    tried.set(line, (tried.get(line) ?? false) || lives);
  }

/** Lines under a reason, which stands behind `#`. */
const explained = new Set(
  readFileSync(REGISTER, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#')),
);
const living = [...tried].filter(([, lives]) => lives).map(([line]) => line);
const unexplained = living.filter((line) => !explained.has(line));
const killed = [...explained].filter((line) => tried.get(line) === false);
for (const line of unexplained) console.log(`lives, not explained: ${line}`);
for (const line of killed) console.log(`explained, but doesn't live: ${line}`);
console.log(
  `${tried.size} kinds of mutants tried, ${living.length} live; ${unexplained.length} of these are not explained in .config/mutants/living.txt, and ${killed.length} are there that don't live.`,
);
if (unexplained.length + killed.length > 0) process.exitCode = 1;
