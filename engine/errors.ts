/** Trouble that must not happen. What people do wrong is a Refusal, never one of these. */

/** The record is sound but does not fit the manual it is replayed on: another flow, version or computation. */
export class TranscriptMismatch extends Error {
  override name = 'TranscriptMismatch';
}
/** The record itself is damaged: numbering, chain or shape. */
export class TranscriptCorrupt extends Error {
  override name = 'TranscriptCorrupt';
}
/** A flow that can't be compiled; the message names page, step and cause. */
export class FlowError extends Error {
  override name = 'FlowError';
}
/** For exhaustive switches: a new case fails to compile, and throws if it comes from outside. */
export function unreachable(value: never): never {
  throw new Error(`unreachable: ${JSON.stringify(value)}`);
}
