/** The engine's public face: re-exports only, and nothing here needs a server. */

export { seal, verifyChain } from './chain.ts';
export { check, type Fault } from './check.ts';
export { compile, type Machine } from './compile.ts';
export { decide } from './decide/decide.ts';
export type { Context, Decision, Relation, UseCase } from './decide/types.ts';
export { FlowError, TranscriptCorrupt, TranscriptMismatch } from './errors.ts';
export { fingerprint, SEMANTICS } from './fingerprint.ts';
export { formPrompt } from './form.ts';
export { prompt, promptAgain } from './prompt.ts';
export { asOf, begin, replay, type Standing, take } from './replay.ts';
export { sayKind } from './say-kind.ts';
export { sayKey, sayUnit } from './say-unit.ts';
export * from './schema.ts';
export { readCommand, readField, readHazard, readLabel, readLine } from './understand/index.ts';
export { inOrder, sayUrgency, whyThere } from './who-goes.ts';
