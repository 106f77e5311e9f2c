import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { provideChromium } from './chromium.mjs';
import { projectRoot } from './project-root.mjs';
import { makeReady } from './ready.mjs';

await makeReady();
const { build } = await import('vite');

const place = join(projectRoot, 'node_modules', '.cache', `bench-${process.pid}`);

/**
 * Makes pipe loss compute with the friction formula of the EPANET engine, so that the two solve the same
 * equations: everything else is the code as it ships.
 */
const engineFriction = {
  name: 'engine-friction',
  enforce: 'pre',
  async resolveId(source, importer) {
    if (source !== './friction-factor.ts' || importer?.includes('pipe-loss.ts') !== true) return null;
    return '\0engine-friction';
  },
  load(id) {
    if (id !== '\0engine-friction') return null;
    const real = JSON.stringify(join(projectRoot, 'src/sheets/water/friction-factor.ts'));
    return `export * from ${real};\nexport { swameeJainFactor as frictionFactor } from ${real};`;
  },
};

/** Bundled, since code that is transformed while it runs is slower than what ships. */
const bundled = async (name, plugins = []) => {
  await build({
    configFile: false,
    root: projectRoot,
    logLevel: 'warn',
    publicDir: false,
    plugins,
    build: {
      ssr: true,
      outDir: place,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      rolldownOptions: {
        input: { [name]: join(projectRoot, 'bench', `${name}.ts`) },
        output: { format: 'es', entryFileNames: '[name].mjs', chunkFileNames: `${name}-[hash].mjs` },
      },
    },
  });
  return import(pathToFileURL(join(place, `${name}.mjs`)).href);
};

mkdirSync(place, { recursive: true });
try {
  const { assessRows } = await bundled('assess-demo');
  const { remedyRows } = await bundled('remedies-demo');
  const { fillRows } = await bundled('fill-study');
  const { shiftRows } = await bundled('shift');
  const { networkRows } = await bundled('network-solution', [engineFriction]);
  const { pageRows } = await bundled('page');
  const { largeBookRows } = await bundled('large-book');
  const { joinRows } = await bundled('joins');
  const { paperRows } = await bundled('papers');
  const { storeRows } = await bundled('store');
  const { doorRows } = await bundled('doors');
  const { table, isMet } = await bundled('table');
  const chromium = provideChromium();
  const rows = [
    ...assessRows(),
    ...remedyRows(),
    ...fillRows(),
    ...(await shiftRows()),
    ...(await networkRows()),
    ...joinRows(),
    ...paperRows(),
    ...(await storeRows()),
    ...(chromium === undefined ? [] : await pageRows(projectRoot, chromium)),
    ...(chromium === undefined ? [] : await largeBookRows(projectRoot, chromium)),
    ...(await doorRows(projectRoot)),
  ];
  process.stdout.write(`${table(rows)}\n`);
  if (chromium === undefined) process.stdout.write('The page was not measured: there is no Chromium.\n');
  process.exitCode = rows.every(isMet) ? 0 : 1;
} finally {
  rmSync(place, { recursive: true, force: true });
}
