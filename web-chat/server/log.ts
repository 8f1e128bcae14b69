import { type DestinationStream, type Logger, type LoggerOptions, pino } from 'pino';

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

/** Of an error what says where it is, and nothing that it carries: a database puts values beside its errors. */
const plainError = (error: unknown): object => {
  if (!(error instanceof Error)) return { type: typeof error };
  const { name, message, stack } = error;
  const code = 'code' in error ? String(error.code) : undefined;
  // A parser repeats a piece of what it could not read.
  const said = name === 'SyntaxError' ? '(hidden)' : message;
  return { type: name, message: said, code, stack: stack?.replace(message, said) };
};

/** An error that is logged without words would be given its own message for them. */
const logMethod: NonNullable<LoggerOptions['hooks']>['logMethod'] = function logMethod(given, method) {
  const [first, ...words] = given as unknown[];
  const bare = words.length === 0 && typeof first === 'object' && first !== null && 'err' in first;
  method.apply(this, (bare ? [first, 'error'] : given) as Parameters<typeof method>);
};

/** One JSON object a line, on stdout where no other destination is given. */
export const createLog = (level: string, to?: DestinationStream): Logger =>
  pino(
    {
      level,
      base: null,
      serializers: { err: plainError },
      hooks: { logMethod },
      redact: { paths: HIDDEN, censor: '(hidden)' },
    },
    ...(to ? [to] : []),
  );
