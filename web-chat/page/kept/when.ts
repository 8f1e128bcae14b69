/** Which replies wait on the phone, and which make sense only in contact. */
import type { CommandName, Reply } from '../../../engine/index.ts';

/** Questions about what stands, and words that let a job go on: late, they would be about something nobody looked at. */
const NOW_ONLY: readonly CommandName[] = [
  ...(['why', 'where', 'help', 'photo', 'back'] as const),
  ...(['go on', 'take over', 'not here', 'old mark', 'release', 'approve', 'sign', 'send back', 'ask'] as const),
];
export const mayWait = (reply: Reply): boolean => reply.kind !== 'command' || !NOW_ONLY.includes(reply.name);
