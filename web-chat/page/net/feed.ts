/** Milliseconds before a feed that the browser gave up is opened again. */
const AGAIN = 5_000;
/** Milliseconds without a beat, of which the server sends one every 15 s, after which nobody is at the other end. */
const SILENT = 40_000;

/**
 * Listens to a job while its page is looked at. The browser reconnects by itself and says which event it saw last;
 * where it gives up, or where a dead line says nothing, we begin anew. A page in the background lets go: a browser has
 * six connections to one server, and six forgotten tabs would leave none for a seventh.
 */
export function listen(
  job: string,
  after: number,
  on: { readonly news: (seq: number) => void; readonly contact: (there: boolean) => void },
): () => void {
  let last = after;
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
    const opened = new EventSource(`/api/jobs/${encodeURIComponent(job)}/feed?after=${last}`);
    source = opened;
    opened.onopen = () => {
      on.contact(true);
      beat();
    };
    opened.onerror = () => {
      on.contact(false);
      clearTimeout(timer);
      if (opened.readyState === EventSource.CLOSED) timer = setTimeout(open, AGAIN);
    };
    opened.onmessage = (event) => {
      last = Math.max(last, Number(event.lastEventId));
      on.news(last);
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
