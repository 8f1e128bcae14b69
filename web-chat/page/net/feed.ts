/** Milliseconds before a feed that the browser gave up is opened again. */
const AGAIN = 5_000;

/** Listens to a job. The browser reconnects by itself and says which event it saw last; where it gives up, we begin anew. */
export function listen(
  job: string,
  after: number,
  on: { readonly news: (seq: number) => void; readonly contact: (there: boolean) => void },
): () => void {
  let last = after;
  let source: EventSource;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const open = () => {
    source = new EventSource(`/api/jobs/${encodeURIComponent(job)}/feed?after=${last}`);
    source.onopen = () => on.contact(true);
    source.onerror = () => {
      on.contact(false);
      if (source.readyState === EventSource.CLOSED) timer = setTimeout(open, AGAIN);
    };
    source.onmessage = (event) => {
      last = Math.max(last, Number(event.lastEventId));
      on.news(last);
    };
  };
  open();
  return () => {
    clearTimeout(timer);
    source.close();
  };
}
