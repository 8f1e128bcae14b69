import { type DestinationStream, type Logger, pino } from 'pino';

/** Never in a log: what signs somebody in, and the words and places of callers. */
const HIDDEN = [
  'req.headers.cookie',
  'req.headers.referer',
  'req.headers.authorization',
  'res.headers["set-cookie"]',
  'cookie',
  'token',
  'body',
  '*.cookie',
  '*.token',
  '*.body',
];

/** One JSON object a line, on stdout where no other destination is given. */
export const createLog = (level: string, to?: DestinationStream): Logger =>
  pino({ level, base: null, redact: { paths: HIDDEN, censor: '(hidden)' } }, ...(to ? [to] : []));
