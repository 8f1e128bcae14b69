/** A paper as the inside of an HTML page: no styles and no scripts, so that any content policy lets it in. */
import type { Block, Paper } from './paper.ts';

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const safe = (words: string): string => words.replace(/[&<>"]/g, (c) => ENTITIES[c] ?? c);

/** `photoAt` gives the address of a photo; null: it is no longer there, and only said. */
export function paperHtml(paper: Paper, photoAt: (hash: string) => string | null): string {
  return [
    '<article class="paper">',
    `<h1>${safe(paper.title)}</h1>`,
    `<p class="about">${safe(paper.about)}</p>`,
    ...paper.stamps.map((stamp) => `<p class="stamp">${safe(stamp)}</p>`),
    ...paper.blocks.map((block) => blockHtml(block, photoAt)),
    `<p class="foot">${safe(paper.foot)}</p>`,
    '</article>',
  ].join('');
}

function blockHtml(block: Block, photoAt: (hash: string) => string | null): string {
  switch (block.kind) {
    case 'heading':
      return `<h2>${safe(block.text)}</h2>`;
    case 'line':
      return `<p>${safe(block.text)}</p>`;
    case 'photo': {
      const at = photoAt(block.hash);
      const image =
        at === null ? '<p>This photo was removed.</p>' : `<img src="${safe(at)}" alt="${safe(block.says)}">`;
      return `<figure>${image}<figcaption>${safe(block.says)}</figcaption></figure>`;
    }
    // Markup as it is: drawn by the engine, which escapes every word in it and uses no styles.
    case 'drawings':
      return `<div class="drawings">${block.drawings
        .map(({ title, svg }) => `<figure><figcaption>${safe(title)}</figcaption>${svg}</figure>`)
        .join('')}</div>`;
    case 'table': {
      const head = block.head.map((cell) => `<th scope="col">${safe(cell)}</th>`).join('');
      const rows = block.rows.map(({ cells: [first = '', ...rest], note }) => {
        const cells = rest
          .map((cell, i) => `<td data-label="${safe(block.head[i + 1] ?? '')}">${safe(cell)}</td>`)
          .join('');
        const under =
          note === null ? '' : `<tr class="note"><td colspan="${block.head.length}">${safe(note)}</td></tr>`;
        return `<tbody><tr><th scope="row">${safe(first)}</th>${cells}</tr>${under}</tbody>`;
      });
      return `<table><caption>${safe(block.caption)}</caption><thead><tr>${head}</tr></thead>${rows.join('')}</table>`;
    }
  }
}
