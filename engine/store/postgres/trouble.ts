/** What PostgreSQL and the way to it complain about, told apart: trouble, damage, a race that was lost, a bug. */
import { Damaged, NotKept } from '../port.ts';

/** By SQLSTATE, its first five, three or two characters: https://www.postgresql.org/docs/current/errcodes-appendix.html */
const NOT_KEPT: Readonly<Record<string, string>> = {
  '08': 'The database can’t be reached.',
  '25006': 'The record is read-only.',
  '28': 'The database lets nobody in under this name and password.',
  '3D000': 'There is no such database.',
  '40001': 'Others are writing at this moment.',
  '40P01': 'Others are writing at this moment.',
  '53100': 'The disk is full.',
  '53200': 'The server is out of memory.',
  '53300': 'The database takes no more connections.',
  '55000': 'The database takes no connections.',
  '55P03': 'The record is locked by another program.',
  '57014': 'The database took too long.',
  '57P': 'The database can’t be reached.',
  '58030': 'The disk reports an error.',
};
const DAMAGED = ['XX001', 'XX002'];
/** Of the way to it, not of the database. */
const UNREACHED = new Set([
  ...['ECONNREFUSED', 'ECONNRESET', 'ENOTFOUND', 'EAI_AGAIN', 'ETIMEDOUT', 'EPIPE', 'EHOSTUNREACH', 'ENETUNREACH'],
  'ENOENT',
]);
const LOST =
  /Connection terminated|Client has encountered a connection error|timeout exceeded|Query read timeout|not queryable/;

const codeOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string' ? error.code : '';
const why = (code: string): string | undefined =>
  [code, code.slice(0, 3), code.slice(0, 2)].map((c) => NOT_KEPT[c]).find((text) => text !== undefined);

/** The connection is gone, so that whether the last statement was committed can't be known from it. */
export function isLost(error: unknown): boolean {
  const code = codeOf(error);
  if (UNREACHED.has(code) || code.startsWith('08') || code.startsWith('57P')) return true;
  if (code === '53300' || code === '55000') return true;
  if (error instanceof AggregateError) return error.errors.some(isLost);
  return code === '' && error instanceof Error && LOST.test(error.message);
}
/** Somebody else was first: the entry's number, or the job's id, is taken. */
export const isRace = (error: unknown): boolean => ['23505', '40001', '40P01'].includes(codeOf(error));
/** True where the whole call failed for no fault of what it carried. */
export const isTrouble = (error: unknown): boolean =>
  isLost(error) || why(codeOf(error)) !== undefined || DAMAGED.includes(codeOf(error));

/** The error as the port names it; a bug stays what it is. */
export function asTrouble(error: unknown): unknown {
  if (error instanceof NotKept || error instanceof Damaged) return error;
  const code = codeOf(error);
  if (DAMAGED.includes(code))
    return new Damaged('The record in the database is damaged.', null, null, { cause: error });
  const text = why(code) ?? (isLost(error) ? NOT_KEPT['08'] : undefined);
  return text === undefined ? error : new NotKept(`${text} Nothing was kept. Send it again.`, { cause: error });
}

/** After a write whose answer never came. What is sent again has one effect, since it carries the same client id. */
export const unknownOutcome = (cause: unknown): NotKept =>
  new NotKept('The database can’t be reached, and whether it was kept is not known. Send it again: it counts once.', {
    cause,
    certain: false,
  });
