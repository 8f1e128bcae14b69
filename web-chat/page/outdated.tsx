import { useEffect, useState } from 'preact/hooks';
import { drawnBy } from './net/api.ts';

/** Whether the server has become newer than this page. */
export function useOutdated(build: string): boolean {
  const [outdated, setOutdated] = useState(false);
  useEffect(() => drawnBy(build, () => setOutdated(true)), [build]);
  return outdated;
}

/** A reload loses nothing: what is typed is in this tab, what is given and not sent is on this phone. */
export const Outdated = () => (
  <p class="contact outdated" role="status">
    <span>This page is older than the server. Reload it; nothing that you gave is lost.</span>
    <button type="button" class="key" onClick={() => location.reload()}>
      Reload
    </button>
  </p>
);
