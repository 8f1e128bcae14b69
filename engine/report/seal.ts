/** What the shop's key signs. Whoever rewrites a whole chain can make every hash fit, but not this. */

import { canonicalJson } from '../canonical.ts';
import { sha256 } from './digest.ts';
import type { JobFile, Seal, Shown } from './file.ts';
import { isSignedBy, type ShopKey } from './key.ts';

type Unsigned = Omit<Seal, 'signature'>;

/** The job's identity is in what is signed: a seal can't be moved to another job. `nocool-seal-1` names this way of signing. */
const signedText = (job: string, { key, length, head, shown }: Unsigned): string =>
  `nocool-seal-1\n${canonicalJson({ job, key, length, head, shown })}`;

export const digestOf = (shown: readonly Shown[]): string => sha256(canonicalJson(shown));

export function sealed(key: ShopKey, job: string, length: number, head: string, shown: readonly Shown[]): Seal {
  const seal = { key: key.name, length, head, shown: digestOf(shown) };
  return { ...seal, signature: key.sign(signedText(job, seal)) };
}

export const isSignatureOf = (file: Pick<JobFile, 'job'>, seal: Seal): boolean =>
  isSignedBy(seal.key, signedText(file.job, seal), seal.signature);
