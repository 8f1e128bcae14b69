import './style/index.css';
import { hydrate } from 'preact';
import { Page } from './page.tsx';
import type { PageState } from './state.ts';

const [root, data] = [document.getElementById('page'), document.getElementById('state')];
if (root && data) hydrate(<Page state={JSON.parse(data.textContent ?? '') as PageState} />, root);
