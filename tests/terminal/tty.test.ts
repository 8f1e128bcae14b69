/** At a tty, as a person sits there: a pseudo-terminal of `script`, and a plain pipe. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { TO_READINGS } from '../people.ts';
import { Program, program, run } from './program.ts';

vi.setConfig({ testTimeout: 120_000 });

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'nocool-tty-'));
});
afterAll(() => rm(folder, { recursive: true }));

const PTY = 'script';
/** The program behind a pseudo-terminal of util-linux. */
class Tty {
  readonly #child: ChildProcessWithoutNullStreams;
  screen = '';

  constructor(args: readonly string[], env: Record<string, string> = {}) {
    const command = [process.execPath, program, ...args].map((word) => `'${word}'`).join(' ');
    this.#child = spawn(PTY, ['-qefc', command, '/dev/null'], {
      env: { ...process.env, TERM: 'xterm', TZ: 'UTC', NO_COLOR: '', ...env },
    });
    this.#child.stdout.on('data', (data) => {
      this.screen += String(data);
    });
  }
  /** What has appeared since the last line was typed, once it holds this. */
  async sees(what: string | RegExp): Promise<string> {
    const until = Date.now() + 60_000;
    while (!(typeof what === 'string' ? this.screen.includes(what) : what.test(this.screen))) {
      if (Date.now() > until) throw new Error(`never saw ${what} in:\n${this.screen}`);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    return this.screen;
  }
  type(line: string): this {
    this.screen = '';
    this.#child.stdin.write(`${line}\r`);
    return this;
  }
  async types(...lines: string[]): Promise<string> {
    for (const line of lines) await this.type(line).sees(/\n── [\s\S]*> /);
    return this.screen;
  }
  press(key: string): this {
    this.#child.stdin.write(key);
    return this;
  }
  async ended(): Promise<number> {
    const [code] = await once(this.#child, 'close');
    return code as number;
  }
}

describe('at a tty', () => {
  test('a question, the isolation in force, a verdict; quit leaves and says how to go on', async () => {
    const tty = new Tty(['--db', join(folder, 'call.sqlite'), '--at', '2026-07-14T15:02:00Z']);
    expect(await tty.sees('What does the unit do?')).toContain('\u001b[1;30;43mWARNING:\u001b[0m Hum');
    const dead = await tty.types(...TO_READINGS);
    expect(dead).toContain('[Outdoor unit: PROVED DEAD, until 15:32; since 15:02, lock: Nell Ashgrove]');
    await tty.type('herm x').sees('NOT TAKEN: ');
    const verdict = await tty.types('herm 36.1 fan 5.02 hf 4.4 case ol');
    expect(verdict).toMatch(/VERDICT: [\s\S]*HERM: FAIL · 36\.1[\s\S]*→ Fit the same µF/);
    await tty.type('quit').sees(/The job stays[\s\S]*--job \w{8} --as nell/);
    expect(await tty.ended()).toBe(0);
  });

  test('back and Enter return to what was begun', async () => {
    const tty = new Tty(['--db', join(folder, 'back.sqlite')]);
    await tty.sees('> ');
    await tty.types('d', 'psc', 'yes');
    await tty.type('1 3').sees('Kept of what you typed: What opens it');
    await tty.type('back').sees('AN EARLIER ANSWER');
    await tty.type('').sees(/Thermostat OFF[\s\S]*Kept of what you typed: What opens it/);
    await tty.type('6 12 15').sees('Open it, lock it');
    tty.press('\u0004');
    expect(await tty.ended()).toBe(0);
  });

  test('what a person typed gives the terminal no orders', async () => {
    const tty = new Tty(['--db', join(folder, 'orders.sqlite'), '--new', 'Hot \u001b[31mred\u0007'], { NO_COLOR: '1' });
    expect(await tty.sees('What does the unit do?')).toContain('Hot ␛[31mred␇');
    expect(tty.screen.split('\u001b[31m').length + tty.screen.split('\u0007').length).toBe(2);
    expect(tty.screen).toContain('\nWARNING: Hum');
    await tty.type('quit').ended();
  });

  test('what others do appears without a key being pressed', async () => {
    const db = ['--db', join(folder, 'two.sqlite')];
    const tty = new Tty(db);
    await tty.sees('> ');
    expect(await tty.types(...TO_READINGS)).toContain('PROVED DEAD');
    tty.press('herm 4');
    const senior = new Program(...db, '--as', 'greta', '--job', await jobUnderWay(db));
    await senior.next();
    tty.screen = '';
    await senior.say('power is back');
    expect(await tty.sees(/ENERGIZED OR NOT PROVED|BEING PROVED/)).toContain('Power came back');
    // The half line is still there.
    await tty.sees(/> herm 4/);
    await senior.end();
    tty.press('\u0003');
    expect(await tty.ended()).toBe(0);
  });
});

/** The id of the technician's job under way. */
async function jobUnderWay(db: readonly string[]): Promise<string> {
  const terminal = new Program(...db);
  const { prompt } = await terminal.next();
  await terminal.end();
  return prompt.job;
}

describe('at a plain pipe', () => {
  test('reads as a transcript, without colour or cursor orders', async () => {
    const { code, stdout, stderr } = await run(
      [],
      [...TO_READINGS, 'herm 44.6 fan ,80 hf _, leads zeroed', 'back fan 5.02 hf 4.51 case ol', ''].join('\n'),
    );
    expect([code, stderr]).toEqual([0, '']);
    // How each line was read, with what was left out and what was not understood.
    const told = stdout.replace(/\s+/g, ' ').replaceAll('\u2009', ' ');
    expect(told).toContain('Taken: HERM to C: 44.6 µF · FAN to C: 0.8 µF · HERM to FAN: not taken');
    expect(told).toContain('Note: leads zeroed');
    expect(told).toContain('Changed: FAN to C: 5.02 µF · HERM to FAN: 4.51 µF');
    expect(stdout).toMatch(/> d\n[\s\S]*> psc\n[\s\S]*VERDICT: The run capacitor is good[\s\S]*The job stays/);
    expect(stdout).not.toContain('\u001b');
    const [, file, job] = /--db (\S+) --job (\w+)/.exec(stdout) ?? [];
    const again = await run(['--db', file ?? '', '--job', job ?? ''], 'where\nquit\nnever read\n');
    expect(again.stdout).toContain('Spin the fan by hand');
    expect(again.stdout).not.toContain('never read');
    await rm(join(file ?? '', '..'), { recursive: true });
  });
});
