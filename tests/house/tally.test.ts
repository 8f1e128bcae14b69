import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROOT } from './source.ts';

const passing = `import { expect, test } from 'vitest'; test('a', () => expect(1).toBe(1));`;
const failing = `import { expect, test } from 'vitest'; test('b', () => expect(1).toBe(2));`;
const skipped = `import { test } from 'vitest'; test.skip('c', () => {});`;
const lateError = `import { test } from 'vitest'; test('d', async () => { Promise.reject(new Error('late')); await new Promise((r) => setTimeout(r, 20)); });`;
const unloadable = `import './nowhere.ts';`;
const typesHold = `import { test } from 'vitest'; test('e', () => {\n// @ts-expect-error a figure is no text\nconst x: string = 1; void x; });`;
const typesDont = typesHold.replace('string = 1', 'number = 1');

let home = '';
beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'tally-'));
  symlinkSync(join(ROOT, 'node_modules'), join(home, 'node_modules'));
});
afterAll(() => rmSync(home, { recursive: true }));

/** Runs vitest for real over made-up tests, with the product's own reporter and type tests. */
function run(name: string, files: Record<string, string>): { last: string | undefined; code: number | null } {
  const at = join(home, name);
  mkdirSync(at);
  writeFileSync(
    join(at, 'vitest.config.ts'),
    `import { Tally } from ${JSON.stringify(join(ROOT, '.config/tally.ts'))};
     export default { test: { include: ['*.test.ts'], reporters: ['default', new Tally()],
       typecheck: { enabled: true, tsconfig: './tsconfig.json', include: ['*.test-d.ts'] } } };`,
  );
  writeFileSync(
    join(at, 'tsconfig.json'),
    `{ "compilerOptions": { "strict": true, "noEmit": true, "skipLibCheck": true, "module": "NodeNext" }, "include": ["*.test-d.ts"] }`,
  );
  for (const [file, text] of Object.entries(files)) writeFileSync(join(at, file), text);
  const vitest = join(ROOT, 'node_modules/vitest/vitest.mjs');
  const env = { ...process.env };
  for (const name of Object.keys(env)) if (name.startsWith('VITEST')) delete env[name];
  const done = spawnSync(process.execPath, [vitest, 'run'], { cwd: at, env, encoding: 'utf8' });
  return { last: done.stdout.trimEnd().split('\n').at(-1), code: done.status };
}

describe('the last line of a test run and its exit code', () => {
  test.each([
    ['passes', { 'a.test.ts': passing }, '1 passed, 0 failed', 0],
    ['fails', { 'a.test.ts': passing, 'b.test.ts': failing }, '1 passed, 1 failed', 1],
    ['skips', { 'a.test.ts': passing, 'c.test.ts': skipped }, '1 passed, 0 failed, 1 skipped', 0],
    ['late', { 'd.test.ts': lateError }, '1 passed, 1 failed', 1],
    ['unloadable', { 'a.test.ts': passing, 'e.test.ts': unloadable }, '1 passed, 1 failed', 1],
    ['nothing', {}, '0 passed, 1 failed', 1],
    ['types-hold', { 'a.test-d.ts': typesHold }, '1 passed, 0 failed', 0],
    ['types-dont', { 'a.test-d.ts': typesDont }, '0 passed, 1 failed', 1],
  ])('%s', (name, files, last, code) => {
    expect(run(name, files)).toEqual({ last, code });
  });
});
