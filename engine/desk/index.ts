/**
 * The desk: the use cases with people and rights, the only door from a surface to the engine.
 *
 *   const desk = createDesk({ store, shelf: SHELF, clock: () => new Date(), random: randomHex });
 *   const { view } = await desk.open('p1', { title: '…', client: 'c1' });
 *   const turn = await desk.reply('p1', view.job, { kind: 'text', client: 'c2', seq: view.prompt.seq, text: 'd' });
 *
 * `clock` gives the server's time, `random(n)` n random bytes as hex. A reply is answered only after its entries are
 * durable. Throws NotFound, NoRight, NotKept (see types.ts); what people do wrong comes back as a refusal.
 */
export { KeyTrouble, keyPlace, openKey, type ShopKey } from '../report/key.ts';
export { type Asked, createDoor, type Door } from './chat/door.ts';
export type { WhoGoes } from './chat/giving.ts';
export type { Home } from './chat/home.ts';
export { createHomes, type Homes, type HomesParts, type HomeTimes } from './chat/homes.ts';
export { createSpeaker, type Speaker } from './chat/speaker.ts';
export type { CallStep, Sent } from './chat/taking.ts';
export { Later, Never, type Spoken, type Voice } from './chat/types.ts';
export { clockFor } from './clock.ts';
export { createDesk, type DeskParts } from './desk.ts';
export { randomHex } from './random.ts';
export { issueLink } from './sign-in.ts';
export * from './types.ts';
