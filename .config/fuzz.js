/** npm run fuzz -- --requests N --seed S: the fuzzers of the tests with any number of requests. Exit code 0: none broke it. */
import { spawnSync } from 'node:child_process';
import { parseArgs } from 'node:util';

const whole = /^\d{1,9}$/;
let given;
try {
  given = parseArgs({ options: { requests: { type: 'string', default: '200000' }, seed: { type: 'string' } } }).values;
} catch {
  given = { requests: '' };
}
if (!whole.test(given.requests) || (given.seed !== undefined && !whole.test(given.seed))) {
  process.stderr.write('usage: npm run fuzz -- [--requests N] [--seed S]\n');
  process.exit(2);
}
const env = { ...process.env, FUZZ_REQUESTS: given.requests, ...(given.seed ? { FUZZ_SEED: given.seed } : {}) };
const args = [
  'vitest',
  'run',
  '--config',
  '.config/vitest.config.ts',
  'tests/fuzz/fuzz.test.ts',
  '--typecheck.enabled=false',
];
process.exitCode = spawnSync('npx', args, { env, stdio: 'inherit' }).status ?? 1;
