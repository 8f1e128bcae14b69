/** Tokens go to the platform and nowhere else, whatever address an answer names. */
const THEIRS = /^([a-z0-9-]+\.)*(slack\.com|slack-files\.com)$/;

/** A fetch that reaches the platform alone; with an API on loopback, that one. */
export function platformFetch(api: string): typeof fetch {
  const home = new URL(api);
  const test = home.hostname === '127.0.0.1';
  return (input, init) => {
    const url = new URL(input instanceof Request ? input.url : String(input));
    const known = test ? url.host === home.host : url.protocol === 'https:' && THEIRS.test(url.hostname);
    if (!known) return Promise.reject(new TypeError(`${url.hostname} is none of the platform’s`));
    return fetch(input, init);
  };
}
