import type { Locator, Page } from 'playwright-core';

/** The big rate of a floor. */
export const rate = (page: Page, floor: string): Locator =>
  page.locator(`button[data-figure="runningRate"][data-floor="${floor}"]`);

/** The field of a place of the book in the supply section; the panel may show the same place once more. */
export const field = (page: Page, path: string): Locator =>
  page.locator(`.part input[data-path="${path}"]`).first();

/** One side of a row of the spine. */
export const side = (page: Page, floor: string, finding: string): Locator =>
  page.locator(`button[data-finding="${finding}"][data-floor="${floor}"]`);

export const panel = (page: Page): Locator => page.locator('aside.panel');
export const saveState = (page: Page): Locator => page.locator('.save');

/** Waits until the text of a place is what is asked, or fails with what it was. */
export const waitForText = async (
  locator: Locator,
  wanted: RegExp,
  milliseconds = 8_000,
): Promise<string> => {
  const until = Date.now() + milliseconds;
  for (;;) {
    const text = (await locator.count()) > 0 ? ((await locator.first().textContent()) ?? '') : '';
    if (wanted.test(text)) return text;
    if (Date.now() > until) throw new Error(`wanted ${wanted}, the page says "${text}"`);
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
};

export const openBook = async (page: Page, address: string): Promise<void> => {
  await page.goto(address);
  await page.locator('.spine').waitFor();
};

/** Goes to an address as a press on a link does: a load for each of many parts would take minutes. */
export const goWithin = (page: Page, address: string): Promise<void> =>
  page.evaluate((to) => {
    window.history.pushState(null, '', to);
    window.dispatchEvent(new PopStateEvent('popstate'));
  }, address);

/** Bore of the builder's hose and of the run at the site in the demo book. */
export const hoseBore = '/floors/0/supply/run/1/bore';
export const surface = '/floors/0/supply/source/surface';

/** Scrolls to the charts, which come only then, and back. */
export const seeCharts = async (page: Page): Promise<void> => {
  await page.locator('.when-near').scrollIntoViewIfNeeded();
  await page.locator('.chart svg').first().waitFor();
};

/** Pixels by which something runs out of the page sideways. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => Math.max(0, document.documentElement.scrollWidth - window.innerWidth));
