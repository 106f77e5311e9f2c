import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { faults } from './axe.ts';
import { openBrowser, openPage } from './browser.ts';
import { goWithin, panel, tooWide, waitForText } from './on-the-page.ts';
import { asEachReader } from './readers.ts';
import { type RunningServer, startServer } from './running-server.ts';

let browser: Browser;
let server: RunningServer;

beforeAll(async () => {
  browser = await openBrowser();
  server = await startServer();
});
afterAll(async () => {
  await browser.close();
  await server.remove();
});

const answered = (page: Page): Promise<void> =>
  page.locator('.run-bar[data-working="false"]').waitFor({ timeout: 20_000 });

const numberIn = async (page: Page, selector: string, attribute: string): Promise<number> =>
  Number(await page.locator(selector).first().getAttribute(attribute));

/** Bottles that are drawn, and that the page says are on the line. */
const drawn = (page: Page): Promise<number> => page.locator('.picture .seen').count();

describe('a shift of the line', () => {
  it('goes from the bottles of a shift to the proof run, and every reader can', async () => {
    const { page, complaints, close } = await openPage(browser);
    // few shifts are soon run; what they say is looked at elsewhere
    await page.addInitScript(() => window.localStorage.clear());
    await page.goto(`${server.address()}books/flagon-line`);
    await page.locator('.nav').getByText('Cycle').click();
    await page.locator('[data-number="shifts"]').fill('40');
    await page.locator('[data-head="LARKMOOR"] [data-good]').waitFor({ timeout: 20_000 });
    await answered(page);
    const good = await numberIn(page, '[data-head="LARKMOOR"] [data-good]', 'data-good');
    expect(good).toBeGreaterThan(await numberIn(page, '[data-head="OXBOW"] [data-good]', 'data-good'));
    await page.locator('details summary').click();
    const minutes = await page
      .locator('.cycle-table tbody tr td:last-child')
      .evaluateAll((cells) => cells.map((cell) => Number.parseFloat(cell.textContent ?? '')));
    const whole = minutes.pop()!;
    expect(whole).toBe(480);
    // each row is rounded, the longest to the minute
    expect(Math.abs(minutes.reduce((a, b) => a + b, 0) - whole)).toBeLessThan(3);
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page), await tooWide(page)]).toEqual([reader, [], 0]);
    });

    await page.locator('.question-steps [aria-current]').focus();
    await page.keyboard.press('ArrowRight');
    await page.locator('[data-chain="LARKMOOR"] .chain').waitFor();
    await answered(page);
    await page.locator('[data-row="fill"]').waitFor();
    await waitForText(page.locator('[data-break="OXBOW"]'), /until the fill takes [\d.]+/);
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page, '.cycle-answer'), await tooWide(page)]).toEqual([reader, [], 0]);
    });

    await goWithin(page, '/books/flagon-line/cycle?step=watch');
    await page.locator('.picture svg').waitFor();
    await page.locator('[data-act="next-wait"]').click();
    await waitForText(page.locator('.watch-told'), /for \d+/);
    const first = await numberIn(page, '.watch-clock', 'data-clock');
    const there = await drawn(page);
    expect(there).toBeGreaterThan(0);
    await page.locator('[data-act="next-wait"]').click();
    expect(await numberIn(page, '.watch-clock', 'data-clock')).toBeGreaterThan(first);
    await page.locator('.watch-slider').focus();
    await page.keyboard.press('Home');
    expect(await numberIn(page, '.watch-clock', 'data-clock')).toBe(0);
    await page.locator('[data-act="play"]').click();
    await page.waitForFunction(
      () => Number(document.querySelector('.watch-clock')?.getAttribute('data-clock')) > 2,
    );
    await page.locator('[data-act="play"]').click();
    await page.locator('[data-act="forth"]').click();
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page, '.cycle-answer'), await tooWide(page)]).toEqual([reader, [], 0]);
    });
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.locator('[data-act="play"]').waitFor({ state: 'detached' });

    await goWithin(page, '/books/flagon-line/cycle?step=wash');
    await page.locator('[data-number="index"]').fill('30');
    await page.locator('[data-sped]').first().waitFor({ timeout: 20_000 });
    await page.locator('.cycle-answer[data-working="false"]').waitFor({ timeout: 20_000 });
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page, '.cycle-answer'), await tooWide(page)]).toEqual([reader, [], 0]);
    });

    await goWithin(page, '/books/flagon-line/cycle?step=proof');
    await page.locator('[data-row="allowed 0"]').waitFor();
    await page.locator('[data-number="minutes"]').fill('480');
    await page.locator('[data-number="good"]').fill('8000');
    await page.locator('[data-number="stops"]').fill('9');
    await page.locator('[data-number="stood"]').fill('22');
    await waitForText(page.locator('[data-reached="rate"]'), /1.000 good/);
    await asEachReader(page, async (reader) => {
      expect([reader, await faults(page, '.cycle-answer'), await tooWide(page)]).toEqual([reader, [], 0]);
    });
    expect(await panel(page).count()).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });

  it('begins anew for another question, can be given up, and has room for a thumb', async () => {
    const { page, close } = await openPage(browser, {
      viewport: { width: 820, height: 1180 },
      hasTouch: true,
      isMobile: true,
    });
    await page.goto(`${server.address()}books/flagon-line/cycle`);
    await page.locator('[data-number="shifts"]').fill('20000');
    await page.locator('[data-interval]').first().waitFor({ timeout: 20_000 });
    await page.locator('[data-act="stop-run"]').tap();
    await page.locator('[data-act="run-again"]').waitFor();
    const low = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          '.cycle-page button, .cycle-page input, .cycle-page summary, .cycle-page a',
        ),
      ]
        .filter((element) => element.checkVisibility())
        .map((element) => ({
          height: element.getBoundingClientRect().height,
          html: element.outerHTML.slice(0, 120),
        }))
        .filter(({ height }) => height < 47.9),
    );
    expect(low).toEqual([]);
    await page.locator('[data-number="seed"]').fill('8');
    // an answer to another question does not stay
    await page.locator('[data-interval]').first().waitFor({ state: 'detached' });
    await close();
  });
});
