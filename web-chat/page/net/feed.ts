/** Listens to a job. The browser reconnects by itself and says which event it saw last. */
export function listen(
  job: string,
  after: number,
  on: { readonly news: (seq: number) => void; readonly contact: (there: boolean) => void },
): () => void {
  const source = new EventSource(`/api/jobs/${encodeURIComponent(job)}/feed?after=${after}`);
  source.onopen = () => on.contact(true);
  source.onerror = () => on.contact(false);
  source.onmessage = (event) => on.news(Number(event.lastEventId));
  return () => source.close();
}
