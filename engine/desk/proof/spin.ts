/** Lets SPIN go over a model, claim by claim, where it is installed. It makes a C program of the model, so it needs a compiler. */
import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { type Claim, SAYS } from '../../prove/spin/index.ts';

const run = promisify(execFile);
export interface Checked {
  readonly claim: Claim;
  /** No error was found in any state. */
  readonly holds: boolean;
  readonly states: number;
  /** What leads to the error, step by step; empty where there is none. */
  readonly trail: readonly string[];
}
/** Deep enough for any model of ours; in steps. */
const DEPTH = 200_000;
/** Most that one of its programs says, in bytes. */
const MOST = 64 * 2 ** 20;

/** Null where `spin` or a C compiler is not installed. */
export async function spinVersion(): Promise<string | null> {
  const said = await Promise.all([run('spin', ['-V']), run('cc', ['--version'])]).catch(() => null);
  return said === null ? null : (said[0].stdout.trim().split('\n')[0] ?? '');
}

export async function check(model: string, claims: readonly Claim[]): Promise<Checked[]> {
  const cwd = await mkdtemp(join(tmpdir(), 'nocool-spin-'));
  try {
    await writeFile(join(cwd, 'model.pml'), model);
    await run('spin', ['-a', 'model.pml'], { cwd });
    await run('cc', ['-O0', '-DNOFAIR', '-o', 'pan', 'pan.c'], { cwd });
    const checked: Checked[] = [];
    for (const claim of claims) checked.push(await one(cwd, claim));
    return checked;
  } finally {
    await rm(cwd, { recursive: true });
  }
}

async function one(cwd: string, claim: Claim): Promise<Checked> {
  const { stdout } = await run('./pan', ['-a', '-w18', `-m${DEPTH}`, '-N', claim.name], { cwd, maxBuffer: MOST });
  const number = (pattern: RegExp): number => {
    const found = pattern.exec(stdout)?.[1];
    if (found === undefined) throw new Error(`SPIN said something that we don't understand:\n${stdout}`);
    return Number(found);
  };
  if (/max search depth too small|Search not completed/.test(stdout) && !/errors: [1-9]/.test(stdout))
    throw new Error(`SPIN did not go over every state:\n${stdout}`);
  const holds = number(/errors: (\d+)/) === 0;
  const states = number(/(\d+) states, stored/);
  if (holds) return { claim, holds, states, trail: [] };
  const trailOf = async (depth: number): Promise<boolean> =>
    /errors: [1-9]/.test(
      (await run('./pan', ['-a', '-w18', `-m${depth}`, '-N', claim.name], { cwd, maxBuffer: MOST })).stdout,
    );
  // A short way there, as far as one is found so.
  let depth = DEPTH;
  for (const less of [400, 200, 100, 60, 40]) {
    if (!(await trailOf(less))) break;
    depth = less;
  }
  await trailOf(depth);
  const told = await run('./pan', ['-r', '-n', '-N', claim.name], { cwd, maxBuffer: MOST });
  const lines = told.stdout.split('\n').map((line) => line.trim());
  const trail = lines.flatMap((line) => (line.startsWith(SAYS) ? line.slice(SAYS.length) : []));
  return { claim, holds, states, trail };
}
