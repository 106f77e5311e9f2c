import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { serve } from '../src/server/serve.ts';
import { chromiumOptions } from './chromium-options.ts';
import { enteredBottles, entries, standing } from './entered-bottle.ts';
import { spread } from './spread.ts';
import type { Row } from './table.ts';

const surface = '/floors/0/supply/source/surface';
const rate = 'button[data-figure="runningRate"][data-floor="OXBOW"]';

interface Measured {
  times: number[];
  pending: number | undefined;
}

/** From the moment of the key to the first task after the frame that shows the changed rate. */
const watchKeys = (page: Page, figure: string): Promise<void> =>
  page.evaluate((selector) => {
    const measured: Measured = { times: [], pending: undefined };
    (window as unknown as { measured: Measured }).measured = measured;
    window.addEventListener(
      'keydown',
      (event) => {
        measured.pending = event.timeStamp;
      },
      true,
    );
    const shown = document.querySelector(selector);
    if (shown === null) throw new Error('the figure is not on the page');
    new MutationObserver(() => {
      const from = measured.pending;
      if (from === undefined) return;
      measured.pending = undefined;
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => {
          measured.times.push(performance.now() - from);
        };
        channel.port2.postMessage(0);
      });
    }).observe(shown, { childList: true, characterData: true, subtree: true });
  }, figure);

/** Keys in a field, each timed until the figure has followed on the screen. */
const keystrokes = async (
  page: Page,
  { path, text, figure }: { readonly path: string; readonly text: string; readonly figure: string },
): Promise<readonly number[]> => {
  const field = page.locator(`.part input[data-path="${path}"]`).first();
  await field.fill(text);
  await field.focus();
  await watchKeys(page, figure);
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  // a digit before the point and away again: each key is a valid value, and the figure moves far
  for (let i = 0; i < 120; i += 1) {
    await page.keyboard.press(i % 2 === 0 ? String(1 + (i % 9)) : 'Backspace');
    await page.waitForTimeout(120);
  }
  const { times } = await page.evaluate(() => (window as unknown as { measured: Measured }).measured);
  return times;
};

/** The page in Chromium against the real server on loopback. */
export const pageRows = async (root: string, executablePath: string): Promise<readonly Row[]> => {
  const data = mkdtempSync(join(tmpdir(), 'bench-page-'));
  const served = await serve({ host: '127.0.0.1', port: 0, data, allowHosts: [], root });
  if (!served.ok) throw new Error(served.message);
  const browser = await chromium.launch({ executablePath, args: chromiumOptions });
  try {
    const painted: number[] = [];
    const bytes: number[] = [];
    for (let i = 0; i < 5; i += 1) {
      const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
      const page = await context.newPage();
      await page.goto(served.value.address);
      await page.locator('.spine').waitFor();
      const seen = await page.evaluate(() => ({
        paint: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN,
        script: (performance.getEntriesByType('resource') as PerformanceResourceTiming[])
          .filter(({ name }) => name.endsWith('.js'))
          .reduce((sum, { encodedBodySize }) => sum + encodedBodySize, 0),
      }));
      painted.push(seen.paint);
      bytes.push(seen.script / 1000);
      await context.close();
    }
    const page = await (await browser.newContext({ viewport: { width: 1280, height: 800 } })).newPage();
    await page.goto(served.value.address);
    await page.locator('.spine').waitFor();
    // as long as a person looks at the figures before the first key
    await page.waitForTimeout(4_000);
    const keys = await keystrokes(page, { path: surface, text: '2.55 m', figure: rate });
    await page.locator('.nav').getByText('Utilities').click();
    await page.locator('button[data-form="air LARKMOOR"]').click();
    const utilityKeys = await keystrokes(page, {
      path: '/floors/1/air/coldest',
      text: '3.5 degC',
      figure: 'button[data-finding="airRoute"][data-floor="LARKMOOR"]',
    });
    const bottles = await enteredBottles(page, served.value.address);
    const { median, runs } = spread(bytes);
    return [
      {
        what: 'keystroke to painted figure',
        unit: 'ms',
        ...spread(keys),
        wanted: { figure: 'p95', sense: 'under', bound: 50 },
        remark: `${keys.length} of 120 keys moved the rate`,
      },
      {
        what: 'keystroke to painted row of the utilities',
        unit: 'ms',
        ...spread(utilityKeys),
        wanted: { figure: 'p95', sense: 'under', bound: 50 },
        remark: `${utilityKeys.length} of 120 keys moved the row`,
      },
      {
        what: `bottle entered to its painted line, ${standing} trials in the book`,
        unit: 'ms',
        ...spread(bottles),
        wanted: { figure: 'p95', sense: 'under', bound: 50 },
        remark: `${bottles.length} of ${entries} bottles said their volume`,
      },
      {
        what: 'script of the first load, compressed',
        unit: 'kB',
        median,
        runs,
        wanted: { figure: 'median', sense: 'under', bound: 300 },
      },
      {
        what: 'first paint on loopback',
        unit: 'ms',
        ...spread(painted),
        wanted: { figure: 'median', sense: 'under', bound: 1000 },
      },
    ];
  } finally {
    await browser.close();
    await served.value.close();
    rmSync(data, { recursive: true, force: true });
  }
};
