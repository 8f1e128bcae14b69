/** SHA-256 by the machine's own library; the engine's is the same, and slower. */
import { hash } from 'node:crypto';
import type { Digest } from '../chain.ts';

export const sha256: Digest = (text) => hash('sha256', text);
