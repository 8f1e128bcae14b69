import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Resolved here, because tools that look for unused packages don't read style sheets. */
const FONTS = dirname(fileURLToPath(import.meta.resolve('@fontsource/atkinson-hyperlegible/package.json')));

/** The page in the browser: one script, one style sheet and the fonts, named by their content; and the service worker. */
export default defineConfig({
  root: at('../web-chat/page'),
  base: '/',
  publicDir: false,
  resolve: { alias: { '@fonts': join(FONTS, 'files') } },
  build: {
    outDir: at('../dist/page'),
    emptyOutDir: true,
    assetsDir: 'assets',
    // Fonts stay files: the content policy has no data: for them, and a browser keeps a file.
    assetsInlineLimit: 0,
    manifest: true,
    modulePreload: false,
    target: 'es2022',
    rollupOptions: {
      input: { main: at('../web-chat/page/main.tsx'), worker: at('../web-chat/page/worker/worker.ts') },
      output: {
        // The worker's address never changes, or a browser would keep the old one.
        entryFileNames: ({ name }) => (name === 'worker' ? 'worker.js' : 'assets/[name]-[hash].js'),
      },
    },
  },
});
