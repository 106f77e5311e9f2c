import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { beforeEach, describe, expect, it } from 'vitest';
import { openBook, panel, saveState, side, waitForText } from './on-the-page.ts';
import { ownServerForEach, server, watched } from './own-server.ts';

/** Answers of a floor in the way of its question list, its form and its rows. */
const question = (page: Page, path: string): Locator =>
  page.locator(`.asked-one[data-question="${path}"] [data-path="${path}"]`);
const formDoor = (page: Page, utility: string, floor: string): Locator =>
  page.locator(`button[data-form="${utility} ${floor}"]`);
const formField = (page: Page, path: string): Locator => page.locator(`.site-form [data-path="${path}"]`);

const openUtilities = async (page: Page, address: string): Promise<void> => {
  await openBook(page, address);
  await page.locator('.nav').getByText('Utilities').click();
  await page.locator('.utility-row').first().waitFor();
};

ownServerForEach();
beforeEach(async () => {
  await openUtilities(watched.page, server.address());
});

describe('the page of utilities', () => {
  it('stands what each trade is asked on both floors, every row named and judged in words', async () => {
    const { page, complaints } = watched;
    expect(await page.locator('.utility > .utility-head h2').allTextContents()).toEqual([
      'Compressed air',
      'Power',
      'Water',
      'Heat and washing',
      'Drains',
      'Building',
    ]);
    await waitForText(side(page, 'OXBOW', 'airPressure AIR-1'), /pressure at the drop.*bar.*carries/);
    await waitForText(side(page, 'LARKMOOR', 'motorLoading -M2'), /over 100\s%.*too much/);
    await waitForText(side(page, 'LARKMOOR', 'airRoute'), /short of.*K missing/);
    expect(await page.locator('.rows .name').filter({ hasText: 'utility.' }).count()).toBe(0);
    expect(await page.getByText('a licensed electrician').first().isVisible()).toBe(true);
    expect(complaints).toEqual([]);
  });

  it('changes the row at once when the engineer writes what the site has, and keeps it', async () => {
    const { page } = watched;
    const row = side(page, 'LARKMOOR', 'airRoute');
    const before = await row.textContent();
    expect(await page.locator('.site-form').count()).toBe(0);
    await formDoor(page, 'air', 'LARKMOOR').click();
    const coldest = formField(page, '/floors/1/air/coldest');
    await coldest.fill('50 degF');
    await waitForText(row, /10\s°C.*carries.*K to spare/);
    expect(await row.textContent()).not.toBe(before);
    await coldest.press('Enter');
    await waitForText(saveState(page), /^saved$/);
    await page.reload();
    await waitForText(row, /10\s°C.*carries/);
  });

  it('takes an answer where it is asked, and the row that waited for it is decided', async () => {
    const { page } = watched;
    const row = side(page, 'LARKMOOR', 'airPurity AIR-1');
    await waitForText(row, /not known.*waits for: air, quality/);
    const field = question(page, '/floors/1/air/quality');
    await field.fill('ISO 8573-1 [1:4:1]');
    await waitForText(row, /carries/);
    // while one writes the field stays, though nothing is asked there any more
    expect(await field.count()).toBe(1);
    await field.press('Enter');
    await waitForText(page.locator('.counts[data-floor="LARKMOOR"]'), /short.*carry/);
    await page.waitForFunction(
      () => document.querySelector('[data-question="/floors/1/air/quality"]') === null,
    );
  });

  it('opens the working of a row with its formula, what is held against what and the caution', async () => {
    const { page } = watched;
    await side(page, 'LARKMOOR', 'motorLoading -M2').click();
    await waitForText(panel(page).locator('h2'), /load of the motor/);
    await panel(page).locator('math').first().waitFor();
    await waitForText(panel(page), /Asked: share of its plate that it may give here\..*licensed electrician/);
    await waitForText(panel(page), /What would carry it/);
    await page.keyboard.press('Escape');
    const focused = side(page, 'LARKMOOR', 'motorLoading -M2');
    expect(await focused.evaluate((element) => element === document.activeElement)).toBe(true);
  });

  it('names what would carry a short row, and tries it on the whole page', async () => {
    const { page } = watched;
    const fix = page.locator('button[data-fix="airRoute"][data-floor="LARKMOOR"]');
    await waitForText(fix, /would carry it: dryer: desiccant, .*°C/, 30_000);
    await fix.click();
    const remedy = panel(page).locator('.remedy[data-lever="dryer"]');
    await remedy.locator('button').first().click({ timeout: 30_000 });
    await waitForText(side(page, 'LARKMOOR', 'airRoute'), /carries/);
    await page.locator('.notice').getByRole('button', { name: 'Put it back' }).click();
    await waitForText(side(page, 'LARKMOOR', 'airRoute'), /short of/);
  });

  it('opens the working of a figure that nothing is held against, in normal volumes with their state', async () => {
    const { page } = watched;
    const figure = page.locator('button[data-figure="airAverage"][data-floor="LARKMOOR"]');
    await waitForText(figure, /NL\/min \(ANR\)/);
    await page.getByText('free air counted at 20 °C').waitFor();
    await figure.click();
    await waitForText(panel(page).locator('h2'), /air of the line, on average/);
    await panel(page).locator('math').first().waitFor();
  });

  it('repeats what a sheet would not take, says in the units of the reader what it would, with the place in the book', async () => {
    const { page } = watched;
    await formDoor(page, 'air', 'LARKMOOR').click();
    await formField(page, '/floors/1/air/intake/relativeHumidity').fill('140 %');
    await waitForText(page.locator('.site-form .problem').first(), /140 %/);
    await page.keyboard.press('Escape');
    await formField(page, '/floors/1/air/dryer/dewPoint').fill('1 degC');
    const refusal = page.locator('.refusals').filter({ hasText: 'dew point' }).first();
    await waitForText(refusal, /does not take it.*1\s(?:degC|°C).*3\s°C/);
    expect(await refusal.locator('a').getAttribute('href')).toMatch(/\/book\?at=\/floors\/1\/air\/dryer$/);
    await waitForText(side(page, 'LARKMOOR', 'airDryer'), /cannot be worked out/);
  });

  it('gives the questions out as a sheet and takes the answers in, with a report before anything is changed', async () => {
    const { page } = watched;
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Questions for Larkmoor as csv' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('questions Larkmoor.csv');
    const lines = readFileSync(await download.path(), 'utf8').split('\r\n');
    const answered = lines.map((line) => {
      if (!/\/floors\/1\/air\/quality/.test(line) && !/\/floors\/1\/air\/compressor\/freeAir/.test(line))
        return line;
      // number, question, answer, unit: what is asked of the compressor is answered with nonsense
      const [number, question, , ...rest] = line.match(/("[^"]*"|[^,]*)(?:,|$)/g) ?? [];
      const answer = /freeAir/.test(line) ? 'far,' : '"ISO 8573-1 [1:4:1]",';
      return `${number}${question}${answer}${rest.join('').replace(/,+$/, '')}`;
    });
    const chooser = page.locator('.ask-site').nth(1).locator('input[type="file"]');
    await chooser.setInputFiles({
      name: 'back.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(answered.join('\r\n')),
    });
    const report = page.locator('.answers-report');
    await waitForText(
      report,
      /Not understood, and left as it is: 1.*far.*Understood: 1.*air, quality: ISO 8573-1/,
    );
    await waitForText(side(page, 'LARKMOOR', 'airPurity AIR-1'), /not known/);
    await report.getByRole('button', { name: 'Put 1 answer into the book' }).click();
    await waitForText(side(page, 'LARKMOOR', 'airPurity AIR-1'), /carries/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await waitForText(side(page, 'LARKMOOR', 'airPurity AIR-1'), /not known/);
  });

  it('is usable before anything is known: a floor without utilities has its rows, its questions and its form', async () => {
    const { page } = watched;
    const id = await server.addBook(
      JSON.stringify({
        twinfloor: 1,
        line: { airDrops: [{ tag: 'AIR-1', pressure: '5 bar' }] },
        floors: [{ tag: 'HERE', name: 'Here', role: 'bound for' }],
      }),
    );
    await page.goto(`${server.address()}books/${id}/utilities`);
    const row = side(page, 'HERE', 'airPressure AIR-1');
    await waitForText(row, /not known.*asks 5\sbar/);
    await page.locator('.asked-one').first().waitFor();
    await formDoor(page, 'air', 'HERE').click();
    await page.locator('.site-form [data-path^="/floors/0/air/"]').first().waitFor();
  });
});
