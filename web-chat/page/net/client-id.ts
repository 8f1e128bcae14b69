/** A new id for one reply: sent twice it counts once. Not `randomUUID`, which browsers keep for https. */
export const clientId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
