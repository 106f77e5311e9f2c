import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build } from './build.mjs';
import { chromiumWanted, findChromium } from './chromium.mjs';
import { isFresh } from './freshness.mjs';
import { projectRoot } from './project-root.mjs';

/** Serves the pages as a fresh clone shows them, on an empty data folder, for as long as somebody looks at them. */
export const onBuiltPages = async (look) => {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error(chromiumWanted);
  if (!isFresh()) await build();
  const { serve } = await import('../dist/node/server.mjs');
  const data = mkdtempSync(join(tmpdir(), 'twinfloor-picture-'));
  const served = await serve({ host: '127.0.0.1', port: 0, data, allowHosts: [], root: projectRoot });
  if (!served.ok) throw new Error(served.message);
  const browser = await chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
  });
  try {
    return await look({ browser, address: served.value.address });
  } finally {
    await browser.close();
    await served.value.close();
    rmSync(data, { recursive: true, force: true });
  }
};
