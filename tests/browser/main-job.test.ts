import { beforeEach, describe, expect, it } from 'vitest';
import {
  field,
  hoseBore,
  openBook,
  panel,
  rate,
  saveState,
  seeCharts,
  side,
  surface,
  waitForText,
} from './on-the-page.ts';
import { ownServerForEach, server, watched } from './own-server.ts';

ownServerForEach();
beforeEach(async () => {
  await openBook(watched.page, server.address());
});

describe('the page of the demo book', () => {
  it('stands the line on two floors with their rates and what holds it', async () => {
    const { page, complaints } = watched;
    expect(await page.locator('.heads h2').allTextContents()).toEqual([
      'Oxbow, built on',
      'Larkmoor, bound for',
    ]);
    await waitForText(rate(page, 'OXBOW'), /\d+\s*bottles\/h/);
    await waitForText(rate(page, 'LARKMOOR'), /\d+\s*bottles\/h/);
    await waitForText(page.locator('.hold').first(), /held by the fill, [\d.]+\ss in every cycle/);
    expect(await side(page, 'OXBOW', 'manifoldPressure').count()).toBe(1);
    expect(await page.getByRole('link', { name: 'good bottles and lost minutes' }).count()).toBe(2);
    expect(complaints).toEqual([]);
  });

  it('recomputes the rate while another bore is typed, and saves it as a revision that a reload keeps', async () => {
    const { page } = watched;
    const before = await rate(page, 'OXBOW').textContent();
    const bore = field(page, hoseBore);
    await bore.fill('50 mm');
    const typed = await waitForText(
      rate(page, 'OXBOW'),
      new RegExp(`^(?!.*${before?.match(/[\d\u202f]+ ?b/)?.[0]})`),
    );
    expect(typed).not.toBe(before);
    expect(await page.getByText('revision 1', { exact: true }).count()).toBe(1);
    await bore.press('Enter');
    await page.getByText('revision 2', { exact: true }).waitFor();
    await waitForText(saveState(page), /^saved$/);
    await page.reload();
    await page.locator('.spine').waitFor();
    expect(await field(page, hoseBore).inputValue()).toBe('50 mm');
    expect(await rate(page, 'OXBOW').textContent()).toBe(typed);

    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('revision 3', { exact: true }).waitFor();
    expect(await field(page, hoseBore).inputValue()).toBe('1 in');
    expect(await rate(page, 'OXBOW').textContent()).toBe(before);
    await page.getByRole('button', { name: 'Redo' }).click();
    await page.getByText('revision 4', { exact: true }).waitFor();
    expect(await rate(page, 'OXBOW').textContent()).toBe(typed);
  });

  it('opens the working of a figure, and follows an input that was worked out and back', async () => {
    const { page } = watched;
    await side(page, 'OXBOW', 'manifoldPressure').click();
    await waitForText(panel(page).locator('h2'), /manifold pressure/);
    await panel(page).locator('math').first().waitFor();
    const door = panel(page).locator('.inputs button.link').first();
    const title = await panel(page).locator('h2').textContent();
    await door.click();
    await waitForText(panel(page).locator('h2'), new RegExp(`^(?!${title}$)`));
    await panel(page).locator('.trail button').first().click();
    await waitForText(panel(page).locator('h2'), /manifold pressure/);
  });

  it('says in a sentence what is wrong with nonsense and keeps the last good figures', async () => {
    const { page } = watched;
    const before = await rate(page, 'OXBOW').textContent();
    const bore = field(page, hoseBore);
    await bore.fill('wide enough');
    const sentence = page.locator('.part .field .problem').first();
    await waitForText(
      sentence,
      /bore: "wide enough" is not a number with a unit\. Units accepted here: .*mm/,
    );
    expect(await bore.getAttribute('aria-invalid')).toBe('true');
    expect(await rate(page, 'OXBOW').textContent()).toBe(before);
    await bore.press('Enter');
    expect(await page.getByText('revision 1', { exact: true }).count()).toBe(1);
    // leaving the field loses nothing
    await field(page, surface).focus();
    expect(await bore.inputValue()).toBe('wide enough');
    await bore.focus();
    await bore.press('Escape');
    expect(await bore.inputValue()).toBe('1 in');
    expect(await sentence.count()).toBe(0);
  });

  it('shows a blanked value as not known, with who can answer, and not as a guess', async () => {
    const { page } = watched;
    const height = field(page, surface);
    await height.fill('');
    await waitForText(side(page, 'OXBOW', 'manifoldPressure'), /not known/);
    await waitForText(rate(page, 'OXBOW'), /not known/);
    await height.press('Enter');
    await page.getByText('revision 2', { exact: true }).waitFor();
    expect(await height.getAttribute('placeholder')).toBe('not known');
    await side(page, 'OXBOW', 'manifoldPressure').click();
    await waitForText(panel(page), /the builder’s floor: tape from the slab to the surface/);
    // it can be answered where it is missed
    await panel(page).locator(`input[data-path="${surface}"]`).first().fill('2.55 m');
    await waitForText(rate(page, 'OXBOW'), /\d+\s*bottles\/h/);
  });

  it('keeps what was being written over a reload in the middle of it', async () => {
    const { page } = watched;
    await field(page, hoseBore).fill('32 mm');
    const typed = await rate(page, 'OXBOW').textContent();
    await page.reload();
    await page.locator('.spine').waitFor();
    await waitForText(saveState(page), /being written/);
    expect(await field(page, hoseBore).inputValue()).toBe('32 mm');
    expect(await rate(page, 'OXBOW').textContent()).toBe(typed);
    expect(await page.getByText('revision 1', { exact: true }).count()).toBe(1);
  });

  it('tries a remedy on the whole page, puts it back, and keeps it when asked', async () => {
    const { page } = watched;
    const before = await rate(page, 'OXBOW').textContent();
    await side(page, 'OXBOW', 'runningRate').click();
    const tries = panel(page).getByRole('button', { name: /^Try / });
    await tries.first().waitFor({ timeout: 20_000 });
    // more come and stand before it, the least effort first
    const remedy = (await tries.first().getAttribute('aria-label')) ?? '';
    await tries.first().click();
    await waitForText(page.locator('.notice'), /A trial, not saved/);
    const tried = await rate(page, 'OXBOW').textContent();
    expect(tried).not.toBe(before);
    await waitForText(side(page, 'OXBOW', 'runningRate'), /carries/);
    expect(await page.getByText('revision 1', { exact: true }).count()).toBe(1);
    await page.getByRole('button', { name: 'Put it back' }).click();
    expect(await rate(page, 'OXBOW').textContent()).toBe(before);
    expect(await page.locator('.notice').count()).toBe(0);

    await panel(page).getByRole('button', { name: remedy, exact: true }).click();
    await page.getByRole('button', { name: 'Keep it' }).click();
    await page.getByRole('button', { name: 'Keep it as a revision' }).click();
    await page.getByText('revision 2', { exact: true }).waitFor();
    expect(await rate(page, 'OXBOW').textContent()).toBe(tried);
  });

  it('sorts remedies by the effort that a person says, and keeps it over a reload', async () => {
    const { page } = watched;
    const open = async (): Promise<void> => {
      await side(page, 'OXBOW', 'runningRate').click();
      await panel(page).getByText('Being solved.').waitFor({ state: 'detached', timeout: 20_000 });
      await panel(page).locator('.cost').nth(1).waitFor();
    };
    await open();
    const levers = () =>
      panel(page)
        .locator('.remedy')
        .evaluateAll((all) => all.slice(0, 2).map((each) => each.getAttribute('data-lever')));
    const before = await levers();
    for (const [n, effort] of ['3 d', '2 h'].entries()) {
      const cost = panel(page).locator(`.remedy[data-lever="${before[n]}"] .cost`).first();
      await cost.locator('summary').click();
      await cost.locator('[data-cost="effort"]').fill(effort);
    }
    await panel(page).getByLabel('Order of the remedies').selectOption('effort');
    expect((await levers())[0]).toBe(before[1]);
    await page.reload();
    await page.locator('.spine').waitFor();
    await open();
    await waitForText(panel(page).locator(`.remedy[data-lever="${before[1]}"] .cost summary`), /effort 2 h/);
  });

  it('draws the charts with their numbers beside them', async () => {
    const { page, complaints } = watched;
    await seeCharts(page);
    expect(await page.locator('.chart svg').count()).toBeGreaterThanOrEqual(4);
    const table = page.locator('.chart details').first();
    await table.locator('summary').click();
    expect(await table.locator('tbody tr').count()).toBe(4);
    expect(complaints).toEqual([]);
  });
});
