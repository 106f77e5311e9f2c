import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { findChromium, provideTestChromium } from './chromium.mjs';
import { projectRoot } from './project-root.mjs';
import { makeReady } from './ready.mjs';

await makeReady();
const { bundled } = await import('./bundled.mjs');

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

const bundledPart = (name, plugins) => bundled(place, `bench/${name}.ts`, plugins);

mkdirSync(place, { recursive: true });
try {
  const { assessRows } = await bundledPart('assess-demo');
  const { remedyRows } = await bundledPart('remedies-demo');
  const { fillRows } = await bundledPart('fill-study');
  const { shiftRows } = await bundledPart('shift');
  const { networkRows } = await bundledPart('network-solution', [engineFriction]);
  const { pageRows } = await bundledPart('page');
  const { largeBookRows } = await bundledPart('large-book');
  const { joinRows } = await bundledPart('joins');
  const { paperRows } = await bundledPart('papers');
  const { storeRows } = await bundledPart('store');
  const { doorRows } = await bundledPart('doors');
  const { table, isMet } = await bundledPart('table');
  const chromium = findChromium() ?? provideTestChromium();
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
