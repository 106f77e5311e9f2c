import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { inlinedScript } from './scripts/inlined-script.mjs';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The page: `src/web` into `dist/web`, everything but index.html with a digest of its content in the name. */
export default defineConfig({
  root: at('./src/web'),
  plugins: [react(), inlinedScript()],
  // the strict content security policy allows no data: address, so nothing is inlined
  build: {
    outDir: at('./dist/web'),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    manifest: true,
    target: 'es2023',
    modulePreload: { polyfill: false },
    rolldownOptions: {
      // no module of ours does anything by being imported: what a page does not use of an index file stays out of it
      treeshake: { moduleSideEffects: [{ test: /\/src\/.*\.ts$/, sideEffects: false }] },
      output: {
        // a chunk that several parts share is named after all of them
        chunkFileNames: ({ name }) => `assets/${name.split('~')[0]}-[hash].js`,
        // files put together by size may ask for each other in a ring: each module still runs after those it uses
        strictExecutionOrder: true,
        codeSplitting: {
          groups: [
            { name: 'first', tags: ['$initial'], priority: 1 },
            // what the pages that write records share: a dozen small files would each be asked for
            {
              name: 'records',
              test: /\/src\/(?:web\/(?:proof|joins|shell|state|field|media|pad|commands)|proof|record|joins|media)\//,
              minShareCount: 2,
            },
            // what several parts share is put together where it is small, since asking costs more than the bytes; put together
            // further, all sheets with their words would come with pages that open none
            { name: 'shared', minShareCount: 2, entriesAware: true, entriesAwareMergeThreshold: 6_000 },
          ],
        },
      },
    },
  },
  worker: { format: 'es' },
  server: { proxy: { '/api': 'http://127.0.0.1:4780' } },
});
