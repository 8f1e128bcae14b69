/**
 * Chats outside, each a process of its own: what happens to it happens to nobody else. It is started again where that may help,
 * and its state can be asked for.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export interface ChatHealth {
  readonly state: 'starting' | 'up' | 'down' | 'refused';
  /** When the platform last gave a sign of life; null: not yet. */
  readonly contact: string | null;
}
export interface Chat {
  health(): ChatHealth;
  send(message: object): void;
  stop(): Promise<void>;
}
export interface ChatParts {
  /** The program, seen from this file. */
  readonly program: string;
  readonly env: NodeJS.ProcessEnv;
  /** What it tells besides its state. */
  readonly onMessage: (message: unknown) => void;
  /** Milliseconds before the first new start; doubled up to a minute. */
  readonly pause?: number;
}
/** Stopped, or told that starting again does not help. */
const DONE = new Set([0, 2, 3]);
const [LONGEST_PAUSE, STEADY] = [60_000, 300_000];

export function startChat({ program, env, onMessage, pause = 1_000 }: ChatParts): Chat {
  let health: ChatHealth = { state: 'starting', contact: null };
  let child: ChildProcess | null = null;
  let [wait, begun, stopping] = [pause, 0, false];
  let timer: NodeJS.Timeout | undefined;

  function begin(): void {
    begun = Date.now();
    child = fork(fileURLToPath(new URL(program, import.meta.url)), {
      env,
      stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    });
    child.on('message', (message: { kind?: string; state?: ChatHealth['state']; contact?: string }) => {
      if (message.kind === 'state')
        health = { state: message.state ?? health.state, contact: message.contact ?? health.contact };
      else onMessage(message);
    });
    child.on('error', () => undefined);
    child.on('exit', (code) => {
      child = null;
      if (health.state === 'up' || health.state === 'starting') health = { ...health, state: 'down' };
      if (stopping || (code !== null && DONE.has(code))) return;
      if (Date.now() - begun > STEADY) wait = pause;
      timer = setTimeout(begin, wait).unref();
      wait = Math.min(LONGEST_PAUSE, wait * 2);
    });
  }
  begin();
  return {
    health: () => health,
    send(message) {
      if (child?.connected) child.send(message, undefined, undefined, () => undefined);
    },
    async stop() {
      stopping = true;
      clearTimeout(timer);
      const running = child;
      if (!running) return;
      const ended = new Promise<void>((done) => running.once('exit', () => done()));
      running.kill('SIGTERM');
      await ended;
    },
  };
}
