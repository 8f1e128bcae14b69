import './style/index.css';
import { hydrate } from 'preact';
import { Page } from './page.tsx';
import type { PageState } from './state.ts';
import { registerWorker } from './worker/register.ts';

const [root, data] = [document.getElementById('page'), document.getElementById('state')];
if (root && data) {
  hydrate(<Page state={JSON.parse(data.textContent ?? '') as PageState} />, root);
  // For whoever measures: from here on a tap does something.
  performance.mark('usable');
}
// After the page can be used: it is for the next time.
window.addEventListener('load', () => void registerWorker());
