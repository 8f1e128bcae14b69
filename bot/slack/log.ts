/** The SDK's lines in our log: without tokens, without what anybody typed. */
import type { Logger, LogLevel } from '@slack/bolt';
import { type Logger as Pino, pino } from 'pino';

const SECRETS = /xox[a-z]-[\w-]+|xapp-[\w-]+|https:\/\/hooks\.[^\s"']+|wss?:\/\/[^\s"']+/g;
export const withoutSecrets = (text: string): string => text.replace(SECRETS, '(hidden)');
/** Only the first line: the rest may be a stack or a payload. */
const line = (messages: readonly unknown[]): string =>
  withoutSecrets(
    messages.map((each) => (each instanceof Error ? `${each.name}: ${each.message}` : String(each))).join(' '),
  )
    .split('\n', 1)
    .join('')
    .slice(0, 300);

export function createLogger(log: Pino): Logger {
  return {
    // Payloads stand in these.
    debug: () => undefined,
    info: (...messages) => log.debug({ chat: 'slack' }, line(messages)),
    warn: (...messages) => log.warn({ chat: 'slack' }, line(messages)),
    error: (...messages) => log.warn({ chat: 'slack' }, line(messages)),
    setLevel: () => undefined,
    getLevel: () => 'info' as LogLevel,
    setName: () => undefined,
  };
}

/** One JSON object a line on stdout, as the web chat writes them. */
export const createPino = (level: string): Pino => pino({ level, base: null });
