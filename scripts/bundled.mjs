import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { inlinedScript } from './inlined-script.mjs';
import { projectRoot } from './project-root.mjs';

/** A module of the sources for Node, bundled into a place, since code that is transformed while it runs is slower than what ships. */
export const bundled = async (place, file, plugins = []) => {
  const name = file.split('/').at(-1).replace(/\.ts$/, '');
  await build({
    configFile: false,
    root: projectRoot,
    logLevel: 'warn',
    publicDir: false,
    plugins: [inlinedScript(), ...plugins],
    build: {
      ssr: true,
      outDir: place,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      rolldownOptions: {
        input: { [name]: join(projectRoot, file) },
        output: { format: 'es', entryFileNames: '[name].mjs', chunkFileNames: `${name}-[hash].mjs` },
      },
    },
  });
  return import(pathToFileURL(join(place, `${name}.mjs`)).href);
};
