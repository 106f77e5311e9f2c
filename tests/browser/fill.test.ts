import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { saveState, waitForText } from './on-the-page.ts';
import { ownServerForEach, server, watched } from './own-server.ts';

const field = (page: Page, name: string): Locator => page.locator(`[data-weigh="${name}"]`);
const rows = (page: Page): Locator => page.locator('.trial-table tbody tr');
const told = (page: Page): Locator => page.locator('.weigh-told [role="status"]');

const openStep = async (page: Page, step: string): Promise<void> => {
  await page.goto(`${server.address()}books/flagon-line/fill?step=${step}`);
  await page.locator(`.fill-page[data-step="${step}"] .fill-head`).waitFor();
  await waitForText(saveState(page), /saved/);
};

const openScales = async (page: Page): Promise<void> => {
  await openStep(page, 'weigh');
  await page.locator('[data-holds="by"]').fill('the engineer');
  await field(page, 'tare').fill('0.962');
  await field(page, 'gross').focus();
};

const recordsOf = async () => {
  const reply = await fetch(`${server.address()}api/books/flagon-line/records`);
  const { records } = (await reply.json()) as {
    records: { id: string; kind: string; supersedes?: string; body: Record<string, unknown> }[];
  };
  return records;
};

/** Taps big keys only, and counts them. */
const tapBottle = async (page: Page, gross: string, overflow: string): Promise<number> => {
  let taps = 0;
  const tap = async (selector: string): Promise<void> => {
    await page.locator(selector).click();
    taps += 1;
  };
  for (const key of gross) await tap(`[data-key="${key}"]`);
  await tap(`[data-overflow="${overflow}"]`);
  return taps;
};

ownServerForEach();

describe('at the scales', () => {
  it('a bottle is five taps on keys of 64 px, lane after lane, and stands on the server and after a reload', async () => {
    const { page, complaints } = watched;
    await openScales(page);
    const small = await page
      .locator('.key-pad button, .overflow-keys button, .lane-keys button, .stop-watch')
      .evaluateAll((all) =>
        all.map((one) => one.getBoundingClientRect().height).filter((high) => high < 63.9),
      );
    expect(small).toEqual([]);
    expect(await tapBottle(page, '2.98', 'none')).toBe(5);
    await waitForText(told(page), /-Y11, 2\.98 kg: written down/);
    expect(await tapBottle(page, '2.97', 'trace')).toBe(5);
    await waitForText(rows(page).first(), /-Y12.*796.*2\.008.*trace/);
    expect(await page.locator('.lane-keys [aria-pressed="true"]').getAttribute('data-lane')).toBe('-Y13');
    await waitForText(page.locator('.trial-table [role="status"]'), /Every record is on the server/);
    const bodies = (await recordsOf()).map(({ body }) => body);
    expect(bodies[0]).toMatchObject({
      floor: 'OXBOW',
      format: 'FLAGON-2L',
      lane: '-Y11',
      preset: 803,
      gross: '2.98 kg',
      tare: '0.962 kg',
      overflow: 'none',
      lanesOpen: 4,
    });
    expect(bodies[0]!.row).toBe(bodies[1]!.row);
    await page.reload();
    await waitForText(rows(page).first(), /-Y12/);
    expect(await rows(page).count()).toBe(2);
    expect(await field(page, 'tare').inputValue()).toBe('0.962');
    expect(complaints).toEqual([]);
  });

  it('a slip is asked about and never refused; the last is taken back by a record; nothing is lost with the server', async () => {
    const { page } = watched;
    await openScales(page);
    await tapBottle(page, '2.98', 'none');
    await field(page, 'tare').fill('0');
    await field(page, 'gross').focus();
    await tapBottle(page, '2.97', 'none');
    await waitForText(page.locator('.slip'), /Empty bottle forgotten\?.*0\.962\skg likely/);
    await page.locator('.slip [data-act="take"]').click();
    await waitForText(rows(page).first(), /-Y12.*2\.008/);
    await page.locator('[data-act="undo"]').click();
    await waitForText(told(page), /-Y12, 2\.97 kg: taken back/);
    expect(await rows(page).count()).toBe(1);
    expect(await field(page, 'gross').inputValue()).toBe('2.97');
    await server.end();
    await page.locator('[data-overflow="none"]').click();
    await waitForText(page.locator('.trial-table [role="status"]'), /kept in this browser/);
    await page.locator('[data-act="correct"]').first().click();
    await field(page, 'gross').fill('2.975');
    await page.locator('[data-overflow="trace"]').click();
    await waitForText(rows(page).first(), /2\.013.*trace.*waits/);
    await server.startAgain();
    await waitForText(page.locator('.trial-table [role="status"]'), /Every record is on the server/, 12_000);
    const records = await recordsOf();
    expect(records.map(({ kind }) => kind)).toEqual(['trial', 'trial', 'note', 'trial', 'trial']);
    expect(records[2]!.supersedes).toBe(records[1]!.id);
    expect(records[4]!.supersedes).toBe(records[3]!.id);
    expect(await rows(page).count()).toBe(2);
  });

  it('one tap starts the stopwatch and one stops it; the keyboard alone writes a bottle down', async () => {
    const { page } = watched;
    await page.clock.install();
    await openScales(page);
    await page.clock.pauseAt(new Date(Date.now() + 3_600_000));
    await page.locator('.stop-watch').click();
    await page.clock.runFor(12_340);
    await page.locator('.stop-watch').click();
    expect(await field(page, 'time').inputValue()).toBe('12.34');
    await page.clock.resume();
    await field(page, 'gross').focus();
    await page.keyboard.type('2.981');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await waitForText(rows(page).first(), /-Y11.*2\.019.*12\.34 s.*nothing/);
  });
});
