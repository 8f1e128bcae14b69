/** Starts the service worker where there is one to be had: over https, and on this machine itself. */
export async function registerWorker(): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  try {
    await navigator.serviceWorker.register('/worker.js');
    const { active } = await navigator.serviceWorker.ready;
    active?.postMessage({ keep: [location.pathname, '/'] });
  } catch {
    // Without it the page is the same, but does not open without contact.
  }
}

/** When this page was kept, in milliseconds by this device's clock; null where it came from the server now. */
export function keptAt(): number | null {
  const mark = document.querySelector<HTMLMetaElement>('meta[name="x-nocool-kept"]');
  return mark ? Number(mark.content) : null;
}

/** Forgets the pages of whoever was signed in. */
export async function forgetPages(): Promise<void> {
  if ('caches' in globalThis) await caches.delete('nocool-pages').catch(() => false);
}
