/** Trouble as people and programs read it: a status, a short code, and what to do, in words. */
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';
import { NoRight, NotFound, NotKept, Refused } from '../../engine/desk/index.ts';

export class Problem extends Error {
  override name = 'Problem';
  readonly status: number;
  readonly code: string;
  constructor(status: number, code: string, what: string) {
    super(what);
    this.status = status;
    this.code = code;
  }
}

/** What an error means to whoever asked. An unknown one is a bug: it is logged, and nothing of it is told. */
export function problemOf(error: unknown): Problem {
  if (error instanceof Problem) return error;
  if (error instanceof NotFound) return new Problem(404, 'not-found', error.message || 'There is nothing here.');
  if (error instanceof Refused) return new Problem(409, 'refused', error.message);
  if (error instanceof NoRight) return new Problem(403, 'no-right', error.message || 'This is not yours to do.');
  if (error instanceof NotKept) {
    const what = error.certain
      ? 'Nothing was kept. Send it again.'
      : 'It may have been kept. Send it again: it counts once.';
    return new Problem(503, 'not-kept', what);
  }
  const { statusCode = 500, validation, message } = error as Partial<FastifyError>;
  if (validation) return new Problem(400, 'bad-request', message ?? 'That is not what is taken here.');
  if (statusCode === 415) return new Problem(415, 'bad-type', 'That type of content is not taken here.');
  if (statusCode === 413) return new Problem(413, 'too-large', 'That is too large. Send less at once.');
  if (statusCode >= 400 && statusCode < 500) return new Problem(400, 'bad-request', 'That is not what is taken here.');
  return new Problem(500, 'broken', 'Something is broken here. Nothing can be said about what was kept. Look again.');
}

export function answerProblem(error: unknown, request: FastifyRequest, reply: FastifyReply): Problem {
  const problem = problemOf(error);
  if (problem.status >= 500) request.log.error({ err: error }, problem.code);
  reply.code(problem.status);
  return problem;
}
