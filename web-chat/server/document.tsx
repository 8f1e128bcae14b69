/** The document around a page: its state travels as data in a JSON block, which no content policy has to allow. */
import type { ComponentChildren } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { OfficePages } from '../page/office/office-pages.tsx';
import { Page } from '../page/page.tsx';
import { ReviewPages } from '../page/review/review-pages.tsx';
import { isOffice, isReview, type PageState } from '../page/state.ts';
import type { Built } from './built.ts';
import type { Problem } from './problem.ts';

/** `fonts`: whether they may be fetched beside the script; on a slow line they would keep it from being there. */
export function pageDocument(built: Built, title: string, state: PageState, fonts = true): string {
  const body = `<div id="alarms"></div><div id="page">${renderToString(pageOf(state))}</div><script type="application/json" id="state">${embedded(state)}</script>`;
  return documentOf(
    fonts ? built : { ...built, fonts: [] },
    title,
    body,
    `<script type="module" src="${built.script}"></script>`,
  );
}

function pageOf(state: PageState) {
  if (isReview(state)) return <ReviewPages state={state} />;
  return isOffice(state) ? <OfficePages state={state} /> : <Page state={state} />;
}

/** A page that needs no script. */
export function plainDocument(built: Built, title: string, children: ComponentChildren): string {
  const main = (
    <main class="plain">
      <h1>{title}</h1>
      {children}
    </main>
  );
  return documentOf(built, title, renderToString(main), '');
}

/** A page whose inside is markup already: the engine made it, and escaped every word in it. */
export const readyDocument = (built: Built, title: string, inside: string): string =>
  documentOf(built, title, `<main class="plain report">${inside}</main>`, '');

/** An error as a page. It says what to do and nothing of what went wrong inside. */
export function problemDocument(built: Built, problem: Problem): string {
  const after =
    problem.status === 401 ? (
      <p>A link works once. Ask your shop for a new one.</p>
    ) : (
      <p>
        <a class="key" href="/">
          To the list of calls
        </a>
      </p>
    );
  return plainDocument(built, problem.message, after);
}

function documentOf(built: Built, title: string, body: string, script: string): string {
  const head = renderToString(
    <>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1, interactive-widget=resizes-content" />
      <meta name="color-scheme" content="light dark" />
      <title>{`${title} · nocool`}</title>
      <link rel="icon" href="data:," />
      {built.fonts.map((href) => (
        <link
          key={href}
          rel="preload"
          as="font"
          type="font/woff2"
          href={href}
          crossorigin="anonymous"
          fetchpriority="low"
        />
      ))}
      {built.styles.map((href) => (
        <link key={href} rel="stylesheet" href={href} />
      ))}
    </>,
  );
  return `<!doctype html><html lang="en"><head>${head}${script}</head><body>${body}</body></html>`;
}

/** JSON that can't end its own script element or break a parser. */
const embedded = (state: PageState): string =>
  JSON.stringify(state).replace(/[<>&\u2028\u2029]/g, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
