import './style/index.css';
import { hydrate, render } from 'preact';
import { Page } from './page.tsx';
import { FONTS_COOKIE, isOffice, isOfOffice, isReview, isSenior, type PageState } from './state.ts';
import { registerWorker } from './worker/register.ts';

const [root, data] = [document.getElementById('page'), document.getElementById('state')];
if (root && data) {
  const state = JSON.parse(data.textContent ?? '') as PageState;
  if (isReview(state)) {
    // Nobody loads the review desk on a roof.
    void import('./review/review-pages.tsx').then(({ ReviewPages }) => hydrate(<ReviewPages state={state} />, root));
  } else if (isOffice(state)) {
    void import('./office/office-pages.tsx').then(({ OfficePages }) => hydrate(<OfficePages state={state} />, root));
  } else hydrate(<Page state={state} />, root);
  const alarms = document.getElementById('alarms');
  if (alarms && isOfOffice(state.me))
    void import('./alarms/alarms.tsx').then(({ Alarms }) => render(<Alarms senior={isSenior(state.me)} />, alarms));
  // For whoever measures: from here on a tap does something.
  performance.mark('usable');
}
// After the page can be used: it is for the next time.
window.addEventListener('load', () => {
  void registerWorker();
  void document.fonts.ready.then(() => {
    // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store API is not in every browser yet.
    document.cookie = `${FONTS_COOKIE}=1; path=/; max-age=31536000; samesite=lax`;
  });
});
