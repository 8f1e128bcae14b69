import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROOT, read } from './source.ts';

const script: string = JSON.parse(read('package.json').text).scripts.checks;

let home = '';
beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'checks-'));
  symlinkSync(join(ROOT, 'node_modules'), join(home, 'node_modules'));
});
afterAll(() => rmSync(home, { recursive: true }));

const good = (n: number) => `{ what: 'good ${n}', input: 'x', published: '1.0', ours: () => 1.04, unit: 'V',
  source: 'made up', status: 'PHYS', oracle: { name: 'another', says: () => 1.04, within: 0 } }`;
const many = (n: number): string[] => Array.from({ length: n }, (_, i) => good(i));
const missing = good(0).replace('good 0', 'pressure').replace("'1.0'", "'1.2'");
const wrongMet = `{ what: 'wrong one', input: 'x', published: '1.0', ours: () => 1.01, unit: 'V', source: 'made up', status: 'V', wrong: true }`;
const disputed = good(0).replace('good 0', 'disputed').replace('says: () => 1.04', 'says: () => 1.05');
const published = (n: number): string[] => many(n).map((check) => check.replace(/, oracle: \{.*\} \}/s, ' }'));
const memory = many(200).map((check) => check.replace("status: 'PHYS'", "status: 'M'"));

/** Runs the command's own reporter over made-up checks, as the script does over ours. */
function run(name: string, checks: readonly string[], beside = ''): { out: string; code: number | null } {
  const at = join(home, name);
  mkdirSync(at);
  writeFileSync(join(at, 'vitest.config.ts'), `export default { test: { include: ['*.test.ts'] } };`);
  writeFileSync(
    join(at, 'a.test.ts'),
    `import { expect, test } from 'vitest';
     import { checks } from ${JSON.stringify(join(ROOT, 'tests/published/check.ts'))};
     checks('made up', [${checks.join(',\n')}]); ${beside} void expect; void test;`,
  );
  const reporter = `--reporter=${join(ROOT, '.config/checks.ts')}`;
  const env = { ...process.env };
  for (const key of Object.keys(env)) if (key.startsWith('VITEST')) delete env[key];
  const vitest = join(ROOT, 'node_modules/vitest/vitest.mjs');
  const done = spawnSync(process.execPath, [vitest, 'run', '--pool=threads', reporter], {
    cwd: at,
    env,
    encoding: 'utf8',
  });
  return { out: done.stdout, code: done.status };
}

describe('npm run checks', () => {
  test('is the reporter that is tried here, over all published checks', () => {
    expect(script).toContain('tests/published');
    expect(script).toContain('--reporter=./.config/checks.ts');
  });

  test('200 good ones, each in the table, exit 0', () => {
    const { out, code } = run('good', many(200));
    expect(out).toContain('200 checks, 200 of them published or against an independent program');
    expect(out).toContain('good 199');
    expect(out).toMatch(/\b0 missed\n/);
    expect(out).not.toContain('TOO FEW');
    expect(code).toBe(0);
  });

  test('each miss is named and exits 1: a figure off, a wrong figure met, another program that disagrees, a test beside', () => {
    const { out, code } = run(
      'missed',
      [...many(200), missing, wrongMet, disputed],
      `test('beside', () => expect(1).toBe(2));`,
    );
    expect(out).toContain('MISSED made up: pressure, x: 1.04, published 1.2');
    expect(out).toContain('MISSED made up: wrong one, x: 1.01, published 1.0');
    expect(out).toContain('MISSED made up: disputed, x: 1.04, published 1.0');
    expect(out).toMatch(/\b3 missed, 1 tests beside the table failed\n/);
    expect(code).toBe(1);
  });

  test.each([
    ['199 checks, and more from memory, which count for nothing', [...many(199), ...memory], '199 checks, 199 of them'],
    ['200 of which 99 have an independent program', [...many(99), ...published(101)], '200 checks, 99 of them'],
  ])('%s are too few and exit 1', (_, all, counted) => {
    const { out, code } = run(counted.replaceAll(/[ ,]/g, '-'), all);
    expect(out).toContain(counted);
    expect(out).toContain('TOO FEW');
    expect(out).toMatch(/\b0 missed\n/);
    expect(code).toBe(1);
  });
});
