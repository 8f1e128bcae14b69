/** Milliseconds before a feed that the browser gave up is opened again, and a list that didn't come is asked for. */
const AGAIN = 5_000;
/** Milliseconds without a beat, of which the server sends one every 15 s, after which nobody is at the other end. */
const SILENT = 40_000;

interface On {
  readonly contact: (there: boolean) => void;
}

/** Listens to a job while its page is looked at, from this entry on. */
export function listen(job: string, after: number, on: On & { readonly news: (seq: number) => void }): () => void {
  let last = after;
  return follow(() => `/api/jobs/${encodeURIComponent(job)}/feed?after=${last}`, {
    ...on,
    event: (id) => {
      last = Math.max(last, Number(id));
      on.news(last);
    },
  });
}

/** Milliseconds in which several news are one look. */
const GATHER = 150;

/** Listens to whatever happens on jobs that this person may see, while the page is looked at. */
export const listenToAll = (on: On & { readonly news: () => void }): (() => void) =>
  follow(() => '/api/feed', { ...on, event: on.news });

/** Asks, and takes what came, unless a later answer was there first; what didn't come is asked for again. */
export function looking<T extends { readonly ok: boolean }>(
  ask: () => Promise<T>,
  take: (got: T) => void,
  again = AGAIN,
): () => void {
  let [asked, taken] = [0, 0];
  let timer: ReturnType<typeof setTimeout> | undefined;
  const look = (): void => {
    clearTimeout(timer);
    const mine = ++asked;
    void ask().then((got) => {
      if (mine < taken) return;
      taken = mine;
      take(got);
      if (!got.ok && document.visibilityState === 'visible') timer = setTimeout(look, again);
    });
  };
  return look;
}

/** Looks again, soon, whenever something happened on a job of a list, and when contact is back. */
export function keepLooking(look: () => void, lost: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const soon = (): void => {
    clearTimeout(timer);
    timer = setTimeout(look, GATHER);
  };
  const stop = listenToAll({ news: soon, contact: (there) => (there ? soon() : lost()) });
  return () => {
    clearTimeout(timer);
    stop();
  };
}

/**
 * The browser reconnects by itself and says which event it saw last; where it gives up, or where a dead line says
 * nothing, we begin anew. A page in the background lets go: a browser has six connections to one server, and six
 * forgotten tabs would leave none for a seventh.
 */
function follow(address: () => string, on: On & { readonly event: (id: string) => void }): () => void {
  let source: EventSource | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const close = () => {
    clearTimeout(timer);
    source?.close();
    source = null;
  };
  const beat = () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      on.contact(false);
      open();
    }, SILENT);
  };
  const open = () => {
    close();
    const opened = new EventSource(address());
    source = opened;
    // From here on, not from the first answer: a network that swallows the request never says so.
    beat();
    opened.onopen = () => {
      on.contact(true);
      beat();
    };
    opened.onerror = () => {
      on.contact(false);
      beat();
      if (opened.readyState !== EventSource.CLOSED) return;
      clearTimeout(timer);
      timer = setTimeout(open, AGAIN);
    };
    opened.onmessage = (event) => {
      on.event(event.lastEventId);
      beat();
    };
    opened.addEventListener('beat', beat);
  };
  const looked = () => (document.visibilityState === 'visible' ? open() : close());
  document.addEventListener('visibilitychange', looked);
  looked();
  return () => {
    document.removeEventListener('visibilitychange', looked);
    close();
  };
}
