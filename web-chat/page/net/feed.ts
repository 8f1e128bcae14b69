/** Milliseconds before a feed that the browser gave up is opened again. */
const AGAIN = 5_000;

/**
 * Listens to a job while its page is looked at. The browser reconnects by itself and says which event it saw last;
 * where it gives up, we begin anew. A page in the background lets go: a browser has six connections to one server, and
 * six forgotten tabs would leave none for a seventh.
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
  const open = () => {
    close();
    const opened = new EventSource(`/api/jobs/${encodeURIComponent(job)}/feed?after=${last}`);
    source = opened;
    opened.onopen = () => on.contact(true);
    opened.onerror = () => {
      on.contact(false);
      if (opened.readyState === EventSource.CLOSED) timer = setTimeout(open, AGAIN);
    };
    opened.onmessage = (event) => {
      last = Math.max(last, Number(event.lastEventId));
      on.news(last);
    };
  };
  const looked = () => (document.visibilityState === 'visible' ? open() : close());
  document.addEventListener('visibilitychange', looked);
  looked();
  return () => {
    document.removeEventListener('visibilitychange', looked);
    close();
  };
}
