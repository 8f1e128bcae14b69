/** A link that signs one person in on the web, once. Only its hash is kept. */
import { randomBytes } from 'node:crypto';
import { sha256 } from '../report/digest.ts';

/** Days; our setting. */
const LINK_DAYS = 7;

export interface LinkParts {
  readonly store: { saveLink(hash: string, person: string, until: string): Promise<void> };
  readonly clock: () => Date;
  /** Where people reach the web chat. */
  readonly publicUrl: string;
}
/** The token, 256 random bits, is in the link alone. `to`: the page that opens after signing in, such as `/review/…`. */
export async function issueLink({ publicUrl, ...parts }: LinkParts, person: string, to?: string): Promise<string> {
  const link = new URL(await issuePath(parts, person), publicUrl);
  if (to !== undefined) link.searchParams.set('to', to);
  return link.href;
}
/** The same without the shop's address, for whoever knows it. */
export async function issuePath({ store, clock }: Omit<LinkParts, 'publicUrl'>, person: string): Promise<string> {
  const token = randomBytes(32).toString('base64url');
  const until = new Date(clock().getTime() + LINK_DAYS * 86_400_000).toISOString();
  await store.saveLink(sha256(token), person, until);
  return `/sign-in/${token}`;
}
