import { describe, expect, test } from 'vitest';
import { present, read } from './source.ts';

const scripts: Record<string, string> = JSON.parse(read('package.json').text).scripts;
const readme = read('README.md').text;
const developers = read('DEVELOPERS.md').text;

/** Scripts that a page tells its reader to run. */
function scriptsNamed(page: string): string[] {
  const named = [...page.matchAll(/\bnpm (?:run (?:-s )?([a-z][\w:-]*)|(start|test)\b)/g)];
  return [...new Set(named.map(([, run, short]) => run ?? short ?? ''))];
}

/** Files and folders that a page names as code: `engine/decide.ts`, `flows/`. */
const pathsNamed = (page: string): string[] =>
  [...page.matchAll(/`((?:engine|flows|bot|web-chat|tests|seeds|\.config|\.ci)\/[\w./-]*)`/g)].map(
    ([, path]) => path ?? '',
  );

/** What a README may call by its name: the trade's terms, open standards, and the tools it runs on. */
const NAMES = new Set([
  ...['Node', 'Chromium', 'Debian', 'Linux', 'Slack', 'Biome', 'Vite', 'Vitest', 'TypeScript', 'Fastify', 'Preact'],
  ...[
    'PostgreSQL',
    'SQLite',
    'English',
    'Ed25519',
    'Hyperlegible',
    'Atkinson',
    'Ohm',
    'Code',
    'Food',
    'Bolt',
    'Python',
    'Kysely',
  ],
  // Keys of a keyboard, and the demo's own invented people.
  ...['Tab', 'Space', 'Enter', 'Dana', 'Ines', 'Ruth'],
]);
/** Capitalised words inside a sentence are names; headings, tables and code are left out. */
function namesIn(page: string): string[] {
  const prose = page
    .replace(/```[\s\S]*?```/g, '\n')
    .replace(/<!--[\s\S]*?-->/g, '')
    .replace(/^(#|\|).*$/gm, '')
    .replace(/`[^`]*`/g, 'x');
  return [...prose.matchAll(/(?<=[\p{Ll}\d,;)] )\p{Lu}\p{Ll}[\p{L}\d]+/gu)]
    .map(([name]) => name)
    .filter((n) => !NAMES.has(n));
}

describe.each([
  ['README.md', readme],
  ['DEVELOPERS.md', developers],
])('%s', (_, page) => {
  test('names commands that exist', () => {
    expect(scriptsNamed(page).length).toBeGreaterThan(1);
    expect(scriptsNamed(page).filter((name) => scripts[name] === undefined)).toEqual([]);
  });

  test('names files that exist', () => {
    const here = present();
    expect(pathsNamed(page).filter((path) => !here.some((file) => file === path || file.startsWith(path)))).toEqual([]);
  });

  test('has no place left to complete', () => {
    expect(page.match(/TO COMPLETE.*/g) ?? []).toEqual([]);
  });
});

describe('README.md', () => {
  test('names nothing but the trade, open standards and what it runs on', () => {
    expect(namesIn(readme)).toEqual([]);
  });

  test('says at the start how it is started and how it is tested', () => {
    const start = readme.split('\n').slice(0, 30).join('\n');
    expect(start).toContain('npm ci && npm start');
    expect(start).toContain('npm ci && npm test');
  });
});

describe('the checks on the pages can fail', () => {
  test('a command, a file or a name that is not there shows', () => {
    expect(scriptsNamed('run `npm run fly -- now` or `npm test`')).toEqual(['fly', 'test']);
    expect(scripts.fly).toBeUndefined();
    expect(pathsNamed('see `engine/nowhere.ts`')).toEqual(['engine/nowhere.ts']);
    expect(namesIn('It works like Acmecool, but better. The next sentence runs on Node.')).toEqual(['Acmecool']);
  });
});
